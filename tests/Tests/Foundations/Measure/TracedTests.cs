using Fractions;
using Nookwright.Measure;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Measure;

public class TracedTests
{
    [Fact]
    public void Nothing_is_held_once_every_reading_is_taken()
    {
        var planned = Traced.Read(In(30), "r1", null, isTaken: false);
        var taken = Traced.Read(In(30), "r2", new DateOnly(2026, 10, 3), isTaken: true, planned);
        Assert.Equal(["r1"], (planned + taken).Awaits);
        Assert.False((taken * 2).IsHeld);
    }

    [Fact]
    public void Rounding_a_number_on_the_mark_changes_nothing()
    {
        var on = Named("a", In(3, 1, 32));
        Assert.Same(on, on.RoundedTo(In(0, 1, 32)));
        Assert.Equal(In(3), on.RoundedTo(In(0, 1, 4)).Length);
    }

    [Fact]
    public void A_second_name_remembers_the_first()
    {
        var second = Named("a", In(3)).Called("b");
        Assert.Equal("a", Assert.IsType<Cause.Same>(second.Cause).Of.Name);
    }

    [Fact]
    public void Dividing_by_nought_throws_instead_of_giving_a_number() =>
        Assert.Throws<DivideByZeroException>(() => Named("a", In(3)) / 0);

    [Fact]
    public void Kinds_multiply_and_divide()
    {
        var (length, number) = (Quantity.Of(In(2)), Quantity.Of(new Fraction(3)));
        Assert.Equal(new Dimension(2, 0), (length * length).Dimension);
        Assert.Equal(Dimension.Number, (length / length).Dimension);
        Assert.Equal(Quantity.Of(In(6)), length * number);
        Assert.Throws<InvalidOperationException>(() => length + number);
    }
}

using CsCheck;
using Nookwright.Measure;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Measure;

public class LengthFormatTests
{
    [Fact]
    public void It_rounds_first_and_then_splits_so_that_a_carry_reaches_the_feet() =>
        Assert.Equal("3'-0\"", LengthFormat.FeetInches(16).Print(Length.FromInches(35.99m)));

    [Theory]
    [InlineData(603.25, "23 3/4 in", "1'-11 3/4\"", "23.750 in", "603.5 mm")]
    [InlineData(0, "0 in", "0\"", "0.000 in", "0 mm")]
    [InlineData(19.05, "3/4 in", "3/4\"", "0.750 in", "19 mm")]
    [InlineData(304.8, "12 in", "1'-0\"", "12.000 in", "305 mm")]
    [InlineData(317.5, "12 1/2 in", "1'-0 1/2\"", "12.500 in", "317.5 mm")]
    [InlineData(-603.25, "-23 3/4 in", "-1'-11 3/4\"", "-23.750 in", "-603.5 mm")]
    [InlineData(-0.1, "0 in", "0\"", "-0.004 in", "0 mm")]
    [InlineData(25.39, "1 in", "1\"", "1.000 in", "25.5 mm")]
    public void Each_style_prints_as_makers_write(
        decimal mm,
        string inches,
        string feet,
        string decimals,
        string metric
    )
    {
        Assert.Equal(inches, LengthFormat.Inches(32).Print(Mm(mm)));
        Assert.Equal(feet, LengthFormat.FeetInches(16).Print(Mm(mm)));
        Assert.Equal(decimals, LengthFormat.DecimalInches(3).Print(Mm(mm)));
        Assert.Equal(metric, LengthFormat.Millimetres(0.5m).Print(Mm(mm)));
    }

    [Fact]
    public void A_32nd_stays_a_32nd_when_printed_in_64ths() =>
        Assert.Equal("1/32 in", LengthFormat.Inches(64).Print(In(0, 1, 32)));

    [Fact]
    public void The_unit_can_be_left_out()
    {
        Assert.Equal("23 3/4", LengthFormat.Inches(32).WithoutUnit.Print(In(23, 3, 4)));
        Assert.Equal("603.5", LengthFormat.Millimetres(0.5m).WithoutUnit.Print(Mm(603.5m)));
        Assert.Equal("1'-11 3/4\"", LengthFormat.FeetInches(16).WithoutUnit.Print(In(23, 3, 4)));
    }

    [Fact]
    public void A_drawing_gets_the_parts_of_a_fraction_to_set() =>
        Assert.Equal(new PrintedLength(false, 8, 2, "", 3, 16, "\""), LengthFormat.FeetInches(16).Split(In(98, 3, 16)));

    [Fact]
    public void It_says_when_something_was_lost_by_printing()
    {
        Assert.True(LengthFormat.Inches(16).IsExact(In(23, 3, 16)));
        Assert.False(LengthFormat.Inches(16).IsExact(In(23, 3, 32)));
        Assert.False(LengthFormat.Millimetres(0.5m).IsExact(Mm(603.25m)));
    }

    [Fact]
    public void The_longest_length_there_is_reads_as_no_limit() =>
        Assert.Equal("no limit", LengthFormat.Inches(16).Print(Length.Unlimited));

    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    [InlineData(128)]
    public void A_tape_has_no_such_marks(int parts) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthFormat.Inches(parts));

    [Fact]
    public void Printed_then_read_it_is_the_nearest_mark_of_the_grid() =>
        Gen.Select(AnyLength, AnyFormat)
            .Sample(
                (length, format) =>
                {
                    var back = LengthText.Read(format.Print(length), LengthUnit.Millimetres).Value;
                    return back == length.RoundTo(format.Grid) && (back == length) == format.IsExact(length);
                }
            );

    [Fact]
    public void Fractions_are_always_reduced_and_less_than_one() =>
        Gen.Select(AnyLength, AnyFormat)
            .Sample(
                (length, format) =>
                {
                    var printed = format.Split(length);
                    return printed.Numerator < printed.Denominator
                        && (printed.Numerator % 2 == 1 || printed is { Numerator: 0, Denominator: 1 })
                        && (format.Style != LengthStyle.FeetInches || printed.Whole < 12);
                }
            );
}

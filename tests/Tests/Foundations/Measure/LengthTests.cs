using CsCheck;
using Nookwright.Measure;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Measure;

public class LengthTests
{
    private static readonly Gen<Length> AnyStep = Gen.Long[1, 100_000_000].Select(nm => new Length(nm));

    /// <summary>By hand: 1199.5 = 400 + 400 + 399.5.</summary>
    [Fact]
    public void Three_openings_share_a_wall_to_the_half_millimetre() =>
        Assert.Equal([Mm(400), Mm(400), Mm(399.5m)], Mm(1199.5m).Share(3, Mm(0.5m)));

    [Fact]
    public void Shares_add_up_to_the_whole() =>
        Gen.Select(AnyLength, Gen.Int[1, 40], AnyStep)
            .Sample(
                (whole, count, step) =>
                    whole.Share(count, step).Aggregate(Length.Zero, (sum, share) => sum + share) == whole
            );

    [Fact]
    public void Shares_differ_by_at_most_a_step_and_all_but_the_last_lie_on_the_grid() =>
        Gen.Select(AnyLength, Gen.Int[1, 40], AnyStep)
            .Sample(
                (whole, count, step) =>
                {
                    var shares = whole.Share(count, step);
                    return shares.Max() - shares.Min() <= step
                        && shares.SkipLast(1).All(share => share == share.RoundTo(step));
                }
            );

    [Fact]
    public void Rounding_goes_to_a_multiple_no_further_than_half_a_step() =>
        Gen.Select(AnyLength, AnyStep)
            .Sample(
                (length, step) =>
                {
                    var rounded = length.RoundTo(step);
                    return rounded.Nanometres % step.Nanometres == 0 && (rounded - length).Abs() * 2 <= step;
                }
            );

    [Fact]
    public void Halves_go_away_from_zero_on_either_side()
    {
        Assert.Equal(Mm(1), Mm(0.5m).RoundTo(Mm(1)));
        Assert.Equal(Mm(-1), Mm(-0.5m).RoundTo(Mm(1)));
    }

    [Fact]
    public void Floor_and_ceiling_bracket_a_length_by_less_than_a_step() =>
        Gen.Select(AnyLength, AnyStep)
            .Sample(
                (length, step) =>
                {
                    var (low, high) = (length.FloorTo(step), length.CeilingTo(step));
                    return low <= length && length <= high && (high == low || high - low == step);
                }
            );

    [Fact]
    public void Past_the_longest_length_arithmetic_stops_instead_of_wrapping_round() =>
        Assert.Throws<OverflowException>(() => Length.Unlimited + new Length(1));

    [Fact]
    public void Fractions_of_an_inch_keep_their_sign_with_the_whole()
    {
        Assert.Equal(Length.FromInches(23.75m), Length.FromInches(23, 3, 4));
        Assert.Equal(Mm(603.25m), Length.FromInches(23.75m));
    }
}

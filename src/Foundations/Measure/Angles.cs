using Fractions;
using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>Angles' functions, in degrees; exact at the right angles, else good to 15 digits.</summary>
internal static class Angles
{
    private static readonly Fraction Quarter = new(90);
    private static readonly Fraction Turn = new(360);

    public static Outcome<Quantity> Sine(Quantity angle) =>
        Degrees(angle).Then<Quantity>(degrees => Quantity.Of(SineOf(degrees)));

    public static Outcome<Quantity> Cosine(Quantity angle) =>
        Degrees(angle).Then<Quantity>(degrees => Quantity.Of(SineOf(degrees + Quarter)));

    public static Outcome<Quantity> Tangent(Quantity angle) => Degrees(angle).Then(TangentOf);

    /// <summary>The angle whose sine, cosine or tangent is given.</summary>
    public static Outcome<Quantity> Arc(Quantity ratio, Func<double, double> radiansOf)
    {
        if (ratio.Dimension != Dimension.Number)
            return new Refusal($"it takes a plain number, and this is {ratio.Dimension}.");
        var degrees = radiansOf(ratio.Amount.ToDouble()) * 180 / Math.PI;
        return RealNumber.ToFraction(degrees) is { } exact
            ? Quantity.OfDegrees(exact)
            : new Refusal("it takes a number from -1 to 1.");
    }

    private static Outcome<Fraction> Degrees(Quantity angle) =>
        angle.Dimension == Dimension.Angle
            ? angle.Amount
            : new Refusal($"it takes an angle, such as 12 deg, and this is {angle.Dimension}.");

    private static Outcome<Quantity> TangentOf(Fraction degrees)
    {
        var cosine = SineOf(degrees + Quarter);
        if (cosine.IsZero)
            return new Refusal("a right angle has no tangent.");
        var isFlat = SineOf(degrees).IsZero;
        return Quantity.Of(
            isFlat ? Fraction.Zero : RealNumber.ToFraction(Math.Tan(Radians(WithinOneTurn(degrees)))) ?? Fraction.Zero
        );
    }

    private static Fraction SineOf(Fraction degrees)
    {
        var turned = WithinOneTurn(degrees);
        var quarters = turned / Quarter;
        return quarters.Denominator.IsOne
            ? new Fraction(
                (int)quarters.Numerator switch
                {
                    1 => 1,
                    3 => -1,
                    _ => 0,
                }
            )
            : RealNumber.ToFraction(Math.Sin(Radians(turned)))!.Value;
    }

    private static Fraction WithinOneTurn(Fraction degrees) => degrees - (Turn * Steps.Below(degrees / Turn));

    private static double Radians(Fraction degrees) => degrees.ToDouble() * Math.PI / 180;
}

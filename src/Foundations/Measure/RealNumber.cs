using Fractions;

namespace Nookwright.Measure;

/// <summary>The door through which real numbers come back among exact ones, at 15 significant digits.</summary>
/// <remarks>A double carries between 15 and 17 digits; at 15 the sine of 30 degrees is one half, as anyone expects.</remarks>
internal static class RealNumber
{
    /// <summary>The number, or null when it is none, or lies beyond what a decimal holds (about 7.9e28).</summary>
    public static Fraction? ToFraction(double number) =>
        double.IsFinite(number) && Math.Abs(number) < 7e28 ? new Fraction((decimal)number) : null;
}

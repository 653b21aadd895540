using Fractions;
using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>Rounding to a step, exactly.</summary>
internal static class Steps
{
    /// <summary>The nearest; halves go away from zero.</summary>
    public static Fraction Nearest(Fraction steps) => Fraction.Round(steps, 0, MidpointRounding.AwayFromZero);

    public static Fraction Below(Fraction steps) => Fraction.Round(steps, 0, MidpointRounding.ToNegativeInfinity);

    public static Fraction Above(Fraction steps) => Fraction.Round(steps, 0, MidpointRounding.ToPositiveInfinity);

    /// <summary>A value rounded to a step; a plain number without one goes to whole numbers.</summary>
    public static Outcome<Quantity> Apply(IReadOnlyList<Quantity> values, Func<Fraction, Fraction> toWhole)
    {
        var value = values[0];
        if (values.Count == 1 && value.Dimension != Dimension.Number)
            return new Refusal(
                $"{value.Dimension} wants a step of its kind to be rounded to, such as 1/16 in or 0.5 mm."
            );
        var step = values.Count == 1 ? Fraction.One : values[1].Amount;
        return step > Fraction.Zero
            ? new Quantity(toWhole(value.Amount / step) * step, value.Dimension)
            : new Refusal("the step should be more than nought.");
    }
}

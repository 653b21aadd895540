using System.Numerics;
using Fractions;

namespace Nookwright.Measure;

/// <summary>What kind of number a quantity is: powers of length and of angle. <c>default</c> is a plain number.</summary>
/// <param name="LengthPower">1 for a length, 2 for an area, 0 for none; may be negative after a division.</param>
/// <param name="AnglePower">1 for an angle.</param>
public readonly record struct Dimension(int LengthPower, int AnglePower)
{
    /// <summary>A plain number.</summary>
    public static Dimension Number => default;

    /// <summary>A length.</summary>
    public static Dimension Length => new(1, 0);

    /// <summary>An angle.</summary>
    public static Dimension Angle => new(0, 1);

    /// <summary>The word a maker reads: "a plain number", "a length", "an angle", "an area".</summary>
    public override string ToString() =>
        (LengthPower, AnglePower) switch
        {
            (0, 0) => "a plain number",
            (1, 0) => "a length",
            (2, 0) => "an area",
            (3, 0) => "a volume",
            (0, 1) => "an angle",
            (_, 0) => $"a length to the power {LengthPower}",
            (0, _) => $"an angle to the power {AnglePower}",
            _ => $"a length to the power {LengthPower} times an angle to the power {AnglePower}",
        };
}

/// <summary>An exact number with its dimension: what formulas calculate with, so that thirds stay thirds until the end.</summary>
/// <param name="Amount">Nanometres to the power of the length, times degrees to the power of the angle; exact.</param>
/// <param name="Dimension">What kind of number it is.</param>
public readonly record struct Quantity(Fraction Amount, Dimension Dimension)
{
    /// <summary>True for a length.</summary>
    public bool IsLength => Dimension == Dimension.Length;

    /// <summary>True for a length that a <see cref="Measure.Length"/> can hold.</summary>
    public bool FitsLength => IsLength && BigInteger.Abs(Rounded.Numerator) <= long.MaxValue;

    /// <summary>A length as a quantity.</summary>
    public static Quantity Of(Length length) => new(new Fraction(length.Nanometres), Dimension.Length);

    /// <summary>A plain number as a quantity.</summary>
    public static Quantity Of(Fraction number) => new(number, Dimension.Number);

    /// <summary>An angle as a quantity.</summary>
    public static Quantity OfDegrees(Fraction degrees) => new(degrees, Dimension.Angle);

    /// <summary>The length, to the nearest nanometre (halves away from zero). Throws when it is no length.</summary>
    public Length ToLength()
    {
        if (!IsLength)
            throw new InvalidOperationException($"Expected a length, found {Dimension}.");
        return new(checked((long)Rounded.Numerator));
    }

    /// <summary>The sum; both must have the same dimension.</summary>
    public static Quantity operator +(Quantity a, Quantity b) => new(a.Amount + b.Amount, Same(a, b));

    /// <summary>The difference; both must have the same dimension.</summary>
    public static Quantity operator -(Quantity a, Quantity b) => new(a.Amount - b.Amount, Same(a, b));

    /// <summary>The product; dimensions add.</summary>
    public static Quantity operator *(Quantity a, Quantity b) =>
        new(
            a.Amount * b.Amount,
            new(a.Dimension.LengthPower + b.Dimension.LengthPower, a.Dimension.AnglePower + b.Dimension.AnglePower)
        );

    /// <summary>The quotient; dimensions subtract. Throws on a zero divisor.</summary>
    public static Quantity operator /(Quantity a, Quantity b) =>
        new(
            b.Amount.IsZero ? throw new DivideByZeroException() : a.Amount / b.Amount,
            new(a.Dimension.LengthPower - b.Dimension.LengthPower, a.Dimension.AnglePower - b.Dimension.AnglePower)
        );

    private Fraction Rounded =>
        Amount.Denominator.IsOne ? Amount : Fraction.Round(Amount, 0, MidpointRounding.AwayFromZero);

    private static Dimension Same(Quantity a, Quantity b) =>
        a.Dimension == b.Dimension
            ? a.Dimension
            : throw new InvalidOperationException($"{a.Dimension} and {b.Dimension} cannot be added.");
}

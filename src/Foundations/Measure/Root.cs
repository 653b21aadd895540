using System.Numerics;
using Fractions;
using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>Square roots: exact where the root is a fraction, else good to 15 digits.</summary>
internal static class Root
{
    public static Outcome<Quantity> Of(Quantity square)
    {
        if (square.Amount < Fraction.Zero)
            return new Refusal("a number below nought has no square root.");
        var (length, angle) = (square.Dimension.LengthPower, square.Dimension.AnglePower);
        if (length % 2 != 0 || angle % 2 != 0)
            return new Refusal($"{square.Dimension} has no square root; an area or a plain number has.");
        return (Exact(square.Amount) ?? RealNumber.ToFraction(Math.Sqrt(square.Amount.ToDouble()))) is { } root
            ? new Quantity(root, new Dimension(length / 2, angle / 2))
            : new Refusal("the number is too large for a square root.");
    }

    private static Fraction? Exact(Fraction square) =>
        WholeRoot(square.Numerator) is { } top && WholeRoot(square.Denominator) is { } bottom
            ? new Fraction(top, bottom)
            : null;

    private static BigInteger? WholeRoot(BigInteger square)
    {
        if (square.GetBitLength() > 1000)
            return null;
        // Newton's steps from a real guess; the guess is off by a few parts in 10^16, so that two or three suffice.
        var root = new BigInteger(Math.Sqrt((double)square));
        for (var step = 0; step < 8 && root * root != square && !root.IsZero; step++)
            root = (root + (square / root)) / 2;
        return root * root == square ? root : null;
    }
}

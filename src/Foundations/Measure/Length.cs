using System.Numerics;

namespace Nookwright.Measure;

/// <summary>A length, exact: a whole number of nanometres.</summary>
/// <remarks>
/// 1/64 in is 396 875 nm and 0.01 mm is 10 000 nm, so every mark of a tape in either system is a whole number and
/// two finished sizes are the same saw setting only if they are equal. There is no epsilon. The international inch is
/// exactly 25.4 mm (NIST SP 811, appendix B.6). Range: about ±9.2 million km; arithmetic past it throws.
/// </remarks>
/// <param name="Nanometres">The length in nanometres; may be negative.</param>
public readonly record struct Length(long Nanometres)
    : IComparable<Length>,
        IAdditionOperators<Length, Length, Length>,
        ISubtractionOperators<Length, Length, Length>,
        IAdditiveIdentity<Length, Length>,
        IComparisonOperators<Length, Length, bool>
{
    private const long NanometresPerMillimetre = 1_000_000;
    private const long NanometresPerInch = 25_400_000;

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>One millimetre.</summary>
    public static Length Millimetre => new(NanometresPerMillimetre);

    /// <summary>One international inch, exactly 25.4 mm.</summary>
    public static Length Inch => new(NanometresPerInch);

    /// <summary>The longest length there is; stands for "no limit".</summary>
    public static Length Unlimited => new(long.MaxValue);

    static Length IAdditiveIdentity<Length, Length>.AdditiveIdentity => Zero;

    /// <summary>In millimetres, for physics, geometry and drawing that need real numbers.</summary>
    public double Millimetres => (double)Nanometres / NanometresPerMillimetre;

    /// <summary>In inches, for physics, geometry and drawing that need real numbers.</summary>
    public double Inches => (double)Nanometres / NanometresPerInch;

    /// <summary>True below zero.</summary>
    public bool IsNegative => Nanometres < 0;

    /// <summary>True above zero.</summary>
    public bool IsPositive => Nanometres > 0;

    /// <summary>A number of millimetres, to the nearest nanometre.</summary>
    public static Length FromMillimetres(decimal millimetres) => new(Whole(millimetres * NanometresPerMillimetre));

    /// <summary>A number of inches, to the nearest nanometre.</summary>
    public static Length FromInches(decimal inches) => new(Whole(inches * NanometresPerInch));

    /// <summary>Inches as on a tape: <c>FromInches(23, 3, 4)</c> is 23 3/4 in. To the nearest nanometre.</summary>
    public static Length FromInches(long whole, long numerator, long denominator)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(denominator, 1);
        return new(checked((whole * NanometresPerInch) + Whole((decimal)numerator * NanometresPerInch / denominator)));
    }

    /// <summary>The nearest multiple of a step; halves go away from zero.</summary>
    public Length RoundTo(Length step) => new(Math.Sign(Nanometres) * Abs().Multiples(step, step.Nanometres / 2));

    /// <summary>The largest multiple of a step that is not above this length.</summary>
    public Length FloorTo(Length step)
    {
        var nearer = Nanometres >= 0 ? 0 : step.Nanometres - 1;
        return new(Math.Sign(Nanometres) * Abs().Multiples(step, nearer));
    }

    /// <summary>The smallest multiple of a step that is not below this length.</summary>
    public Length CeilingTo(Length step) => -(-this).FloorTo(step);

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(Nanometres));

    /// <summary>Shares of this length on a grid that add up to it exactly.</summary>
    /// <param name="count">How many shares, at least one.</param>
    /// <param name="step">The grid; each share but the last few is rounded up to it, so that early shares are never smaller.</param>
    /// <returns>Shares that differ by at most one step, the larger ones first; what is not a whole step goes to the last.</returns>
    public IReadOnlyList<Length> Share(int count, Length step)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(step.Nanometres, 1);
        var steps = Nanometres / step.Nanometres;
        var rest = new Length(Nanometres % step.Nanometres);
        var shares = new Length[count];
        for (var i = 0; i < count; i++)
            shares[i] = step * ((steps / count) + (i < Math.Abs(steps % count) ? Math.Sign(steps) : 0));
        shares[^1] += rest;
        return shares;
    }

    /// <summary>The smaller of two.</summary>
    public static Length Min(Length a, Length b) => a < b ? a : b;

    /// <summary>The larger of two.</summary>
    public static Length Max(Length a, Length b) => a > b ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    /// <summary>Exact millimetres, for logs and debugging; people are shown lengths by a LengthFormat.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{(decimal)Nanometres / NanometresPerMillimetre:0.######} mm");

    /// <summary>The sum.</summary>
    public static Length operator +(Length left, Length right) => new(checked(left.Nanometres + right.Nanometres));

    /// <summary>The difference.</summary>
    public static Length operator -(Length left, Length right) => new(checked(left.Nanometres - right.Nanometres));

    /// <summary>The other way round.</summary>
    public static Length operator -(Length length) => new(checked(-length.Nanometres));

    /// <summary>So many times.</summary>
    public static Length operator *(Length length, long times) => new(checked(length.Nanometres * times));

    /// <summary>So many times.</summary>
    public static Length operator *(long times, Length length) => length * times;

    /// <summary>How many of one go into another, as a real number.</summary>
    public static double operator /(Length length, Length by) => (double)length.Nanometres / by.Nanometres;

    /// <summary>Shorter.</summary>
    public static bool operator <(Length left, Length right) => left.Nanometres < right.Nanometres;

    /// <summary>Longer.</summary>
    public static bool operator >(Length left, Length right) => left.Nanometres > right.Nanometres;

    /// <summary>Not longer.</summary>
    public static bool operator <=(Length left, Length right) => left.Nanometres <= right.Nanometres;

    /// <summary>Not shorter.</summary>
    public static bool operator >=(Length left, Length right) => left.Nanometres >= right.Nanometres;

    private long Multiples(Length step, long add)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(step.Nanometres, 1);
        return checked(checked(Nanometres + add) / step.Nanometres * step.Nanometres);
    }

    private static long Whole(decimal nanometres) =>
        checked((long)decimal.Round(nanometres, MidpointRounding.AwayFromZero));
}

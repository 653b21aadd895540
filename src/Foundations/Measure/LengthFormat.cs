using System.Numerics;

namespace Nookwright.Measure;

/// <summary>In which shape a length is printed.</summary>
public enum LengthStyle
{
    /// <summary>Whole inches and a fraction: 35 3/4 in.</summary>
    Inches,

    /// <summary>Feet, inches and a fraction: 2'-11 3/4"; feet are left out below one foot.</summary>
    FeetInches,

    /// <summary>Inches with a fixed number of decimals, as a caliper shows them: 35.750 in.</summary>
    DecimalInches,

    /// <summary>Millimetres, decimals only where there are any: 603.5 mm.</summary>
    Millimetres,
}

/// <summary>How lengths are printed for people: in a style, rounded to a grid.</summary>
/// <remarks>
/// The length goes to the nearest mark of the grid first and is split after that, so that fractions reduce and carry:
/// 35.99 in at 1/16 is 3'-0", never 2'-11 16/16". Printing changes no length; <see cref="IsExact"/> tells when it hides something.
/// </remarks>
public sealed record LengthFormat
{
    private LengthFormat(LengthStyle style, Length grid, int decimals = 0) =>
        (Style, Grid, MostDecimals) = (style, grid, decimals);

    /// <summary>The shape.</summary>
    public LengthStyle Style { get; }

    /// <summary>The marks that lengths are rounded to.</summary>
    public Length Grid { get; }

    /// <summary>False to leave the unit out; feet and inch marks stay, since they tell the two apart.</summary>
    public bool ShowsUnit { get; init; } = true;

    /// <summary>The system it prints in.</summary>
    public LengthUnit Unit => Style == LengthStyle.Millimetres ? LengthUnit.Millimetres : LengthUnit.Inches;

    private int MostDecimals { get; }

    /// <summary>The same without the unit's text.</summary>
    public LengthFormat WithoutUnit => this with { ShowsUnit = false };

    /// <summary>How a job shows its lengths: to 1/64 in or 0.1 mm, finer than the shop's mark, so that a measured thickness shows as it is.</summary>
    public static LengthFormat Of(LengthUnit unit) => unit == LengthUnit.Inches ? Inches(64) : Millimetres(0.1m);

    /// <summary>Inches with fractions down to one part in 1, 2, 4, 8, 16, 32 or 64.</summary>
    public static LengthFormat Inches(int denominator) => new(LengthStyle.Inches, InchGrid(denominator));

    /// <summary>Feet and inches with fractions down to one part in 1, 2, 4, 8, 16, 32 or 64.</summary>
    public static LengthFormat FeetInches(int denominator) => new(LengthStyle.FeetInches, InchGrid(denominator));

    /// <summary>Inches with this many decimals, 0 to 5.</summary>
    public static LengthFormat DecimalInches(int decimals)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decimals);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(decimals, 5);
        return new(LengthStyle.DecimalInches, new(Length.Inch.Nanometres / PowerOfTen(decimals)), decimals);
    }

    /// <summary>Millimetres on a grid of so many millimetres: 1, 0.5, 0.1.</summary>
    public static LengthFormat Millimetres(decimal grid)
    {
        var step = Length.FromMillimetres(grid);
        ArgumentOutOfRangeException.ThrowIfLessThan(step, new Length(1), nameof(grid));
        return new(LengthStyle.Millimetres, step, 6);
    }

    /// <summary>The text: <c>23 3/4 in</c>, <c>1'-11 3/4"</c>, <c>23.750 in</c>, <c>603.5 mm</c>.</summary>
    public string Print(Length length) => length == Length.Unlimited ? "no limit" : Split(length).ToString();

    /// <summary>The text at this grid, or in thousandths where the grid would hide that the length lies between two marks.</summary>
    public string PrintInFull(Length length) => InFull(length).Print(length);

    /// <summary>This format where it tells a length exactly; else thousandths of an inch or of a millimetre.</summary>
    public LengthFormat InFull(Length length)
    {
        if (IsExact(length))
            return this;
        var thousandths = Style == LengthStyle.Millimetres ? Millimetres(0.001m) : DecimalInches(3);
        return thousandths with { ShowsUnit = ShowsUnit };
    }

    /// <summary>The same taken apart, for setting proper fractions.</summary>
    public PrintedLength Split(Length length)
    {
        var rounded = length.RoundTo(Grid);
        var size = rounded.Abs().Nanometres;
        return Style switch
        {
            LengthStyle.Inches => Fractional(rounded.IsNegative, null, size, " in"),
            LengthStyle.FeetInches => FeetAndInches(rounded.IsNegative, size),
            LengthStyle.DecimalInches => Decimal(rounded.IsNegative, size, Length.Inch, " in"),
            _ => Decimal(rounded.IsNegative, size, Length.Millimetre, " mm"),
        };
    }

    /// <summary>True when the printed text says exactly this length and nothing was lost by rounding.</summary>
    public bool IsExact(Length length) => length.Nanometres % Grid.Nanometres == 0;

    private PrintedLength FeetAndInches(bool isNegative, long size)
    {
        var (feet, rest) = Math.DivRem(size, Length.Inch.Nanometres * 12);
        return Fractional(isNegative, feet == 0 ? null : feet, rest, "\"") with { Unit = "\"" };
    }

    private PrintedLength Fractional(bool isNegative, long? feet, long size, string unit)
    {
        var (whole, rest) = Math.DivRem(size, Length.Inch.Nanometres);
        var most = Length.Inch.Nanometres / Grid.Nanometres;
        var parts = rest / Grid.Nanometres;
        var shared = (long)BigInteger.GreatestCommonDivisor(parts, most);
        return new(isNegative, feet, whole, "", (int)(parts / shared), (int)(most / shared), Suffix(unit));
    }

    private PrintedLength Decimal(bool isNegative, long size, Length unit, string suffix)
    {
        var (whole, rest) = Math.DivRem(size, unit.Nanometres);
        var digits = (rest * PowerOfTen(MostDecimals) / unit.Nanometres).ToString($"D{Math.Max(1, MostDecimals)}");
        var decimals = MostDecimals == 0 ? "" : digits;
        var shown = Style == LengthStyle.DecimalInches ? decimals : decimals.TrimEnd('0');
        return new(isNegative, null, whole, shown, 0, 1, Suffix(suffix));
    }

    private string Suffix(string unit) => ShowsUnit ? unit : "";

    private static Length InchGrid(int denominator)
    {
        if (denominator is < 1 or > 64 || !BitOperations.IsPow2(denominator))
            throw new ArgumentOutOfRangeException(
                nameof(denominator),
                denominator,
                "A tape is marked in 1, 2, 4 to 64 parts."
            );
        return new(Length.Inch.Nanometres / denominator);
    }

    private static long PowerOfTen(int power) => (long)BigInteger.Pow(10, power);
}

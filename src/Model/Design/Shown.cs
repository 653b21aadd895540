using Nookwright.Measure;

namespace Nookwright.Design;

/// <summary>How lengths are shown in what this room tells the maker: finer than the shop's mark, so that a rest is seen.</summary>
internal static class Shown
{
    /// <summary>1/64 in or 0.1 mm for sizes.</summary>
    public static LengthFormat Format(LengthUnit unit) =>
        unit == LengthUnit.Inches ? LengthFormat.Inches(64) : LengthFormat.Millimetres(0.1m);

    /// <summary>A size, or a small amount in thousandths where it lies between two marks.</summary>
    public static string Print(Length length, LengthUnit unit)
    {
        var format = Format(unit);
        return format.IsExact(length) ? format.Print(length) : Finest(unit).Print(length);
    }

    private static LengthFormat Finest(LengthUnit unit) =>
        unit == LengthUnit.Inches ? LengthFormat.DecimalInches(3) : LengthFormat.Millimetres(0.001m);
}

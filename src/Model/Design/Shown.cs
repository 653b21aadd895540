using Nookwright.Measure;

namespace Nookwright.Design;

/// <summary>How lengths are shown in what this room tells the maker: finer than the shop's mark, so that a rest is seen.</summary>
internal static class Shown
{
    /// <summary>A size, or a small amount in thousandths where it lies between two marks.</summary>
    public static string Print(Length length, LengthUnit unit) => LengthFormat.Of(unit).PrintInFull(length);
}

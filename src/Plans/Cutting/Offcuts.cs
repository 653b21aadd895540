using Nookwright.Measure;

namespace Nookwright.Cutting;

/// <summary>Which leftovers go on the rack.</summary>
public static class Offcuts
{
    /// <summary>The shortest side worth keeping: 100 mm, about 4 in (common practice, no source).</summary>
    public static Length LeastSide { get; } = Length.FromMillimetres(100);

    /// <summary>The smallest area worth keeping, in square metres (common practice, no source).</summary>
    public const double LeastSquareMetres = 0.05;

    /// <summary>True for a leftover worth keeping.</summary>
    public static bool AreWorthKeeping(Length length, Length width) =>
        Length.Min(length, width) >= LeastSide
        && length.Millimetres * width.Millimetres >= LeastSquareMetres * 1_000_000;
}

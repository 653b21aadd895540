namespace Nookwright.Cutting;

/// <summary>The two ways of a sheet.</summary>
internal static class Axes
{
    /// <summary>The other way.</summary>
    public static SheetAxis Other(this SheetAxis axis) => axis == SheetAxis.Length ? SheetAxis.Width : SheetAxis.Length;
}

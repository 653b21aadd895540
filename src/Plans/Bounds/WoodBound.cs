namespace Nookwright.Bounds;

/// <summary>The least any plan takes of one material.</summary>
/// <param name="Cost">As <see cref="Cutting.StockCost"/> counts.</param>
/// <param name="Sheets">Sheets bought.</param>
/// <param name="Way">How it was found.</param>
internal sealed record WoodBound(long Cost, int Sheets, BoundWay Way)
{
    /// <summary>The better of two in each term, named after the one that asks for the higher cost, or else for more sheets.</summary>
    public WoodBound Or(WoodBound other) =>
        new(
            Math.Max(Cost, other.Cost),
            Math.Max(Sheets, other.Sheets),
            (other.Cost, other.Sheets).CompareTo((Cost, Sheets)) > 0 ? other.Way : Way
        );
}

/// <summary>How a bound was found.</summary>
/// <param name="Name">In words that fit into brackets.</param>
/// <param name="Source">The published source.</param>
internal sealed record BoundWay(string Name, string Source)
{
    /// <summary>Square metres wanted against square metres of sheet.</summary>
    public static BoundWay Area { get; } =
        new("area", "the area of all parts with their kerfs against that of the sheets");

    /// <summary>Dual feasible functions.</summary>
    public static BoundWay DualFeasible { get; } =
        new("dual feasible functions", "Fekete & Schepers, Mathematical Methods of Operations Research 60 (2004)");

    /// <summary>Column generation with every size as it is.</summary>
    public static BoundWay Columns { get; } = new("column generation", ColumnSource);

    /// <summary>Column generation with sizes rounded down to a grid.</summary>
    public static BoundWay CoarseColumns { get; } =
        new(
            "column generation, sizes rounded down",
            ColumnSource + "; sizes rounded down to a grid, which can only lower the bound"
        );

    private const string ColumnSource =
        "Gilmore & Gomory, Operations Research 13 (1965); Beasley, Journal of the Operational Research Society 36 (1985); "
        + "Farley, Operations Research 38 (1990)";
}

using Nookwright.Measure;

namespace Nookwright.Cutting;

/// <summary>One plan of a front, with what it costs.</summary>
/// <param name="Plan">The plan; the virtual saw has executed it.</param>
/// <param name="Score">What it is worth, with its visits counted.</param>
/// <param name="Price">Of all sheets it buys; null where a price is not known.</param>
/// <param name="Sheets">Sheets bought, offcuts from the rack not counted.</param>
/// <param name="Splits">Dimensions that come from more than one visit; empty when each has its one.</param>
/// <param name="Next">For people: what the next plan of the front buys, for how many visits, and what then comes from different settings; null for the last.</param>
public sealed record FrontPlan(
    Plan Plan,
    PlanScore Score,
    decimal? Price,
    int Sheets,
    IReadOnlyList<SplitSize> Splits,
    string? Next
)
{
    /// <summary>How many visits it makes.</summary>
    public int Visits => Plan.Visits.Count;

    /// <summary>Rough cuts, dressing passes and crosscuts of pieces wider than a rip may be.</summary>
    public int Handling => Score.Handling;

    /// <summary>How far alike parts are expected to differ, as one standard deviation; null where nobody has predicted it.</summary>
    public Length? PredictedMismatch { get; init; }
}

/// <summary>A dimension that comes from more than one visit, so that not all its parts share the errors of one setting.</summary>
/// <param name="Size">The dimension.</param>
/// <param name="Visits">The visits it comes from, in order.</param>
public sealed record SplitSize(Length Size, IReadOnlyList<SplitVisit> Visits);

/// <summary>The parts that get a dimension at one visit.</summary>
/// <param name="Visit">The visit's number.</param>
/// <param name="Parts">Ids of the parts that have this dimension from it.</param>
public sealed record SplitVisit(int Visit, IReadOnlyList<string> Parts);

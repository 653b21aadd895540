using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Cutting;

/// <summary>The cutting plan: sheets, breakdown, visits in order, what is left long, offcuts.</summary>
/// <remarks>A plan is shown or printed only after the virtual saw has executed it cut by cut.</remarks>
/// <param name="Sheets">The sheets used, in the order they are broken down.</param>
/// <param name="Workpieces">Every piece of wood that exists at some time: sheets, chunks, strips, parts, offcuts.</param>
/// <param name="Breakdown">The first, rough cuts and the dressing passes, all with the track saw, in order.</param>
/// <param name="Visits">The visits in order.</param>
/// <param name="Findings">Parts that could not be planned and what would make it possible; cautions.</param>
/// <param name="DimensionsNow">How many distinct dimensions are cut now: no plan needs fewer visits.</param>
public sealed record Plan(
    IReadOnlyList<PlanSheet> Sheets,
    IReadOnlyList<Workpiece> Workpieces,
    IReadOnlyList<SawCut> Breakdown,
    IReadOnlyList<Visit> Visits,
    IReadOnlyList<Finding> Findings,
    int DimensionsNow
)
{
    /// <summary>What it was made from, to plan on from after an edit; null for a plan that was read or joined.</summary>
    public PlanOrigin? Origin { get; init; }

    /// <summary>How far from the best it can be; null for a plan nobody has proven anything about.</summary>
    public PlanProof? Proof { get; init; }

    /// <summary>The rounds this plan is made of, where one is issued; empty for a plan that may still change as a whole.</summary>
    /// <remarks>
    /// <see cref="Sheets"/>, <see cref="Workpieces"/> and <see cref="Visits"/> are those of all rounds together, and
    /// <see cref="Breakdown"/> that of round 1: the track saw's work of a later round comes after the visits before it.
    /// </remarks>
    public IReadOnlyList<CutRound> Rounds { get; init; } = [];

    /// <summary>Every cut in the order it is made.</summary>
    public IEnumerable<SawCut> Cuts =>
        Rounds.Count > 0 ? Rounds.SelectMany(r => r.Plan.Cuts) : Breakdown.Concat(Visits.SelectMany(v => v.Cuts));

    /// <summary>What one of its rounds adds, with the pieces of that round and of those before it, each as it was then.</summary>
    /// <param name="round">One of <see cref="Rounds"/>.</param>
    public Plan InRound(CutRound round) =>
        round.Plan with
        {
            Workpieces = [.. Rounds.Where(r => r.Number <= round.Number).SelectMany(r => r.Plan.Workpieces)],
        };

    /// <summary>How many distinct settings there are.</summary>
    public int Settings => Visits.Select(v => (v.Saw, v.Setting)).Distinct().Count();
}

/// <summary>A sheet taken from stock.</summary>
/// <param name="Number">From 1, as written on the sheet.</param>
/// <param name="Stock">The stock's id.</param>
/// <param name="Material">The material's id.</param>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across it.</param>
/// <param name="Workpiece">The id of the whole sheet as a workpiece.</param>
public sealed record PlanSheet(int Number, string Stock, string Material, Length Length, Length Width, string Workpiece)
{
    /// <summary>The wish by which it is kept as it was planned; null for a sheet that may change.</summary>
    public string? Pin { get; init; }
}

/// <summary>A piece of wood that exists between two cuts.</summary>
/// <param name="Id">As written on it: sheet <c>S2</c>, chunk <c>S2-C1</c>, …; unique.</param>
/// <param name="Sheet">The number of the sheet it comes from.</param>
/// <param name="X">Its low corner along the sheet's length.</param>
/// <param name="Y">Its low corner across.</param>
/// <param name="Length">Along the sheet's length.</param>
/// <param name="Width">Across.</param>
/// <param name="Use">What it is.</param>
/// <param name="Part">The part's id, for parts and held blanks; the run's id for a run that is held in one piece.</param>
public sealed record Workpiece(
    string Id,
    int Sheet,
    Length X,
    Length Y,
    Length Length,
    Length Width,
    WorkpieceUse Use,
    string? Part
);

/// <summary>What a workpiece is.</summary>
public enum WorkpieceUse
{
    /// <summary>A whole sheet, as it comes.</summary>
    Sheet,

    /// <summary>A rough piece from the breakdown that is cut further.</summary>
    Chunk,

    /// <summary>A strip cut to one final dimension.</summary>
    Strip,

    /// <summary>A finished part.</summary>
    Part,

    /// <summary>A blank kept oversize for a held part.</summary>
    Held,

    /// <summary>Worth keeping.</summary>
    Offcut,

    /// <summary>Not worth keeping.</summary>
    Waste,
}

/// <summary>Which saw, and what guides it.</summary>
public enum Saw
{
    /// <summary>The track saw, to a pencil line.</summary>
    Track,

    /// <summary>The table saw's fence.</summary>
    Fence,

    /// <summary>The crosscut stop.</summary>
    Stop,
}

/// <summary>What a cut is for.</summary>
public enum CutKind
{
    /// <summary>Breaks a sheet or chunk into rough pieces.</summary>
    Breakdown,

    /// <summary>Takes a factory or rough edge off so that it can be measured from.</summary>
    Dressing,

    /// <summary>Gives a final dimension.</summary>
    Sizing,

    /// <summary>
    /// Parts a strip with running grain at a pencil line, at the table saw, so that each piece can wait for its own
    /// setting. Both new edges are true; no dimension comes from it.
    /// </summary>
    Parting,
}

/// <summary>Which way a distance is measured on the sheet.</summary>
public enum SheetAxis
{
    /// <summary>Along the sheet's length, hence along its figure: the saw cuts across the figure.</summary>
    Length,

    /// <summary>Across the sheet: the saw cuts along the figure.</summary>
    Width,
}

/// <summary>The end of an axis a cut is measured from.</summary>
public enum FromEdge
{
    /// <summary>The low edge.</summary>
    Low,

    /// <summary>The high edge.</summary>
    High,
}

/// <summary>One pass of a saw through one workpiece, from edge to edge.</summary>
/// <param name="Number">From 1, over the whole plan.</param>
/// <param name="Kind">What for.</param>
/// <param name="On">The workpiece cut; it is gone afterwards.</param>
/// <param name="Along">Which way the distance is measured.</param>
/// <param name="From">From which edge.</param>
/// <param name="Distance">From that edge to the near side of the kerf: the size of what <see cref="Gives"/> names.</param>
/// <param name="Gives">
/// The piece between the edge and the kerf; for a dressing cut the sliver, whose size is the distance. Null when there is
/// none: a dressing cut at distance zero, where the blade takes the whole of the dressing.
/// </param>
/// <param name="Leaves">What is beyond the kerf; null when the kerf takes all of it.</param>
public sealed record SawCut(
    int Number,
    CutKind Kind,
    string On,
    SheetAxis Along,
    FromEdge From,
    Length Distance,
    string? Gives,
    string? Leaves
);

/// <summary>One time a saw stands at one setting, and everything cut there.</summary>
/// <param name="Number">From 1, in the order they are made.</param>
/// <param name="Saw">Fence or stop.</param>
/// <param name="Setting">The distance.</param>
/// <param name="Round">1 for what is cut now; later rounds follow readings.</param>
/// <param name="Cuts">The cuts in order: dressing and parting cuts before the sizing cuts that need them.</param>
/// <param name="Matches">Ids of the match groups this visit keeps together.</param>
public sealed record Visit(
    int Number,
    Saw Saw,
    Length Setting,
    int Round,
    IReadOnlyList<SawCut> Cuts,
    IReadOnlyList<string> Matches
);

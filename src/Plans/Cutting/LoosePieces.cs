namespace Nookwright.Cutting;

/// <summary>The pieces of a plan that lie about between two visits, waiting for a further cut.</summary>
/// <remarks>
/// Counted are chunks and strips that a later visit goes on with: each must be found, kept apart and not mixed up. Not
/// counted are sheets that have not been touched (they lean where they lean), finished parts (they stack by letter and are
/// not cut again), blanks kept for a reading (they are put away), offcuts and scrap. It is counted after each visit, when the
/// maker walks to the fence and whatever was on the saw has been put down.
/// A sheet is broken down, wholly, when its first piece is needed and not before: no cut of the breakdown depends on another
/// sheet's, nor on a visit. So its chunks lie about from that visit on.
/// </remarks>
/// <param name="Waits">Every wait, in the order in which the pieces come about.</param>
public sealed record LoosePieces(IReadOnlyList<PieceWait> Waits)
{
    /// <summary>How many lie about at most.</summary>
    public int Most { get; private init; }

    /// <summary>After which visit that is first so; 0 when no piece ever waits.</summary>
    public int MostAfter { get; private init; }

    /// <summary>For each sheet the visit that first needs a piece of it, which is when to break it down; sheets that are not visited are left out.</summary>
    public IReadOnlyDictionary<int, int> Lifts { get; private init; } = new Dictionary<int, int>();

    /// <summary>Walks through the cuts of a plan in order, or of one round of it.</summary>
    public static LoosePieces Of(Plan plan)
    {
        IEnumerable<Plan> rounds = plan.Rounds.Count > 0 ? plan.Rounds.Select(r => r.Plan) : [plan];
        var sheets = plan.Workpieces.ToDictionary(p => p.Id, p => p.Sheet);
        var lifts = rounds.Select(round => (Round: round, Lifts: LiftsOf(round, sheets))).ToList();
        var waits = lifts.SelectMany(r => WaitsOf(r.Round, r.Lifts, sheets)).ToList();
        var change = new int[plan.Visits.Select(v => v.Number).DefaultIfEmpty().Max() + 2];
        foreach (var wait in waits)
        {
            change[wait.Since]++;
            change[wait.Visit]--;
        }
        var (most, mostAfter, now) = (0, 0, 0);
        for (var visit = 0; visit < change.Length; visit++)
        {
            now += change[visit];
            if (now > most)
                (most, mostAfter) = (now, visit);
        }
        return new(waits)
        {
            Most = most,
            MostAfter = mostAfter,
            Lifts = lifts.SelectMany(r => r.Lifts).DistinctBy(l => l.Key).ToDictionary(),
        };
    }

    /// <summary>The pieces that lie about after a visit, by the visit they wait for.</summary>
    /// <param name="visit">Its number.</param>
    public IReadOnlyList<PieceWait> After(int visit) =>
        [.. Waits.Where(w => w.Since <= visit && visit < w.Visit).OrderBy(w => w.Visit)];

    /// <summary>The wait of a piece; null for one that is never put down to wait.</summary>
    public PieceWait? Of(string piece) => Waits.FirstOrDefault(w => w.Piece == piece);

    /// <summary>By sheet the visit of a round that first needs a piece of it; what an earlier round left is not on a sheet any more.</summary>
    private static Dictionary<int, int> LiftsOf(Plan round, Dictionary<string, int> sheets)
    {
        var lifts = new Dictionary<int, int>();
        foreach (var visit in round.Visits)
        foreach (var cut in visit.Cuts)
            if (sheets.TryGetValue(cut.On, out var sheet))
                lifts.TryAdd(sheet, visit.Number);
        return lifts;
    }

    private static IEnumerable<PieceWait> WaitsOf(
        Plan round,
        Dictionary<int, int> lifts,
        Dictionary<string, int> sheets
    )
    {
        var next = NextVisits(round);
        var held = round.Workpieces.Where(p => p.Use == WorkpieceUse.Held).Select(p => p.Id).ToHashSet();
        foreach (var (cut, at) in CutsOf(round))
        foreach (var piece in new[] { cut.Gives, cut.Leaves }.OfType<string>())
            if (next.TryGetValue(piece, out var visit) && visit > at && !held.Contains(piece))
                yield return new(
                    piece,
                    at > 0 ? at : lifts.GetValueOrDefault(sheets.GetValueOrDefault(piece), visit),
                    visit
                );
    }

    private static Dictionary<string, int> NextVisits(Plan plan)
    {
        var next = new Dictionary<string, int>();
        foreach (var (cut, visit) in CutsOf(plan))
            next[cut.On] = visit;
        return next;
    }

    private static IEnumerable<(SawCut Cut, int Visit)> CutsOf(Plan plan) =>
        plan
            .Breakdown.Select(cut => (cut, 0))
            .Concat(plan.Visits.SelectMany(visit => visit.Cuts.Select(cut => (cut, visit.Number))));
}

/// <summary>A piece that is put on the stack of the visit that goes on with it.</summary>
/// <param name="Piece">The workpiece's id.</param>
/// <param name="Since">
/// The number of the visit it comes from, or of the one its sheet is broken down for: that may be the one it waits for.
/// </param>
/// <param name="Visit">The number of the visit it waits for: it goes on the stack for that visit.</param>
public sealed record PieceWait(string Piece, int Since, int Visit);

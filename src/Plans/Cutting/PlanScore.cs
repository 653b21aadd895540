namespace Nookwright.Cutting;

/// <summary>How good a cutting plan is: all parts first, then nothing split that must match, then fewest visits, then least bought, then least handling, then fewest loose pieces.</summary>
/// <remarks>
/// There are no weights to tune. A later term decides only between plans that are equal in every earlier one, so that nobody
/// has to say how many sheets a fence setting is worth. A smaller score is a better plan.
/// </remarks>
/// <param name="Missing">Parts without a place.</param>
/// <param name="Splits">Dimensions that are visited more often than once in a round.</param>
/// <param name="Visits">Visits, or 0 when sheets alone count.</param>
/// <param name="Bought">
/// For each material the price of its sheets where all prices are known, else their square metres; offcuts without a price
/// count nothing. A sum of the two is only good for comparing plans of one request.
/// </param>
/// <param name="Sheets">Sheets bought.</param>
/// <param name="FromTheRack">Offcuts used, less than nothing: of two plans that buy the same, the one that clears the rack.</param>
/// <param name="Handling">
/// Rough cuts, dressing passes and crosscuts of pieces wider than a rip may be: each is one time a large piece is set up, so
/// that they are counted alike.
/// </param>
/// <param name="Loose">How many pieces lie about at most, waiting for a further cut.</param>
public readonly record struct PlanScore(
    int Missing,
    int Splits,
    int Visits,
    decimal Bought,
    int Sheets,
    int FromTheRack,
    int Handling,
    int Loose
) : IComparable<PlanScore>
{
    /// <summary>True when loose pieces come before visits and handling, which are their price.</summary>
    public bool IsBoxByBox { get; init; }

    /// <summary>The score of a plan.</summary>
    public static PlanScore Of(Plan plan, CutRequest request)
    {
        var runs = request.Runs.ToDictionary(r => r.Id, r => r.Parts.Count);
        var made = plan.Workpieces.Where(p => p.Part is not null).Sum(p => IsRun(p) ? runs[p.Part!] : 1);
        bool IsRun(Workpiece piece) => piece.Use == WorkpieceUse.Held && runs.ContainsKey(piece.Part!);
        var repeats = plan.Visits.Count - plan.Visits.Select(v => (v.Setting, v.Round)).Distinct().Count();
        var stock = request.Stock.ToDictionary(s => s.Id);
        var bought = plan.Sheets.Sum(s => (decimal)StockCost.Of(stock[s.Stock], request.Stock)) / 10_000;
        var isVisitsFirst = request.Rules.VisitsFirst;
        return new(
            request.Parts.Count - made,
            isVisitsFirst ? repeats : 0,
            isVisitsFirst ? plan.Visits.Count : 0,
            bought,
            plan.Sheets.Count(s => !stock[s.Stock].IsOffcut),
            -plan.Sheets.Count(s => stock[s.Stock].IsOffcut),
            HandlingOf(plan, request),
            LoosePieces.Of(plan).Most
        )
        {
            IsBoxByBox = request.Rules.BoxByBox,
        };
    }

    /// <inheritdoc/>
    public int CompareTo(PlanScore other) =>
        IsBoxByBox
            ? (Missing, Wood, Loose, (Visits, Handling)).CompareTo(
                (other.Missing, other.Wood, other.Loose, (other.Visits, other.Handling))
            )
            : (Missing, (Splits, Visits), Wood, (Handling, Loose)).CompareTo(
                (other.Missing, (other.Splits, other.Visits), other.Wood, (other.Handling, other.Loose))
            );

    private (decimal, int, int) Wood => (Bought, Sheets, FromTheRack);

    private static int HandlingOf(Plan plan, CutRequest request)
    {
        var pieces = plan.Workpieces.ToDictionary(p => p.Id);
        var wide = plan
            .Visits.Where(v => v.Saw == Saw.Stop)
            .SelectMany(v => v.Cuts)
            .Count(c =>
                (c.Along == SheetAxis.Length ? pieces[c.On].Width : pieces[c.On].Length) > request.Saws.RipReach
            );
        return wide + (plan.Rounds.Count > 0 ? plan.Rounds.Sum(r => r.Plan.Breakdown.Count) : plan.Breakdown.Count);
    }
}

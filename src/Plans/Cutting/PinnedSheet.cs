namespace Nookwright.Cutting;

/// <summary>A sheet the maker keeps as it was planned: these parts at these places, by these cuts, and nothing else from it.</summary>
/// <param name="Id">The wish's id.</param>
/// <param name="Plan">The sheet alone as a plan: number 1, its cuts and visits counted from 1.</param>
/// <param name="Asked">What that plan was asked for: the parts on it with the sizes of that time, its stock, the saws.</param>
public sealed record PinnedSheet(string Id, Plan Plan, CutRequest Asked)
{
    /// <summary>Ids of the parts that come from it, held ones among them; a run that is held in one piece counts with all its parts.</summary>
    public IReadOnlyList<string> Parts => [.. Asked.Parts.Select(p => p.Id)];

    /// <summary>The sheet.</summary>
    public PlanSheet Sheet => Plan.Sheets[0];

    /// <summary>A sheet of a plan that is not issued, to be kept as it is there.</summary>
    /// <param name="id">The wish's id.</param>
    /// <param name="plan">The plan, or one round of it.</param>
    /// <param name="number">The number of the sheet in it.</param>
    /// <param name="request">What the plan was asked for.</param>
    public static PinnedSheet Of(string id, Plan plan, int number, CutRequest request)
    {
        var sheet = plan.Sheets.First(s => s.Number == number);
        var pieces = plan.Workpieces.Where(p => p.Sheet == number).ToDictionary(p => p.Id);
        var names = new Renaming(sheet.Workpiece, "S1", 1);
        List<SawCut> breakdown = [.. plan.Breakdown.Where(c => pieces.ContainsKey(c.On)).Select(names.Of)];
        var visits = plan
            .Visits.Select(v => v with { Cuts = [.. v.Cuts.Where(c => pieces.ContainsKey(c.On))], Matches = [] })
            .Where(v => v.Cuts.Count > 0)
            .Select((v, i) => v with { Number = i + 1, Round = 1, Cuts = [.. v.Cuts.Select(names.Of)] })
            .ToList();
        var parts = PartsOf(pieces.Values, request);
        var alone = new Plan(
            [sheet with { Number = 1, Workpiece = "S1", Pin = null }],
            [.. pieces.Values.Select(names.Of)],
            breakdown,
            visits,
            [],
            parts.Where(p => !p.IsHeld).SelectMany(p => new[] { p.Length, p.Width }).Distinct().Count()
        );
        return new(id, alone, AskedOf(request, parts, sheet.Stock));
    }

    /// <summary>What of a request such a sheet answers: some parts, one sheet of a stock.</summary>
    /// <param name="request">The request.</param>
    /// <param name="parts">The parts on the sheet.</param>
    /// <param name="stock">The stock's id.</param>
    internal static CutRequest AskedOf(CutRequest request, IReadOnlyList<CutPart> parts, string stock)
    {
        var here = parts.Select(p => p.Id).ToHashSet();
        return request with
        {
            Parts = parts,
            Matches = [],
            Runs = [.. request.Runs.Where(r => r.Parts.All(here.Contains))],
            Apart =
            [
                .. request
                    .Apart.Select(a => a with { Parts = [.. a.Parts.Where(here.Contains)] })
                    .Where(a => a.Parts.Count > 1),
            ],
            Stock = [.. request.Stock.Where(s => s.Id == stock).Select(s => s with { Quantity = 1 })],
            PinnedSheets = [],
        };
    }

    private static IReadOnlyList<CutPart> PartsOf(IEnumerable<Workpiece> pieces, CutRequest request)
    {
        var runs = request.Runs.ToDictionary(r => r.Id, r => r.Parts);
        var made = pieces
            .Where(p => p.Use is WorkpieceUse.Part or WorkpieceUse.Held)
            .SelectMany(p => p.Use == WorkpieceUse.Held && runs.TryGetValue(p.Part!, out var run) ? run : [p.Part!])
            .ToHashSet();
        return [.. request.Parts.Where(p => made.Contains(p.Id))];
    }

    /// <summary>The same pieces and cuts on a sheet of another number and name; cuts are counted from 1.</summary>
    internal sealed class Renaming(string was, string now, int sheet)
    {
        private int _cuts;

        /// <summary>A piece.</summary>
        public Workpiece Of(Workpiece piece) => piece with { Id = Name(piece.Id), Sheet = sheet };

        /// <summary>A cut.</summary>
        public SawCut Of(SawCut cut) =>
            cut with
            {
                Number = ++_cuts,
                On = Name(cut.On),
                Gives = cut.Gives is null ? null : Name(cut.Gives),
                Leaves = cut.Leaves is null ? null : Name(cut.Leaves),
            };

        /// <summary>A piece's name: all of a sheet begin with the sheet's own.</summary>
        public string Name(string id) =>
            id.StartsWith(was, StringComparison.Ordinal) ? now + id[was.Length..] : $"{now}-{id}";
    }
}

using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Planning;

namespace Nookwright.Rounds;

/// <summary>Places a plan that was made for one round alone on the sheets of all rounds, and counts its cuts and visits on.</summary>
internal sealed class RoundPlacing
{
    private readonly Plan _alone;
    private readonly CutRequest _asked;
    private readonly IssuedPlan _issued;
    private readonly Dictionary<int, Base> _bases = [];
    private readonly Dictionary<string, Workpiece> _pieces;
    private readonly Dictionary<string, string> _same = [];
    private readonly int _visits;
    private int _cuts;

    private RoundPlacing(Plan alone, CutRequest asked, IssuedPlan issued)
    {
        (_alone, _asked, _issued) = (alone, asked, issued);
        _pieces = alone.Workpieces.ToDictionary(p => p.Id);
        _cuts = issued.Rounds.Sum(r => r.Plan.Cuts.Count());
        _visits = issued.Rounds.Sum(r => r.Plan.Visits.Count);
        var number = issued.Sheets;
        foreach (var sheet in alone.Sheets)
            _bases[sheet.Number] = asked.Stock.First(s => s.Id == sheet.Stock).LeftAs is { } left
                ? Base.Of(issued.Piece(left), Grown(sheet, left))
                : new(++number, $"S{number}", (Length.Zero, Length.Zero), (Length.Zero, Length.Zero), true);
        foreach (var cut in alone.Cuts.Where(IsDone))
            _same[cut.Leaves!] = cut.On;
    }

    /// <summary>How much larger than it is a blank was planned, so that its true edges were thought rough.</summary>
    private (Length X, Length Y) Grown(PlanSheet sheet, string left)
    {
        var piece = _issued.Piece(left);
        return (sheet.Length - piece.Length, sheet.Width - piece.Width);
    }

    private int Number => _issued.Rounds.Count + 1;

    /// <summary>The round.</summary>
    /// <param name="plan">Its plan by itself, in which each blank and offcut is a sheet.</param>
    /// <param name="alone">What that was asked for.</param>
    /// <param name="asked">The same with its true materials.</param>
    /// <param name="issued">The rounds before.</param>
    public static CutRound Of(Plan plan, CutRequest alone, CutRequest asked, IssuedPlan issued) =>
        new RoundPlacing(plan, asked, issued).Round(alone);

    private CutRound Round(CutRequest alone)
    {
        var plan = new Plan(
            [.. _alone.Sheets.Where(s => _bases[s.Number].IsNew).Select(Placed)],
            [.. _alone.Workpieces.Where(IsNew).Select(Placed).Where(p => p.Length.IsPositive && p.Width.IsPositive)],
            [.. Placed(_alone.Breakdown)],
            [.. _alone.Visits.Select(Placed)],
            [],
            _alone.DimensionsNow
        )
        {
            Proof = _alone.Proof is { } proof ? JoinedProof.Placed(proof, Number, Materials()) : null,
        };
        return new(Number, plan with { Findings = Findings(plan, alone) }, _asked, null);
    }

    private HashSet<string> Materials() => [.. _asked.Stock.Select(s => s.Material)];

    /// <summary>What a caution says of visits is said again, with their numbers here.</summary>
    private IReadOnlyList<Trouble.Finding> Findings(Plan plan, CutRequest alone)
    {
        var job = JobReader.Read(alone);
        var said = Cautions.Of(_alone, job).Select(f => f.Rule).ToHashSet();
        var all = _issued.Rounds.SelectMany(r => r.Plan.Workpieces).Concat(plan.Workpieces);
        return
        [
            .. _alone.Findings.Where(f => !said.Contains(f.Rule)),
            .. Cautions.Of(plan with { Workpieces = [.. all] }, job),
        ];
    }

    /// <summary>Dressing an edge that is true already: nothing is to be done.</summary>
    private bool IsDone(SawCut cut) => cut is { Kind: CutKind.Dressing, Leaves: not null } && Thought(cut).IsPositive;

    /// <summary>How much of what a cut is measured from is not there.</summary>
    private Length Thought(SawCut cut)
    {
        var piece = _pieces[cut.On];
        var (low, grown) =
            cut.Along == SheetAxis.Length
                ? (piece.X, _bases[piece.Sheet].Grown.X)
                : (piece.Y, _bases[piece.Sheet].Grown.Y);
        return low < grown ? grown - low : Length.Zero;
    }

    /// <summary>A sheet that is a blank or an offcut exists already.</summary>
    private bool IsNew(Workpiece piece) =>
        !_same.ContainsKey(piece.Id) && (piece.Use != WorkpieceUse.Sheet || _bases[piece.Sheet].IsNew);

    private PlanSheet Placed(PlanSheet sheet) =>
        sheet with
        {
            Number = _bases[sheet.Number].Sheet,
            Material = _asked.Stock.First(s => s.Id == sheet.Stock).Material,
            Workpiece = _bases[sheet.Number].Name,
        };

    private Workpiece Placed(Workpiece piece)
    {
        var on = _bases[piece.Sheet];
        var (x, y) = (Length.Max(piece.X, on.Grown.X), Length.Max(piece.Y, on.Grown.Y));
        return piece with
        {
            Id = Name(piece.Id),
            Sheet = on.Sheet,
            X = x - on.Grown.X + on.At.X,
            Y = y - on.Grown.Y + on.At.Y,
            Length = piece.X + piece.Length - x,
            Width = piece.Y + piece.Width - y,
        };
    }

    private IEnumerable<SawCut> Placed(IEnumerable<SawCut> cuts) => cuts.Where(c => !IsDone(c)).Select(Placed);

    private SawCut Placed(SawCut cut) =>
        cut with
        {
            Number = ++_cuts,
            On = Name(cut.On),
            Distance = cut.Kind == CutKind.Dressing ? cut.Distance : cut.Distance - Thought(cut),
            Gives = cut.Gives is { } gives ? Name(gives) : null,
            Leaves = cut.Leaves is { } leaves ? Name(leaves) : null,
        };

    private Visit Placed(Visit visit) =>
        visit with
        {
            Number = visit.Number + _visits,
            Round = Number,
            Cuts = [.. Placed(visit.Cuts)],
        };

    /// <summary>Pieces go by their sheet's name and more: <c>S1-C2</c> of a blank <c>S3-H1</c> is <c>S3-H1-C2</c>.</summary>
    private string Name(string id)
    {
        while (_same.TryGetValue(id, out var before))
            id = before;
        var sheet = _pieces[id].Sheet;
        return _bases[sheet].Name + id[_alone.Sheets[sheet - 1].Workpiece.Length..];
    }

    /// <summary>Where a sheet of the round's own plan lies among the sheets of all rounds.</summary>
    private sealed record Base(int Sheet, string Name, (Length X, Length Y) At, (Length X, Length Y) Grown, bool IsNew)
    {
        public static Base Of(Workpiece left, (Length X, Length Y) grown) =>
            new(left.Sheet, left.Id, (left.X, left.Y), grown, false);
    }
}

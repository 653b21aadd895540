using Nookwright.Cutting;

namespace Nookwright.Sawing;

/// <summary>Executes a plan of several rounds, each with the saws of its time, on what the rounds before left.</summary>
internal sealed class RoundsSaw
{
    private readonly Plan _plan;
    private readonly CutRequest _request;
    private readonly Dictionary<string, BenchPiece> _left = [];
    private readonly Dictionary<string, Workpiece> _records = [];
    private readonly Dictionary<string, StockPiece> _stock = [];
    private readonly List<PlanSheet> _sheets = [];
    private readonly List<Visit> _visits = [];
    private int _cuts;

    private RoundsSaw(Plan plan, CutRequest request) => (_plan, _request) = (plan, request);

    /// <summary>The first thing that cannot be done, with the number of its cut where it is one; or null twice.</summary>
    public static (string? Why, int? Cut) Trouble(Plan plan, CutRequest request)
    {
        var saw = new RoundsSaw(plan, request);
        for (var i = 0; i < plan.Rounds.Count; i++)
        {
            var (why, cut) = saw.Execute(plan.Rounds[i], i + 1);
            if (why is not null)
                return ($"Round {i + 1}: {why}", cut);
        }
        return (RoundsCheck.Whole(plan, saw._records) ?? RoundsCheck.Parts(plan, request), null);
    }

    private (string? Why, int? Cut) Execute(CutRound round, int number)
    {
        foreach (var stock in round.Asked.Stock.Where(s => s.LeftAs is null))
            _stock.TryAdd(stock.Id, stock);
        if (RoundsCheck.Numbers(round, number, _sheets.Count, _visits.Count) is { } order)
            return (order, null);
        if ((Names(round) ?? StockCheck.Trouble(FromOne(round.Plan), round.Asked)) is { } listed)
            return (listed, null);
        if (VisitCheck.Trouble(round.Plan, round.Asked) is { } visits)
            return (visits, null);
        var bench = new SawBench(round.Asked.Saws, round.Plan.Workpieces.ToDictionary(p => p.Id));
        if ((Lay(bench, round) ?? Bring(bench, round)) is { } laid)
            return (laid, null);
        if (CutAll(bench, round) is { Why: not null } failed)
            return failed;
        return (Yield(bench, round), null);
    }

    private string? Names(CutRound round)
    {
        foreach (var piece in round.Plan.Workpieces)
            if (!_records.TryAdd(piece.Id, piece))
                return $"Two pieces are called {piece.Id}.";
        return null;
    }

    /// <summary>The round's sheets and visits counted from one, as a plan of its own.</summary>
    private Plan FromOne(Plan plan) =>
        plan with
        {
            Sheets = [.. plan.Sheets.Select(s => s with { Number = s.Number - _sheets.Count })],
            Visits = [.. plan.Visits.Select(v => v with { Number = v.Number - _visits.Count })],
        };

    private static string? Lay(SawBench bench, CutRound round)
    {
        var kinds = round.Asked.Stock.ToDictionary(s => s.Id);
        return round.Plan.Sheets.Select(s => bench.Lay(s, kinds[s.Stock])).FirstOrDefault(t => t is not null);
    }

    /// <summary>What earlier rounds left is there as it was left, and what is kept for a part is not touched before that part is due.</summary>
    private string? Bring(SawBench bench, CutRound round)
    {
        foreach (var stock in round.Asked.Stock.Where(s => s.LeftAs is not null))
        {
            if (!_left.Remove(stock.LeftAs!, out var piece))
                return $"{stock.LeftAs} is to be cut, and no earlier round left it.";
            if ((piece.X.Size, piece.Y.Size) != (stock.Length, stock.Width))
                return $"{stock.LeftAs} was left as {piece.X.Size} × {piece.Y.Size}, and not as {stock.Length} × {stock.Width}.";
            if (StillKeptFor(_records[piece.Id], round) is { } waiting)
                return $"{piece.Id} is kept for {waiting}, which still waits.";
            bench.Bring(piece, stock, _records[piece.Id].Use == WorkpieceUse.Held);
        }
        return null;
    }

    /// <summary>The part a blank is kept for and that neither this round cuts nor the job has a size for; or null.</summary>
    private string? StillKeptFor(Workpiece piece, CutRound round)
    {
        if (piece.Use != WorkpieceUse.Held)
            return null;
        var members = _plan
            .Rounds.SelectMany(r => r.Asked.Runs)
            .Where(r => r.Id == piece.Part)
            .SelectMany(r => r.Parts)
            .Append(piece.Part);
        var due = round.Asked.Parts.Where(p => !p.IsHeld).Select(p => p.Id).ToHashSet();
        return _request
            .Parts.FirstOrDefault(p => p.IsHeld && !p.IsSpare && !due.Contains(p.Id) && members.Contains(p.Id))
            ?.Id;
    }

    private (string? Why, int? Cut) CutAll(SawBench bench, CutRound round)
    {
        IEnumerable<(SawCut Cut, Visit? Visit)> cuts =
        [
            .. round.Plan.Breakdown.Select(c => (c, (Visit?)null)),
            .. round.Plan.Visits.SelectMany(v => v.Cuts.Select(c => (c, (Visit?)v))),
        ];
        foreach (var (cut, visit) in cuts)
        {
            _cuts++;
            var trouble = cut.Number == _cuts ? bench.Make(cut, visit) : $"it is number {_cuts} in order.";
            if (trouble is not null)
                return ($"Cut {cut.Number} cannot be made: {trouble}", cut.Number);
        }
        return (bench.NeverSeen is { } invented ? $"{invented} is listed, and no cut gives it." : null, null);
    }

    private string? Yield(SawBench bench, CutRound round)
    {
        _sheets.AddRange(round.Plan.Sheets);
        _visits.AddRange(round.Plan.Visits);
        var whole = round.Plan with { Sheets = [.. _sheets], Visits = [.. _visits] };
        var asked = round.Asked with
        {
            Stock = [.. _stock.Values],
            Parts = [.. round.Asked.Parts.Select(p => OfLeftover(p, round) is null ? p : p with { From = null })],
        };
        foreach (var (id, piece) in bench.Here)
            _left[id] = piece;
        return YieldCheck.Trouble(whole, asked, bench.Here) ?? Places(bench, round);
    }

    /// <summary>A part that waited comes out of the piece that was kept for it.</summary>
    private string? Places(SawBench bench, CutRound round)
    {
        foreach (var piece in round.Plan.Workpieces.Where(p => p.Use == WorkpieceUse.Part))
        {
            var part = round.Asked.Parts.First(p => p.Id == piece.Part);
            if (OfLeftover(part, round) is { } from && !IsWithin(bench.Here[piece.Id], _records[from]))
                return $"{part.Id} is to come from {from}, and does not.";
        }
        return null;
    }

    private static string? OfLeftover(CutPart part, CutRound round) =>
        part.From is null ? null : round.Asked.Stock.FirstOrDefault(s => s.Id == part.From)?.LeftAs;

    private static bool IsWithin(BenchPiece piece, Workpiece whole) =>
        piece.Sheet == whole.Sheet
        && piece.X.At >= whole.X
        && piece.X.End <= whole.X + whole.Length
        && piece.Y.At >= whole.Y
        && piece.Y.End <= whole.Y + whole.Width;
}

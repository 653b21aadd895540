using System.Text.Json.Nodes;
using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Trouble;

namespace Nookwright.Rounds;

/// <summary>The issued rounds of a job: what they make of each part, and what they leave.</summary>
public sealed class IssuedPlan
{
    private readonly Dictionary<string, MadePart> _made = [];
    private readonly Dictionary<string, KeptBlank> _kept = [];
    private readonly Dictionary<string, Workpiece> _pieces;
    private readonly Dictionary<int, StockPiece> _stock = [];

    private IssuedPlan(IReadOnlyList<CutRound> rounds)
    {
        Rounds = rounds;
        _pieces = rounds.SelectMany(r => r.Plan.Workpieces).ToDictionary(p => p.Id);
        var cut = rounds.SelectMany(r => r.Plan.Cuts).Select(c => c.On).ToHashSet();
        foreach (var round in rounds)
            Take(round, cut);
        Offcuts = [.. _pieces.Values.Where(p => p.Use == WorkpieceUse.Offcut && !cut.Contains(p.Id))];
    }

    /// <summary>The rounds, the first one first; at least one.</summary>
    public IReadOnlyList<CutRound> Rounds { get; }

    /// <summary>Leftovers worth keeping that no issued round cuts.</summary>
    internal IReadOnlyList<Workpiece> Offcuts { get; }

    /// <summary>Blanks that no issued round cuts, by the parts they are kept for.</summary>
    internal IReadOnlyDictionary<string, KeptBlank> Kept => _kept;

    /// <summary>Parts that an issued round cuts to size, by id; of one that was cut in two rounds, the later.</summary>
    internal IReadOnlyDictionary<string, MadePart> Made => _made;

    /// <summary>How many sheets the rounds take.</summary>
    internal int Sheets => Rounds.Sum(r => r.Plan.Sheets.Count);

    /// <summary>Reads the issued rounds of a document and has the virtual saw execute them; or says which field cannot be taken.</summary>
    /// <param name="issued">At least one.</param>
    public static Outcome<IssuedPlan> Read(IReadOnlyList<IssuedRound> issued)
    {
        var rounds = new List<CutRound>();
        foreach (var (index, round) in issued.Index())
        {
            if (!PlanJson.Read(JsonObject.Create(round.Plan)).Take(out var read, out var refusal))
                return refusal with { Field = $"issued/{index}/plan/{refusal.Field}" };
            if (RequestSense.Trouble(read.Request) is { } nonsense)
                return new Refusal($"{nonsense}: restore the file, or withdraw the round.", $"issued/{index}/plan");
            rounds.Add(new(round.Round, read.Plan, read.Request, round.Date));
        }
        return Of(rounds);
    }

    /// <summary>Issued rounds as they are in memory, executed by the virtual saw; or why they cannot be cut.</summary>
    public static Outcome<IssuedPlan> Of(IReadOnlyList<CutRound> rounds)
    {
        ArgumentOutOfRangeException.ThrowIfZero(rounds.Count);
        var whole = JoinedRounds.Of(rounds, NoSpares);
        return VirtualSaw.Run(whole, JoinedRounds.Asked(rounds)).Why is { } trouble
            ? new Refusal(
                $"The issued plan cannot be cut as it stands here: {trouble} Withdraw it, or restore the file.",
                "issued"
            )
            : new IssuedPlan(rounds);
    }

    /// <summary>The letter that is written on a part or on its blank; null where neither is issued at this size.</summary>
    /// <param name="part">The part's id.</param>
    /// <param name="length">Its length now.</param>
    /// <param name="width">Its width now.</param>
    public string? LetterOf(string part, Length length, Length width)
    {
        if (_made.TryGetValue(part, out var made))
            return (made.As.Length, made.As.Width) == (length, width) ? made.As.Letter : null;
        return _kept.TryGetValue(part, out var kept) ? kept.As.Letter : null;
    }

    /// <summary>Every letter that is written on issued wood.</summary>
    public IEnumerable<string> Letters => Rounds.SelectMany(r => r.Asked.Parts).Select(p => p.Letter).Distinct();

    /// <summary>A piece by its id.</summary>
    internal Workpiece Piece(string id) => _pieces[id];

    /// <summary>What kind of sheet a piece is from.</summary>
    internal StockPiece StockOf(Workpiece piece) => _stock[piece.Sheet];

    /// <summary>True when a piece's low edge was dressed, or cut by the table saw, before it was put away, or is trusted as it came.</summary>
    internal bool IsTrueLow(string piece, SheetAxis axis)
    {
        var cut = Rounds.SelectMany(r => r.Plan.Cuts).FirstOrDefault(c => c.Gives == piece || c.Leaves == piece);
        if (cut is null)
            return StockOf(Piece(piece)) is { TrustsEdges: true } sheet
                && (axis == SheetAxis.Width || !sheet.OutOfSquare.IsPositive);
        var isLowSide = (cut.Gives == piece) == (cut.From == FromEdge.Low);
        return cut.Along != axis || isLowSide ? IsTrueLow(cut.On, axis) : cut.Kind != CutKind.Breakdown;
    }

    private static IReadOnlySet<(int Round, string Part)> NoSpares { get; } = new HashSet<(int, string)>();

    private void Take(CutRound round, HashSet<string> cut)
    {
        var stock = round.Asked.Stock.ToDictionary(s => s.Id);
        foreach (var sheet in round.Plan.Sheets)
            _stock[sheet.Number] = stock[sheet.Stock];
        var parts = round.Asked.Parts.ToDictionary(p => p.Id);
        var runs = round.Asked.Runs.ToDictionary(r => r.Id);
        foreach (var piece in round.Plan.Workpieces)
            if (piece is { Use: WorkpieceUse.Part, Part: { } made })
                _made[made] = new(round.Number, parts[made], piece);
            else if (piece is { Use: WorkpieceUse.Held, Part: { } kept } && !cut.Contains(piece.Id))
                foreach (var member in runs.TryGetValue(kept, out var run) ? run.Parts : [kept])
                    _kept[member] = new(parts[member], piece, run);
    }
}

/// <summary>A part that was cut to size.</summary>
/// <param name="Round">In which round.</param>
/// <param name="As">What was asked for then.</param>
/// <param name="Piece">The piece it is.</param>
internal sealed record MadePart(int Round, CutPart As, Workpiece Piece);

/// <summary>A blank that waits.</summary>
/// <param name="As">What was asked for then.</param>
/// <param name="Piece">The blank.</param>
/// <param name="Run">The run it is kept for whole; null for one part.</param>
internal sealed record KeptBlank(CutPart As, Workpiece Piece, CutRun? Run);

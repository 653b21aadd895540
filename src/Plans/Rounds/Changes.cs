using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Rounds;

/// <summary>What a job asks for now, held against what is issued: what stays, what waits, what the next round cuts.</summary>
public sealed class Changes
{
    private readonly IssuedPlan _issued;
    private readonly CutRequest _now;
    private readonly List<CutPart> _whole = [];
    private readonly List<CutPart> _due = [];
    private readonly List<CutPart> _more = [];
    private readonly HashSet<(int Round, string Part)> _spares = [];
    private readonly List<Finding> _findings = [];
    private readonly List<Finding> _warnings = [];

    private Changes(IssuedPlan issued, CutRequest now)
    {
        // Spares come from an earlier look at the same rounds.
        (_issued, _now) = (issued, now with { Parts = [.. now.Parts.Where(p => !p.IsSpare)] });
        foreach (var part in _now.Parts)
            Place(part);
        PlaceChunks();
        TakeAway();
        var stock = new RoundStock(issued, _now, _due, FreeBlanks());
        Next = RequestOfRound.Of(_now, [.. _due, .. _more], stock.Pieces, _findings);
        Whole = _now with
        {
            Parts = [.. _now.Parts.Select(p => _whole.First(w => w.Id == p.Id)), .. _whole.Where(p => p.IsSpare)],
            Runs = [.. _now.Runs, .. RunsStillKept()],
            Stock = [.. _now.Stock, .. StockOfThen()],
        };
    }

    /// <summary>What the next round is asked for; without parts when nothing is to be cut.</summary>
    public CutRequest Next { get; }

    /// <summary>What all rounds together are asked for: issued parts as they were issued, spare ones among them.</summary>
    public CutRequest Whole { get; }

    /// <summary>What has changed since, for people.</summary>
    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>Edits that have outgrown a blank whose reading is still awaited: told before anything is planned.</summary>
    /// <remarks><see cref="Whole"/> has such parts as they were issued, so that this is seen in what the job itself asks for, and there only.</remarks>
    public IReadOnlyList<Finding> Warnings => _warnings;

    internal IReadOnlySet<(int Round, string Part)> Spares => _spares;

    /// <summary>Holds what is asked for now against what is issued.</summary>
    /// <param name="issued">The issued rounds.</param>
    /// <param name="now">All parts of the job as they are now.</param>
    public static Changes Of(IssuedPlan issued, CutRequest now) => new(issued, now);

    private void Place(CutPart part)
    {
        if (_issued.Made.TryGetValue(part.Id, out var made))
            PlaceMade(part, made);
        else if (!_issued.Kept.ContainsKey(part.Id))
            CutAnew(part);
    }

    private void PlaceMade(CutPart part, MadePart made)
    {
        if (part.IsHeld)
            _findings.Add(ChangeFindings.WaitsAgain(part, made));
        if (part.IsHeld || IsSame(part, made.As))
        {
            _whole.Add(Kept(made.As, part) with { Awaits = part.Awaits });
            return;
        }
        _findings.Add(ChangeFindings.Changed(part, made, _now.Units));
        Spare(made);
        CutAnew(part);
    }

    /// <summary>Blanks whose parts all have their sizes are cut; one whose part has outgrown it is free, and the part cut from other wood.</summary>
    private void PlaceChunks()
    {
        foreach (var chunk in _issued.Kept.Values.GroupBy(k => k.Piece.Id))
        {
            var blanks = chunk.ToDictionary(k => k.As.Id);
            var parts = _now.Parts.Where(p => blanks.ContainsKey(p.Id)).ToList();
            if (parts.Any(p => p.IsHeld))
                Wait(parts, blanks);
            else if (parts.Count > 0)
                Cut(parts, blanks[parts[0].Id]);
        }
    }

    /// <summary>Parts stay in their blank as it was issued; an edit that outgrows it is told at once, while it can be undone.</summary>
    private void Wait(List<CutPart> parts, Dictionary<string, KeptBlank> blanks)
    {
        _whole.AddRange(parts.Select(p => Kept(blanks[p.Id].As, p) with { Awaits = p.Awaits }));
        var planned = parts.Select(Planned).ToList();
        var fit = BlankFit.Of(planned, blanks[parts[0].Id], _now, _issued);
        if (fit.Short.IsPositive)
            _warnings.Add(ChangeFindings.WillOutgrow(planned, blanks[parts[0].Id], fit, _now));
    }

    /// <summary>The size a held part is planned to have once its reading is there.</summary>
    private CutPart Planned(CutPart part) =>
        part.IsHeld
            ? part with
            {
                Length = part.Length - _now.Saws.Allowance,
                Width = part.Width - _now.Saws.Allowance,
            }
            : part;

    private void Cut(List<CutPart> parts, KeptBlank blank)
    {
        var fit = BlankFit.Of(parts, blank, _now, _issued);
        if (fit.Short.IsPositive || parts.Any(p => p.Material != blank.As.Material))
        {
            _findings.Add(ChangeFindings.Outgrown(parts, blank, fit, _now));
            foreach (var part in parts)
                CutAnew(part);
            return;
        }
        _whole.AddRange(parts);
        _due.AddRange(parts.Select(p => p with { From = blank.Piece.Id }));
    }

    private void CutAnew(CutPart part)
    {
        _whole.Add(part);
        _more.Add(part);
    }

    /// <summary>What is issued and asked for no more: cut parts are spare, blanks are free.</summary>
    private void TakeAway()
    {
        var asked = _now.Parts.Select(p => p.Id).ToHashSet();
        var gone = _issued.Made.Values.Where(m => !asked.Contains(m.As.Id)).ToList();
        gone.ForEach(Spare);
        var free = _issued.Kept.Values.Where(k => !asked.Contains(k.As.Id)).Select(k => k.As).ToList();
        if (gone.Count + free.Count > 0)
            _findings.Add(ChangeFindings.NotNeeded([.. gone.Select(m => m.As)], free));
    }

    private void Spare(MadePart made)
    {
        _spares.Add((made.Round, made.As.Id));
        _whole.Add(made.As with { Id = JoinedRounds.SpareId(made.As.Id, made.Round), IsSpare = true });
    }

    /// <summary>Blanks that are kept for nobody any more.</summary>
    private List<Workpiece> FreeBlanks()
    {
        var due = _due.Select(p => p.From).ToHashSet();
        var waiting = _whole.Where(p => p.IsHeld).Select(p => p.Id).ToHashSet();
        var free = _issued
            .Kept.Values.GroupBy(k => k.Piece)
            .Where(g =>
                !due.Contains(g.Key.Id) && !g.Any(k => waiting.Contains(k.As.Id) && !_more.Any(m => m.Id == k.As.Id))
            )
            .Select(g => g.Key)
            .ToList();
        foreach (var piece in free)
            _spares.Add((_issued.Rounds.First(r => r.Plan.Workpieces.Contains(piece)).Number, piece.Part!));
        return free;
    }

    private IEnumerable<CutRun> RunsStillKept() =>
        _issued
            .Kept.Values.Select(k => k.Run)
            .OfType<CutRun>()
            .DistinctBy(r => r.Id)
            .Where(r => _now.Runs.All(n => n.Id != r.Id) && r.Parts.All(p => _whole.Any(w => w.Id == p)));

    /// <summary>Sheets that were taken and that the shop has no entry for any more: there are no more of them.</summary>
    private IEnumerable<StockPiece> StockOfThen() =>
        _issued
            .Rounds.SelectMany(r => r.Asked.Stock.Where(s => r.Plan.Sheets.Any(taken => taken.Stock == s.Id)))
            .DistinctBy(s => s.Id)
            .Where(s => _now.Stock.All(n => n.Id != s.Id))
            .Select(s => s with { Quantity = 0 });

    private static CutPart Kept(CutPart issued, CutPart now) =>
        issued with
        {
            Name = now.Name,
            Piece = now.Piece,
            From = null,
        };

    private static bool IsSame(CutPart now, CutPart issued) =>
        (now.Material, now.Length, now.Width, now.Figure)
        == (issued.Material, issued.Length, issued.Width, issued.Figure);
}

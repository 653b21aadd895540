using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Sawing;

/// <summary>Whether what lies on the bench after the last cut is what was asked for.</summary>
internal sealed class YieldCheck
{
    private readonly CutRequest _request;
    private readonly IReadOnlyDictionary<string, BenchPiece> _bench;
    private readonly ILookup<string, Workpiece> _made;
    private readonly ILookup<string, Workpiece> _kept;
    private readonly Dictionary<int, PlanSheet> _sheets;
    private readonly HashSet<string> _excused;
    private readonly Plan _plan;

    private YieldCheck(Plan plan, CutRequest request, IReadOnlyDictionary<string, BenchPiece> bench)
    {
        (_plan, _request, _bench) = (plan, request, bench);
        _made = plan.Workpieces.Where(p => p.Use == WorkpieceUse.Part).ToLookup(p => p.Part ?? "");
        _kept = plan.Workpieces.Where(p => p.Use == WorkpieceUse.Held).ToLookup(p => p.Part ?? "");
        _sheets = plan.Sheets.ToDictionary(s => s.Number);
        // A note or a warning goes with a part that is made.
        _excused = [.. plan.Findings.Where(f => f.Severity == Severity.MustMend).SelectMany(f => f.About)];
    }

    /// <summary>The first thing that is wrong, as a sentence; or null.</summary>
    public static string? Trouble(Plan plan, CutRequest request, IReadOnlyDictionary<string, BenchPiece> bench) =>
        new YieldCheck(plan, request, bench).Trouble();

    private string? Trouble()
    {
        var heldRuns = _request.Runs.Where(r => r.Parts.Any(p => Part(p).IsHeld)).ToList();
        var inHeldRun = heldRuns.SelectMany(r => r.Parts).ToHashSet();
        return Strangers()
            ?? First(_request.Parts.Where(p => !p.IsHeld && !inHeldRun.Contains(p.Id)), Final)
            ?? First(_request.Parts.Where(p => p.IsHeld && !inHeldRun.Contains(p.Id)), HeldPart)
            ?? First(heldRuns, HeldRun)
            ?? First(
                _request.Runs.Except(heldRuns),
                run => RunCheck.Trouble(run, [.. run.Parts.Where(_made.Contains).Select(Bench)], _request)
            )
            ?? WishCheck.Trouble(_request, _plan, _bench, _excused)
            ?? MatchCheck.Trouble(_request, _plan, p => _made.Contains(p) ? (_made[p].Single(), Bench(p)) : null)
            ?? VisitCheck.Claims(
                _plan.Visits.Where(v => v.Round == _plan.Visits[^1].Round),
                _request,
                p => _made.Contains(p) ? Bench(p) : null
            );
    }

    private static string? First<T>(IEnumerable<T> things, Func<T, string?> trouble) =>
        things.Select(trouble).FirstOrDefault(t => t is not null);

    private CutPart Part(string id) => _request.Parts.First(p => p.Id == id);

    private BenchPiece Bench(string part) => _bench[_made[part].First().Id];

    private string? Strangers()
    {
        var known = _request.Parts.Select(p => p.Id).Concat(_request.Runs.Select(r => r.Id)).ToHashSet();
        var stranger = _made.Concat(_kept).FirstOrDefault(g => !known.Contains(g.Key));
        return stranger is null ? null : $"{stranger.First().Id} is for {stranger.Key}, and nobody asked for that.";
    }

    private string? Final(CutPart part)
    {
        var pieces = _made[part.Id].ToList();
        if (pieces.Count == 0)
            return _excused.Contains(part.Id) ? null : $"{part.Id} is not made, and no finding says why.";
        if (pieces.Count > 1)
            return $"{part.Id} is made {pieces.Count} times.";
        if (_kept.Contains(part.Id))
            return $"{part.Id} is both made and held.";
        if (!_bench.TryGetValue(pieces[0].Id, out var piece))
            return $"{pieces[0].Id}, which should be {part.Id}, is not there at the end.";
        return OnSheet(part.Id, part.Material, piece)
            ?? (piece.IsTrueAllRound ? null : $"{part.Id} still has a rough edge.")
            ?? Size(part, piece);
    }

    private string? Size(CutPart part, BenchPiece piece)
    {
        var (x, y) = (piece.X.Size, piece.Y.Size);
        var lengthways = (x, y) == (part.Length, part.Width) && Allows(part, MatchedSide.Length, piece);
        var crossways = (x, y) == (part.Width, part.Length) && Allows(part, MatchedSide.Width, piece);
        return lengthways || crossways
            ? null
            : $"{part.Id} comes out {x} along the sheet and {y} across; it should be {part.Length} × {part.Width} with its figure "
                + $"along {part.Figure}.";
    }

    private bool Allows(CutPart part, MatchedSide alongSheet, BenchPiece piece) =>
        !HasFigure(piece)
        || part.Figure == PanelFigure.Any
        || part.Figure == (alongSheet == MatchedSide.Length ? PanelFigure.Length : PanelFigure.Width);

    private bool HasFigure(BenchPiece piece)
    {
        var stock = _sheets[piece.Sheet].Stock;
        return _request.Stock.First(s => s.Id == stock).HasFigure;
    }

    private string? OnSheet(string id, string material, BenchPiece piece)
    {
        var sheet = _sheets[piece.Sheet];
        return sheet.Material == material ? null : $"{id} is cut from {sheet.Material} and should be {material}.";
    }

    private string? HeldPart(CutPart part)
    {
        if (_made.Contains(part.Id))
            return $"{part.Id} waits for {string.Join(", ", part.Awaits)} and is cut to its final size.";
        return Held(part.Id, part.Material, part.Length, part.Width, piece => Fits(part, piece));
    }

    private bool Fits(CutPart part, BenchPiece piece) =>
        (piece.X.Usable >= part.Length && piece.Y.Usable >= part.Width && Allows(part, MatchedSide.Length, piece))
        || (piece.X.Usable >= part.Width && piece.Y.Usable >= part.Length && Allows(part, MatchedSide.Width, piece));

    /// <summary>A run with a member that waits is kept in one piece, long enough for all members and the kerfs between them.</summary>
    private string? HeldRun(CutRun run)
    {
        var parts = run.Parts.Select(Part).ToList();
        if (parts.FirstOrDefault(p => _made.Contains(p.Id)) is { } cut)
            return $"{cut.Id} is cut to size, and its run {run.Id} waits.";
        var kerfs = _request.Saws.TableKerf * (parts.Count - 1);
        bool Fit(BenchPiece piece, bool alongX, MatchedSide side)
        {
            var (along, across) = alongX ? (piece.X.Usable, piece.Y.Usable) : (piece.Y.Usable, piece.X.Usable);
            var sum = parts.Aggregate(kerfs, (total, p) => total + (side == MatchedSide.Length ? p.Length : p.Width));
            var height = parts.Max(p => side == MatchedSide.Length ? p.Width : p.Length);
            var other = side == MatchedSide.Length ? MatchedSide.Width : MatchedSide.Length;
            return along >= sum && across >= height && parts.All(p => Allows(p, alongX ? side : other, piece));
        }
        return Held(
            run.Id,
            parts[0].Material,
            kerfs,
            Length.Zero,
            piece =>
                Fit(piece, true, MatchedSide.Length)
                || Fit(piece, true, MatchedSide.Width)
                || Fit(piece, false, MatchedSide.Length)
                || Fit(piece, false, MatchedSide.Width)
        );
    }

    private string? Held(string id, string material, Length length, Length width, Func<BenchPiece, bool> fits)
    {
        var pieces = _kept[id].ToList();
        if (pieces.Count == 0)
            return _excused.Contains(id) ? null : $"{id} is not kept, and no finding says why.";
        if (pieces.Count > 1)
            return $"{id} is kept {pieces.Count} times.";
        if (!_bench.TryGetValue(pieces[0].Id, out var piece))
            return $"{pieces[0].Id}, which should be kept for {id}, is not there at the end.";
        if (piece.HasBeenAtVisit)
            return $"{id} waits for a reading and has been cut at a visit.";
        return OnSheet(id, material, piece)
            ?? (
                fits(piece)
                    ? null
                    : $"{id} is kept as {piece.X.Size} × {piece.Y.Size}, which is less than {length} × {width} once its edges are true, or lies against its figure."
            );
    }
}

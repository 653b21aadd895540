using System.Collections.Immutable;
using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Sawing;

/// <summary>Whether what was cut keeps to what is true of the sheets and to what the maker wishes: bad areas, pinned parts and sheets, parts apart.</summary>
internal sealed class WishCheck
{
    private readonly CutRequest _request;
    private readonly Dictionary<string, CutPart> _parts;
    private readonly Dictionary<int, StockPiece> _stocks;
    private readonly List<(string For, BenchPiece Piece)> _pieces;

    private WishCheck(CutRequest request, Plan plan, IReadOnlyDictionary<string, BenchPiece> bench)
    {
        _request = request;
        _parts = request.Parts.ToDictionary(p => p.Id);
        var kinds = request.Stock.ToDictionary(s => s.Id);
        _stocks = plan.Sheets.ToDictionary(s => s.Number, s => kinds[s.Stock]);
        _pieces =
        [
            .. plan
                .Workpieces.Where(p => p.Use is WorkpieceUse.Part or WorkpieceUse.Held)
                .Select(p => (p.Part!, bench[p.Id])),
        ];
    }

    /// <summary>The first thing that is wrong, as a sentence; or null.</summary>
    /// <param name="request">What was asked for.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="bench">What lies on the bench after the last cut.</param>
    /// <param name="excused">Wishes that a finding says cannot be kept.</param>
    public static string? Trouble(
        CutRequest request,
        Plan plan,
        IReadOnlyDictionary<string, BenchPiece> bench,
        IReadOnlySet<string> excused
    )
    {
        var check = new WishCheck(request, plan, bench);
        return check
            ._pieces.Select(p => check.OnBad(p.For, p.Piece) ?? check.OffPin(p.For, p.Piece))
            .Concat(request.Apart.Select(check.Together))
            .Concat(request.PinnedSheets.Where(p => !excused.Contains(p.Id)).Select(check.NotKept))
            .FirstOrDefault(t => t is not null);
    }

    private string? OnBad(string id, BenchPiece piece)
    {
        var bad = _stocks[piece.Sheet].Bad.FirstOrDefault(b => Overlaps(b, piece));
        return bad is null
            ? null
            : $"{id} lies on the bad area of sheet {piece.Sheet} at {bad.X}, {bad.Y}{(bad.Why is null ? "" : $" ({bad.Why})")}.";
    }

    private static bool Overlaps(Shop.BadArea bad, BenchPiece piece) =>
        bad.X < piece.X.End && piece.X.At < bad.X + bad.Length && bad.Y < piece.Y.End && piece.Y.At < bad.Y + bad.Width;

    private string? OffPin(string id, BenchPiece piece)
    {
        var stock = _stocks[piece.Sheet].Id;
        var pinned = Members(id).FirstOrDefault(p => p.From is { } from && from != stock);
        return pinned is null ? null : $"{pinned.Id} is to come from {pinned.From} and is cut from {stock}.";
    }

    /// <summary>The part, or the parts of a run that is kept in one piece.</summary>
    private IEnumerable<CutPart> Members(string id) =>
        _parts.TryGetValue(id, out var part)
            ? [part]
            : _request.Runs.First(r => r.Id == id).Parts.Select(p => _parts[p]);

    /// <summary>Some sheet of the stock yields just the pieces of a pinned one, each at its place.</summary>
    private string? NotKept(PinnedSheet pinned)
    {
        var wanted = pinned
            .Plan.Workpieces.Where(p => p.Use is WorkpieceUse.Part or WorkpieceUse.Held)
            .Select(p => (p.Part!, p.X, p.Y, p.Length, p.Width))
            .ToHashSet();
        var sheets = _pieces.GroupBy(p => p.Piece.Sheet).Where(s => _stocks[s.Key].Id == pinned.Sheet.Stock);
        return sheets.Any(s => wanted.SetEquals(s.Select(Place)))
            ? null
            : $"{pinned.Id}: no sheet of {pinned.Sheet.Stock} is cut as it was when it was pinned.";
    }

    private static (string, Length, Length, Length, Length) Place((string For, BenchPiece Piece) made) =>
        (made.For, made.Piece.X.At, made.Piece.Y.At, made.Piece.X.Size, made.Piece.Y.Size);

    private string? Together(CutApart apart)
    {
        var seen = new Dictionary<string, string>();
        foreach (var (id, piece) in _pieces.Where(p => apart.Parts.Contains(p.For)))
        {
            var strips = piece.Strips.Remove(piece.Id);
            if (strips.FirstOrDefault(seen.ContainsKey) is { } shared)
                return $"{apart.Id}: {seen[shared]} and {id} come from one strip, {shared}.";
            foreach (var strip in strips)
                seen[strip] = id;
        }
        return null;
    }
}

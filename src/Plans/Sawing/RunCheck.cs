using Nookwright.Cutting;

namespace Nookwright.Sawing;

/// <summary>
/// Whether the parts of a run came from one strip, in order, with nothing but saw kerf between neighbours; or from several,
/// one after the other, parted only where the maker allows it.
/// </summary>
internal static class RunCheck
{
    /// <summary>The first thing that is wrong, as a sentence; or null.</summary>
    public static string? Trouble(CutRun run, IReadOnlyList<BenchPiece> pieces, CutRequest request)
    {
        if (pieces.Count == 0)
            return null;
        if (pieces.Count < run.Parts.Count)
            return $"{run.Id}: only {pieces.Count} of its {run.Parts.Count} parts are made.";
        for (var (first, count) = (0, 1); first + count <= pieces.Count; count++)
        {
            if (IsLine([.. pieces.Skip(first).Take(count)], request))
                continue;
            if (!run.MaySplitAfter.Contains(run.Parts[first + count - 2]))
                return $"{run.Id}: its parts do not lie in order, side by side in one strip.";
            (first, count) = (first + count - 1, 0);
        }
        return null;
    }

    private static bool IsLine(IReadOnlyList<BenchPiece> pieces, CutRequest request) =>
        IsLine(pieces, SheetAxis.Length, request) || IsLine(pieces, SheetAxis.Width, request);

    private static bool IsLine(IReadOnlyList<BenchPiece> pieces, SheetAxis along, CutRequest request)
    {
        var across = along == SheetAxis.Length ? SheetAxis.Width : SheetAxis.Length;
        var strip = (pieces[0].Sheet, pieces[0].Side(across).At, pieces[0].Side(across).Size);
        if (pieces.Any(p => (p.Sheet, p.Side(across).At, p.Side(across).Size) != strip))
            return false;
        return Follow(pieces, along, request) || Follow([.. pieces.Reverse()], along, request);
    }

    /// <summary>Two kerfs at most: where a strip is parted, the last part before that has a sizing cut of its own.</summary>
    private static bool Follow(IReadOnlyList<BenchPiece> pieces, SheetAxis along, CutRequest request)
    {
        var most = request.Saws.TableKerf * 2;
        return pieces
            .Zip(pieces.Skip(1))
            .Select(pair => pair.Second.Side(along).At - pair.First.Side(along).End)
            .All(gap => !gap.IsNegative && gap <= most);
    }
}

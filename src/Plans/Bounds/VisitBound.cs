using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Bounds;

/// <summary>The fewest visits that can cut what a plan cuts, round by round.</summary>
/// <remarks>
/// A dimension comes from a setting of its own distance, so each distinct dimension cut in a round needs a visit in it. Two
/// kinds do not count: what a sheet with trusted edges is as it comes, which needs no cut, and settings that are no
/// dimension of any part. That a dimension might be what other cuts happen to leave over is not counted on: it would carry the
/// errors of all of them.
/// </remarks>
internal static class VisitBound
{
    /// <summary>The rounds of a plan.</summary>
    public static IReadOnlyList<RoundProof> Of(Plan plan, CutRequest request)
    {
        var needed = Needed(plan, request);
        return
        [
            .. plan
                .Visits.GroupBy(v => v.Round)
                .OrderBy(round => round.Key)
                .Select(round => new RoundProof(
                    round.Key,
                    round.Count(),
                    round.Select(v => v.Setting).Distinct().Count(needed.Contains)
                )),
        ];
    }

    private static HashSet<Length> Needed(Plan plan, CutRequest request)
    {
        var made = plan.Workpieces.Where(p => p.Use == WorkpieceUse.Part).Select(p => p.Part).ToHashSet();
        var ready = request.Stock.Where(s => IsTrusted(s, request)).ToLookup(s => s.Material);
        bool IsReady(CutPart part, Length size) => ready[part.Material].Any(s => s.Length == size || s.Width == size);
        return
        [
            .. request
                .Parts.Where(p => made.Contains(p.Id))
                .SelectMany(p => new[] { p.Length, p.Width }.Where(size => !IsReady(p, size))),
        ];
    }

    private static bool IsTrusted(StockPiece piece, CutRequest request) =>
        piece.TrustsEdges || piece.LeftAs is not null || request.Saws.Dressing == Length.Zero;
}

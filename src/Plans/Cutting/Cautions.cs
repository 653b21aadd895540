using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Cutting;

/// <summary>What to mind at the saw.</summary>
internal static class Cautions
{
    private const string Practice = "common practice, no source";

    /// <summary>Narrower than this, a rip is cut with a push stick or block; 150 mm, about 6 in (common practice, no source).</summary>
    private static readonly Length Narrow = Length.FromMillimetres(150);

    public static IEnumerable<Finding> Of(Plan plan, Job job)
    {
        var pieces = plan.Workpieces.ToDictionary(p => p.Id);
        var fence = plan.Visits.Where(v => v.Saw == Saw.Fence).ToList();
        var shortEdge = fence.Where(v => v.Cuts.Any(c => IsShortAtFence(pieces[c.On], c))).ToList();
        if (shortEdge.Count > 0)
            yield return ShortEdge(shortEdge);
        var narrow = fence.Where(v => v.Setting < Narrow).ToList();
        if (narrow.Count > 0)
            yield return NarrowRip(narrow);
    }

    private static bool IsShortAtFence(Workpiece piece, SawCut cut) =>
        cut.Kind == CutKind.Sizing && (cut.Along == SheetAxis.Length ? piece.Width : piece.Length) < cut.Distance;

    private static Finding ShortEdge(List<Visit> visits) =>
        new(
            "cutting.short-edge-at-fence",
            Severity.Note,
            $"{Numbers(visits)}: some pieces have an edge at the fence that is shorter than the cut is far from it and "
                + "may turn; cut those on a sled with its stop set to the same distance.",
            [],
            Practice
        );

    private static Finding NarrowRip(List<Visit> visits) =>
        new(
            "cutting.narrow-rip",
            Severity.Note,
            $"{Numbers(visits)}: the fence stands close to the blade; keep hands away with a push stick or block.",
            [],
            Practice
        );

    private static string Numbers(List<Visit> visits) =>
        $"{(visits.Count == 1 ? "Visit" : "Visits")} {string.Join(", ", visits.Select(v => v.Number))}";
}

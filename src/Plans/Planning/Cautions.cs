using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>What to mind at the saw, as findings of the plan.</summary>
internal static class Cautions
{
    private const string Practice = "common practice, no source";

    public static IEnumerable<Finding> Of(Plan plan, Job job)
    {
        var pieces = plan.Workpieces.ToDictionary(p => p.Id);
        List<Visit> With(Caution caution) =>
            [.. plan.Visits.Where(v => VisitCautions.Of(v, id => pieces[id], job.Request.Saws).Contains(caution))];
        if (With(Caution.ShortEdge) is { Count: > 0 } shortEdge)
            yield return ShortEdge(shortEdge);
        if (With(Caution.NarrowRip) is { Count: > 0 } narrow)
            yield return NarrowRip(narrow);
    }

    private static Finding ShortEdge(List<Visit> visits) =>
        new(
            "cutting.short-edge-at-fence",
            Severity.Note,
            $"{Numbers(visits)}: some pieces have a short edge at the fence and may turn; "
                + "cut those on a sled with its stop set to the same distance.",
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

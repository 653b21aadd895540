using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Plans on from the trees of a plan made before an edit: sheets that the edit does not touch stay as they were.</summary>
internal static class Replanning
{
    /// <summary>The plan that keeps as much as it can of one made before; null when there is nothing to keep.</summary>
    /// <param name="job">What is asked for now.</param>
    /// <param name="before">The plan made before.</param>
    /// <param name="stop">Stops it.</param>
    public static Candidate? Kept(Job job, Plan? before, CancellationToken stop)
    {
        if (before?.Origin is not PlannedTrees trees || !IsOfOneKind(job, trees.Job))
            return null;
        var kinship = Kinship.Of(trees.Job, job);
        var sheets = new KeptSheets(trees, job, kinship).Take();
        if (sheets.Count == 0)
            return null;
        var search = new Search(job, job.Request.Rules.Seed);
        search.Continue(sheets, stop);
        return Candidate.Of(job, search.Layout) with { IsKept = true };
    }

    /// <summary>
    /// True when a plan is so much better than one that keeps most in its place that everything may move: for parts that get a
    /// place, visits and what is bought (box by box, for what lies about in place of visits), never for the rack or handling alone.
    /// </summary>
    public static bool IsWorthMoving(PlanScore moved, PlanScore kept) =>
        kept.IsBoxByBox
            ? (moved.Missing, moved.Bought, moved.Loose).CompareTo((kept.Missing, kept.Bought, kept.Loose)) < 0
            : (moved.Missing, moved.Splits, moved.Visits, moved.Bought).CompareTo(
                (kept.Missing, kept.Splits, kept.Visits, kept.Bought)
            ) < 0;

    private static bool IsOfOneKind(Job now, Job before) =>
        now.HasOrder
        && before.HasOrder
        && now.Request.Saws == before.Request.Saws
        && now.Request.Rules == before.Request.Rules;
}

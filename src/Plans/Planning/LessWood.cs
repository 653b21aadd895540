using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Does with less wood for more visits, and with as few of those as it can.</summary>
/// <param name="request">What is asked.</param>
/// <param name="stop">Ends it early.</param>
internal sealed class LessWood(CutRequest request, CancellationToken stop)
{
    private const int Tries = 10;

    // Whether a visit can be done without often shows soon, and there are many to try: parts of all steps, pass after pass.
    private static readonly int[] Passes = [20, 5];

    private int Steps => request.Rules.Steps;

    /// <summary>Trees that cost less of a material, whatever visits that takes; null when none were found.</summary>
    /// <param name="at">The trees to start from.</param>
    /// <param name="least">Trees that a search for the least wood has found.</param>
    /// <param name="material">The material.</param>
    public Trees? Find(Trees at, Trees least, string material)
    {
        List<Trees?> found = [Cheaper(FreeReplanting.Of(at, request.Rules.Seed), at, material, Steps)];
        if (least.CostOf(material) < at.CostOf(material))
            found.Add(Complete(FreeReplanting.Mixed(at, least, material, request.Rules.Seed)));
        return found.OfType<Trees>().MinBy(t => t.Visits);
    }

    /// <summary>Trees of the same cost with fewer visits.</summary>
    /// <param name="less">Trees that cost less.</param>
    /// <param name="before">The trees they came from.</param>
    /// <param name="material">The material they take less of.</param>
    public Trees Fewest(Trees less, Trees before, string material)
    {
        var best = Lowered(less);
        while (best.Visits > before.Visits + 1 && Spared(best, before, material) is { } fewer)
            best = Lowered(fewer);
        return best;
    }

    /// <summary>From the fewer visits: those that the other trees make more, but for one, and then any one.</summary>
    private Trees? Spared(Trees best, Trees before, string material)
    {
        var more = best.MoreThan(before);
        var butOne = more.Select((_, i) => more.Where((_, other) => other != i).ToList());
        var one = before.Job.Distances.Distinct().Select(d => new List<long> { d });
        return butOne
            .Select(spares => (Spares: spares, Steps: Steps / 5))
            .Concat(one.Select(spares => (Spares: spares, Steps: Steps / Tries)))
            .Select(s => Spared(before, s.Spares, material, s.Steps))
            .FirstOrDefault(t => t is not null && t.Visits < best.Visits);
    }

    private Trees? Spared(Trees before, List<long> spares, string material, int steps)
    {
        if (stop.IsCancellationRequested)
            return null;
        return VisitReplanting.Of(before, -1, spares, request.Rules.Seed) is { } search
            ? Cheaper(search, before, material, steps)
            : null;
    }

    private Trees? Cheaper(Search search, Trees than, string material, int steps)
    {
        var goal = than.CostOf(material) - 1;
        var ruin = search.Rework(material);
        ruin.Run(steps, goal, stop);
        ruin.Finish();
        return ruin.BestCost <= goal ? Complete(search) : null;
    }

    private static Trees? Complete(Search search) =>
        search.Layout.Waiting.Count == 0 ? new(search.Job, search.Layout) : null;

    /// <summary>One visit after the other is done without, where all that was cut at it finds a place at others of its distance.</summary>
    private Trees Lowered(Trees trees)
    {
        for (var pass = 0; pass < Passes.Length && !stop.IsCancellationRequested; )
        {
            var steps = Steps / Passes[pass];
            var seed = request.Rules.Seed + pass;
            var fewer = trees.Repeats().Select(v => Without(trees, v, steps, seed)).FirstOrDefault(t => t is not null);
            pass = fewer is null ? pass + 1 : 0;
            trees = fewer ?? trees;
        }
        return trees;
    }

    private Trees? Without(Trees trees, int visit, int steps, int seed)
    {
        if (VisitReplanting.Of(trees, visit, [], seed) is not { } search)
            return null;
        var materials = search.Layout.Waiting.Select(i => i.Material).Distinct().ToList();
        if (!materials.All(m => Fill(search, m, trees.CostOf(m), steps)) || Complete(search) is not { } fewer)
            return null;
        return fewer.Visits < trees.Visits ? fewer : null;
    }

    private bool Fill(Search search, string material, long atMost, int steps)
    {
        if (stop.IsCancellationRequested)
            return false;
        var ruin = search.Rework(material);
        ruin.Fill(atMost);
        ruin.Run(steps, atMost, stop);
        ruin.Finish();
        return ruin.BestCost <= atMost;
    }
}

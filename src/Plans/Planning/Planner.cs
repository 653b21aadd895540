using Nookwright.Bounds;
using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>Makes cutting plans.</summary>
public static class Planner
{
    /// <summary>How many parts are planned at most; more are refused with a finding.</summary>
    public const int MostParts = 20_000;

    /// <summary>The best plan found for a request; the virtual saw has executed it.</summary>
    /// <param name="request">What to cut, from what, with which saws.</param>
    /// <param name="progress">Told of the first plan and of every better one, each with what is proven about it by then.</param>
    /// <param name="stop">Stops the search, which then gives the best plan so far; before there is a first plan, it throws.</param>
    /// <param name="before">
    /// A plan made before an edit: sheets that the edit does not touch are kept as they were, unless another plan makes fewer
    /// visits or buys less. Null for a plan that owes nothing to another.
    /// </param>
    public static Plan Plan(
        CutRequest request,
        IProgress<Plan>? progress = null,
        CancellationToken stop = default,
        Plan? before = null
    )
    {
        if (request.Parts.Count > MostParts)
            return TooMany(request);
        var job = JobReader.Read(request);
        var bounds = new WoodBounds(request, job.Possible);
        var better = progress is null ? null : new ProvenPlans(progress, bounds);
        var best = Replanning.Kept(job, before, stop) ?? Constructed(job, 0, isRackFirst: false, stop);
        Report(better, best);
        using var watch = new BoundWatch(bounds, best.Plan, stop);
        best = Found(job, best, watch.AtLeast, better, stop);
        best = Parted(best, request, before, watch, stop);
        var proven = best.Plan with { Proof = watch.Prove(best.Plan), Origin = PlannedTrees.Of(best.Job, best.Layout) };
        return request.Rules.BoxByBox ? Priced(proven, request, stop) : proven;
    }

    /// <summary>The best found for a request with these settings, with its layout, by the quick bounds alone.</summary>
    internal static Candidate Best(CutRequest request, SettingPlan settings, WoodBounds bounds, CancellationToken stop)
    {
        var job = JobReader.Read(request, settings);
        var first = Constructed(job, 0, isRackFirst: false, stop);
        return Found(job, first, (material, _) => bounds.AtLeast(material), null, stop);
    }

    /// <summary>The plans between the fewest visits and the least wood.</summary>
    /// <param name="request">What to cut, from what, with which saws; all of the front is made, whatever its rules put first.</param>
    /// <param name="first">The plan with the fewest visits, as <see cref="Plan"/> gave it; null to look for it here.</param>
    /// <param name="progress">Told of the first plan alone, then of every better front.</param>
    /// <param name="stop">Ends the search; the best front so far is given. Throws only when there is no plan yet.</param>
    public static PlanFront Front(
        CutRequest request,
        Plan? first = null,
        IProgress<PlanFront>? progress = null,
        CancellationToken stop = default
    ) =>
        request.Rules.BoxByBox
            ? FrontWriter.Of([first ?? Plan(request, null, stop)], request) with
            {
                WhyNone = NoTrade.BoxByBox,
            }
            : FrontSearch.Run(request, first, progress, stop);

    /// <summary>The best with runs parted where the maker allows it, if that saves a sheet.</summary>
    private static Candidate Parted(
        Candidate whole,
        CutRequest request,
        Plan? before,
        BoundWatch watch,
        CancellationToken stop
    )
    {
        if (request.Runs.All(r => r.MaySplitAfter.Count == 0))
            return whole;
        var proof = watch.Prove(whole.Plan);
        var least = proof.Materials.Where(m => m.Sheets <= m.SheetsAtLeast).Select(m => m.Material).ToHashSet();
        return new RunParting(Planned).Better(whole, least.Contains, stop);

        Candidate Planned(CutRequest parted)
        {
            var job = JobReader.Read(parted);
            var first =
                Replanning.Kept(job, before, stop) ?? Constructed(job, 0, isRackFirst: false, CancellationToken.None);
            return Found(job, first, watch.AtLeast, null, stop);
        }
    }

    /// <summary>With what it costs to go box by box, where there is time to find that out.</summary>
    private static Plan Priced(Plan boxes, CutRequest request, CancellationToken stop)
    {
        try
        {
            var free = Plan(request with { Rules = request.Rules with { BoxByBox = false } }, null, stop);
            return boxes with { Findings = [.. boxes.Findings, BoxByBoxPrice.Of(boxes, free, request)] };
        }
        catch (OperationCanceledException)
        {
            return boxes;
        }
    }

    /// <summary>Where there are offcuts, both ways are tried: whatever fits best, and the rack first.</summary>
    private static Candidate Found(
        Job job,
        Candidate best,
        Func<string, long, long> goal,
        IProgress<Plan>? progress,
        CancellationToken stop
    )
    {
        best = Found(job, best, isRackFirst: false, goal, progress, stop);
        if (!job.Request.Stock.Any(stock => stock.IsOffcut) || stop.IsCancellationRequested)
            return best;
        var rack = Constructed(job, 0, isRackFirst: true, CancellationToken.None);
        return Better(best, Found(job, rack, isRackFirst: true, goal, null, stop), progress);
    }

    private static Candidate Found(
        Job job,
        Candidate best,
        bool isRackFirst,
        Func<string, long, long> goal,
        IProgress<Plan>? progress,
        CancellationToken stop
    )
    {
        // What is kept is bettered where it lies before anything made from the beginning, which moves everything, may win.
        if (best.IsKept)
            best = Improved(job, best, goal, progress, stop);
        for (var way = best.IsKept ? 0 : 1; way < ItemOrder.Ways && job.Items.Count is > 0 and < 2000; way++)
            if (!stop.IsCancellationRequested)
                best = Better(best, Constructed(job, way, isRackFirst, CancellationToken.None), progress);
        return best.IsKept ? best : Improved(job, best, goal, progress, stop);
    }

    private static Candidate Improved(
        Job job,
        Candidate from,
        Func<string, long, long> goal,
        IProgress<Plan>? progress,
        CancellationToken stop
    )
    {
        var steps = job.Request.Rules.Steps;
        return steps == 0 ? from : new Team(job, from, better => Report(progress, better)).Improve(steps, goal, stop);
    }

    /// <summary>Shows a plan on the way, from which an edit made meanwhile can be planned on.</summary>
    private static void Report(IProgress<Plan>? progress, Candidate candidate) =>
        progress?.Report(candidate.Plan with { Origin = PlannedTrees.Of(candidate.Job, candidate.Layout) });

    private static Candidate Constructed(Job job, int way, bool isRackFirst, CancellationToken stop)
    {
        var search = new Search(job, job.Request.Rules.Seed + way);
        search.Construct(way, isRackFirst, stop);
        return Candidate.Of(job, search.Layout);
    }

    private static Candidate Better(Candidate best, Candidate other, IProgress<Plan>? progress)
    {
        var isBetter = best.IsKept
            ? Replanning.IsWorthMoving(other.Score, best.Score)
            : other.Score.CompareTo(best.Score) < 0;
        if (!isBetter)
            return best;
        Report(progress, other);
        return other;
    }

    private static Plan TooMany(CutRequest request) =>
        new(
            [],
            [],
            [],
            [],
            [
                new Finding(
                    "cutting.too-many-parts",
                    Severity.MustMend,
                    $"{request.Parts.Count} parts are more than one plan takes ({MostParts}); plan the job in several lists.",
                    [.. request.Parts.Select(p => p.Id)]
                ),
            ],
            0
        );
}

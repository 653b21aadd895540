using Nookwright.Bounds;
using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Finds the plans between the fewest visits and the least wood.</summary>
/// <remarks>
/// From the plan with the fewest visits on, sheet by sheet: first with every distance free to be visited as often as it
/// takes, which tells whether a sheet can be spared at all; then with as few free distances as will do, found from both
/// ends. Counted in steps, never in time.
/// </remarks>
internal sealed class FrontSearch
{
    private readonly CutRequest _request;
    private readonly IProgress<PlanFront>? _progress;
    private readonly CancellationToken _stop;
    private readonly LessWood _less;
    private readonly WoodBounds _bounds;
    private readonly FrontProofs _proofs;
    private readonly List<Plan> _plans = [];

    private FrontSearch(CutRequest request, Plan first, IProgress<PlanFront>? progress, CancellationToken stop)
    {
        (_request, _progress, _stop) = (request, progress, stop);
        _less = new(request, stop);
        var job = JobReader.Read(request);
        _bounds = new(request, job.Possible);
        _proofs = new(_bounds, first.Proof, job.PinnedCostOf);
    }

    /// <summary>The front of a request.</summary>
    public static PlanFront Run(CutRequest request, Plan? first, IProgress<PlanFront>? progress, CancellationToken stop)
    {
        var visitsFirst = request with { Rules = request.Rules with { VisitsFirst = true } };
        first ??= Planner.Plan(visitsFirst, null, stop);
        return new FrontSearch(RunParting.AsIn(first, visitsFirst), first, progress, stop).Run(first);
    }

    private PlanFront Run(Plan first)
    {
        Show(first);
        try
        {
            if (!_stop.IsCancellationRequested && MayBuyLess(first))
                Descend();
        }
        catch (OperationCanceledException)
        {
            // Stopped before the next plan was there: what has been found stays.
        }
        return Front(WhyNone(first));
    }

    private PlanFront Front(NoTrade whyNone) => FrontWriter.Of(_plans, _request) with { WhyNone = whyNone };

    private NoTrade WhyNone(Plan first) =>
        !BuysAny(first) ? NoTrade.NothingBought
        : !MayBuyLess(first) ? NoTrade.Proven
        : _stop.IsCancellationRequested ? NoTrade.NotLooked
        : NoTrade.NotFound;

    private bool BuysAny(Plan plan)
    {
        var offcuts = _request.Stock.Where(s => s.IsOffcut).Select(s => s.Id).ToHashSet();
        return plan.Sheets.Any(s => !offcuts.Contains(s.Stock));
    }

    private bool MayBuyLess(Plan plan) => BuysAny(plan) && plan.Proof is not { IsLeastWood: true };

    /// <summary>Sheet by sheet, of whichever material it costs the fewest visits.</summary>
    private void Descend()
    {
        var at = Searched(_request, SettingPlan.OnePerDimension(_request));
        var sheetsFirst = _request with { Rules = _request.Rules with { VisitsFirst = false } };
        var least = Searched(sheetsFirst, FreeReplanting.Settings(_request));
        if (at.Job.Pinned.Count != least.Job.Pinned.Count)
            return; // A pinned sheet that only one of them keeps: the two have other parts to place.
        var materials = at.Job.Items.Select(i => i.Material).Distinct().ToList();
        while (!_stop.IsCancellationRequested)
        {
            var found = materials.Select(m => (Material: m, Trees: Less(at, least, m))).ToList();
            materials = [.. found.Where(f => f.Trees is not null).Select(f => f.Material)];
            if (materials.Count == 0)
                return;
            at = found.Select(f => f.Trees).OfType<Trees>().MinBy(t => t.Visits)!;
        }
    }

    private Trees Searched(CutRequest request, SettingPlan settings)
    {
        var best = Planner.Best(request, settings, _bounds, _stop);
        return new(best.Job, best.Layout);
    }

    /// <summary>Trees that take less of a material in the fewest visits found; null when nothing less was found.</summary>
    private Trees? Less(Trees at, Trees least, string material)
    {
        if (at.CostOf(material) <= _proofs.AtLeast(material) || _less.Find(at, least, material) is not { } less)
            return null;
        Show(PlanOf(less));
        var fewer = _less.Fewest(less, at, material);
        if (fewer != less)
            Show(PlanOf(fewer));
        return fewer;
    }

    private Plan PlanOf(Trees trees)
    {
        var plan = Candidate.Of(trees.Job, trees.Layout).Plan;
        return plan with { Proof = _proofs.Prove(plan), Origin = PlannedTrees.Of(trees.Job, trees.Layout) };
    }

    private void Show(Plan plan)
    {
        _plans.Add(plan);
        _progress?.Report(Front(NoTrade.NotLooked));
    }
}

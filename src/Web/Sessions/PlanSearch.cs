using Nookwright.Cutting;
using Nookwright.Flow;

namespace Nookwright.Web.Sessions;

/// <summary>The search for a plan and for what could be traded: what it has found so far, and whether anybody still wants it.</summary>
/// <param name="unplanned">The job, all but its plan.</param>
internal sealed class PlanSearch(Workbook unplanned)
{
    private readonly CancellationTokenSource _stop = new();
    private FoundPlan? _best;
    private FoundPlan? _news;
    private Action<FoundPlan>? _first;
    private int _count;
    private volatile bool _isForgotten;

    /// <summary>True when something else is asked meanwhile: another search is under way.</summary>
    public bool IsForgotten => _isForgotten;

    /// <summary>What it is doing, while it looks.</summary>
    public PlannerState UnderWay => new(IsUnderWay: true, _count);

    /// <summary>What it did, at the end.</summary>
    public PlannerState Ended => new(IsUnderWay: false, _count) { WasStopped = _stop.IsCancellationRequested };

    /// <summary>Looks until there is nothing better, or until it is stopped.</summary>
    /// <param name="first">Told of the first plan, at once.</param>
    /// <returns>The best plan; null when it was stopped before there was any.</returns>
    public Task<FoundPlan?> Begin(Action<FoundPlan> first)
    {
        _first = first;
        return Task.Run(Look, CancellationToken.None);
    }

    /// <summary>Looks no further; the best so far is kept.</summary>
    public void Stop() => _stop.Cancel();

    /// <summary>Looks no further, and nobody wants to know.</summary>
    public void Forget()
    {
        _isForgotten = true;
        _stop.Cancel();
    }

    /// <summary>The best plan, if it has not been taken yet; null when there is nothing new.</summary>
    public FoundPlan? TakeNews() => Interlocked.Exchange(ref _news, null);

    private FoundPlan? Look()
    {
        try
        {
            var plans = new Told<Plan>(plan => Take(new(plan, null)));
            return unplanned.FewestVisits(plans, _stop.Token) is { } plan ? WithFront(plan) : new(null, null);
        }
        catch (OperationCanceledException)
        {
            return _best;
        }
    }

    private FoundPlan WithFront(Plan fewestVisits)
    {
        var fronts = new Told<PlanFront>(front => Take(new(front.First.Plan, front)));
        var front = unplanned.FrontFrom(fewestVisits, fronts, _stop.Token);
        return new(front.First.Plan, front);
    }

    private void Take(FoundPlan found)
    {
        _best = found;
        if (Interlocked.Increment(ref _count) == 1)
            _first?.Invoke(found);
        else
            _news = found;
    }

    /// <summary>Tells at once, on the planner's own thread, so that plans arrive in order.</summary>
    private sealed class Told<T>(Action<T> tell) : IProgress<T>
    {
        public void Report(T value) => tell(value);
    }
}

/// <summary>A plan that was found, with what could be traded.</summary>
/// <param name="FewestVisits">The best plan with the fewest visits; null where what is issued cannot be read.</param>
/// <param name="Front">The plans between it and the least wood; null while nobody has looked.</param>
internal sealed record FoundPlan(Plan? FewestVisits, PlanFront? Front);

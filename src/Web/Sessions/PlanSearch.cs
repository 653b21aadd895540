using Nookwright.Cutting;
using Nookwright.Flow;

namespace Nookwright.Web.Sessions;

/// <summary>The search for one document's plan: what it has found so far, and whether anybody still wants it.</summary>
/// <param name="workbook">The document with all that follows from it but the plan.</param>
internal sealed class PlanSearch(Workbook workbook) : IProgress<Plan>
{
    private readonly CancellationTokenSource _stop = new();
    private Plan? _best;
    private Plan? _news;
    private Action<Plan>? _first;
    private int _count;
    private volatile bool _isForgotten;

    /// <summary>What is planned.</summary>
    public Workbook Workbook { get; } = workbook;

    /// <summary>True when the document was edited meanwhile: another search is under way.</summary>
    public bool IsForgotten => _isForgotten;

    /// <summary>What it is doing, while it looks.</summary>
    public PlannerState UnderWay => new(IsUnderWay: true, _count);

    /// <summary>What it did, at the end.</summary>
    public PlannerState Ended => new(IsUnderWay: false, _count) { WasStopped = _stop.IsCancellationRequested };

    /// <summary>Looks until there is nothing better, or until it is stopped.</summary>
    /// <param name="first">Told of the first plan, at once.</param>
    /// <returns>The workbook with the best plan; without one when it was stopped before there was any.</returns>
    public Task<Workbook> Begin(Action<Plan> first)
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
    public Plan? TakeNews() => Interlocked.Exchange(ref _news, null);

    /// <inheritdoc/>
    public void Report(Plan value)
    {
        _best = value;
        if (Interlocked.Increment(ref _count) == 1)
            _first?.Invoke(value);
        else
            _news = value;
    }

    private Workbook Look()
    {
        try
        {
            return Workbook.WithPlan(this, _stop.Token);
        }
        catch (OperationCanceledException)
        {
            return _best is { } best ? Workbook.WithThisPlan(best) : Workbook;
        }
    }
}

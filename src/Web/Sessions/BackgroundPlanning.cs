using Nookwright.Flow;

namespace Nookwright.Web.Sessions;

/// <summary>Plans in the background, one job at a time: a new one ends the planning of the one before.</summary>
/// <param name="found">Told of the first plan at once, then now and then of the best so far, and at the end; null for no plan.</param>
internal sealed class BackgroundPlanning(Action<PlanSearch, FoundPlan?, PlannerState> found)
{
    /// <summary>The page shows an edit first, with both hands; nobody sees a plan this much later.</summary>
    private static readonly TimeSpan ForThePage = TimeSpan.FromMilliseconds(80);

    /// <summary>Numbers that change faster than this cannot be read, and every change draws the page anew.</summary>
    private static readonly TimeSpan ToBeRead = TimeSpan.FromMilliseconds(400);

    private PlanSearch? _search;

    /// <summary>Forgets what is being planned and begins anew.</summary>
    /// <param name="unplanned">The job, all but its plan.</param>
    public void Plan(Workbook unplanned)
    {
        _search?.Forget();
        var search = new PlanSearch(unplanned);
        _search = search;
        _ = Task.Run(() => Run(search), CancellationToken.None);
    }

    /// <summary>Looks no further: the best plan so far stays.</summary>
    public void Stop() => _search?.Stop();

    private async Task Run(PlanSearch search)
    {
        await Task.Delay(ForThePage);
        var planning = search.Begin(first: plan => found(search, plan, search.UnderWay));
        while (await Task.WhenAny(planning, Task.Delay(ToBeRead)) != planning)
        {
            if (search.TakeNews() is { } better)
                found(search, better, search.UnderWay);
        }
        found(search, await planning, search.Ended);
    }
}

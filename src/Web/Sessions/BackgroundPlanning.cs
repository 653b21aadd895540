using Nookwright.Cutting;
using Nookwright.Flow;

namespace Nookwright.Web.Sessions;

/// <summary>Plans in the background, one document at a time: a new one ends the planning of the one before.</summary>
/// <param name="found">Told of the first plan at once, then now and then of the best so far, and at the end.</param>
internal sealed class BackgroundPlanning(Action<Workbook, PlannerState> found)
{
    /// <summary>The page shows an edit first, with both hands; nobody sees a plan this much later.</summary>
    private static readonly TimeSpan ForThePage = TimeSpan.FromMilliseconds(80);

    /// <summary>Numbers that change faster than this cannot be read, and every change draws the page anew.</summary>
    private static readonly TimeSpan ToBeRead = TimeSpan.FromMilliseconds(400);

    private PlanSearch? _search;

    /// <summary>Forgets what is being planned and begins anew.</summary>
    public void Plan(Workbook workbook)
    {
        _search?.Forget();
        var search = new PlanSearch(workbook);
        _search = search;
        _ = Task.Run(() => Run(search), CancellationToken.None);
    }

    /// <summary>Looks no further: the best plan so far stays.</summary>
    public void Stop() => _search?.Stop();

    private async Task Run(PlanSearch search)
    {
        await Task.Delay(ForThePage);
        var planning = search.Begin(first: plan => Tell(search, plan));
        while (await Task.WhenAny(planning, Task.Delay(ToBeRead)) != planning)
        {
            if (search.TakeNews() is { } better)
                Tell(search, better);
        }
        if (!search.IsForgotten)
            found(await planning, search.Ended);
    }

    private void Tell(PlanSearch search, Plan plan)
    {
        if (!search.IsForgotten)
            found(search.Workbook with { Plan = plan }, search.UnderWay);
    }
}

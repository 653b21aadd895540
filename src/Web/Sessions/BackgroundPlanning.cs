using Nookwright.Cutting;
using Nookwright.Flow;

namespace Nookwright.Web.Sessions;

/// <summary>Plans in the background, one document at a time: a new one stops the planning of the one before.</summary>
/// <param name="found">Told of every better plan, and at the end.</param>
internal sealed class BackgroundPlanning(Action<Workbook, PlannerState> found)
{
    /// <summary>The page shows an edit first, with both hands; nobody sees a plan this much later.</summary>
    private static readonly TimeSpan ForThePage = TimeSpan.FromMilliseconds(80);

    private CancellationTokenSource _stop = new();

    /// <summary>Stops what is being planned and begins anew.</summary>
    public void Plan(Workbook workbook)
    {
        _stop.Cancel();
        _stop = new();
        var stop = _stop.Token;
        _ = Task.Run(() => Run(workbook, stop), CancellationToken.None);
    }

    private async Task Run(Workbook workbook, CancellationToken stop)
    {
        try
        {
            await Task.Delay(ForThePage, stop);
            var improvements = 0;
            var better = new Told<Plan>(plan =>
                found(workbook with { Plan = plan }, new(IsUnderWay: true, ++improvements))
            );
            var planned = workbook.WithPlan(better, stop);
            found(planned, new(IsUnderWay: false, improvements));
        }
        catch (OperationCanceledException)
        {
            // The document was edited: another planning is under way.
        }
    }

    /// <summary>Tells at once, on the planner's own thread, so that plans arrive in order.</summary>
    private sealed class Told<T>(Action<T> tell) : IProgress<T>
    {
        public void Report(T value) => tell(value);
    }
}

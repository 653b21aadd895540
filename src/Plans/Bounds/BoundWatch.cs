using Nookwright.Cutting;

namespace Nookwright.Bounds;

/// <summary>Sharpens the bounds of a request on a thread of its own, beside the search for a plan.</summary>
/// <remarks>
/// What the search learns must not hang on which thread is quicker, or the same request would not give the same plan. So the
/// search asks with how far it has come, and is told what is known when the sharpening has come as far; if that lags behind,
/// the search waits for it.
/// </remarks>
public sealed class BoundWatch : IDisposable
{
    // Steps of reckoning for one step of the search: few enough that the search hardly ever waits.
    private const double StepsPerSearchStep = 1000;

    private readonly WoodBounds _bounds;
    private readonly CancellationTokenSource _stop;
    private readonly Task _sharpening;
    private readonly Dictionary<string, List<(double From, long Cost)>> _known;
    private double _come;
    private bool _isDone;

    /// <summary>Starts to sharpen.</summary>
    /// <param name="bounds">The bounds.</param>
    /// <param name="plan">The first plan: where it is proven best already, nothing needs sharpening.</param>
    /// <param name="stop">Stops it; the bounds stay as good as they are then.</param>
    public BoundWatch(WoodBounds bounds, Plan plan, CancellationToken stop)
    {
        _bounds = bounds;
        _known = bounds.Materials.ToDictionary(m => m, m => new List<(double, long)> { (0, bounds.AtLeast(m)) });
        _stop = CancellationTokenSource.CreateLinkedTokenSource(stop);
        _isDone = bounds.Prove(plan).IsLeastWood;
        _sharpening = _isDone
            ? Task.CompletedTask
            : Task.Factory.StartNew(() => Sharpen(plan), TaskCreationOptions.LongRunning);
    }

    /// <summary>A cost of sheets of a material that no plan goes below, as known after so many steps of the search.</summary>
    internal long AtLeast(string material, long searchSteps)
    {
        if (!_known.TryGetValue(material, out var known))
            return 0;
        var come = searchSteps * StepsPerSearchStep;
        lock (_known)
        {
            while (!_isDone && _come < come)
                Monitor.Wait(_known);
            return known.Last(k => k.From <= come).Cost;
        }
    }

    /// <summary>The proof for the plan that was found in the end: waits for better bounds where they could still make a difference.</summary>
    /// <remarks>A bound is never above what a plan uses, so waiting changes nothing once the two are equal.</remarks>
    public PlanProof Prove(Plan plan)
    {
        lock (_known)
            while (!_isDone && !_bounds.Prove(plan).IsLeastWood)
                Monitor.Wait(_known);
        return _bounds.Prove(plan);
    }

    /// <summary>Stops sharpening and waits until it has stopped.</summary>
    public void Dispose()
    {
        _stop.Cancel();
        _sharpening.Wait();
        _stop.Dispose();
    }

    private void Sharpen(Plan plan)
    {
        try
        {
            foreach (var taken in _bounds.Sharpening(plan).TakeWhile(_ => !_stop.IsCancellationRequested))
                Note(taken, isDone: false);
        }
        catch (Exception e) when (e is DllNotFoundException or TypeInitializationException)
        {
            // The solver has no native code for this machine: the quick bounds stand.
        }
        finally
        {
            Note(0, isDone: true);
        }
    }

    private void Note(double taken, bool isDone)
    {
        lock (_known)
        {
            (_come, _isDone) = (_come + taken, isDone);
            foreach (var (material, known) in _known)
                if (_bounds.AtLeast(material) is var cost && cost > known[^1].Cost)
                    known.Add((_come, cost));
            Monitor.PulseAll(_known);
        }
    }
}

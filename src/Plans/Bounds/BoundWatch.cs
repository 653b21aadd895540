using Nookwright.Cutting;

namespace Nookwright.Bounds;

/// <summary>Sharpens the bounds of a request on a thread of its own, beside the search for a plan.</summary>
public sealed class BoundWatch : IDisposable
{
    private readonly CancellationTokenSource _stop;
    private readonly Task _sharpening;

    /// <summary>Starts to sharpen.</summary>
    /// <param name="bounds">The bounds.</param>
    /// <param name="plan">The first plan: where it is proven best already, nothing needs sharpening.</param>
    /// <param name="stop">Stops it; the bounds stay as good as they are then.</param>
    public BoundWatch(WoodBounds bounds, Plan plan, CancellationToken stop)
    {
        Bounds = bounds;
        _stop = CancellationTokenSource.CreateLinkedTokenSource(stop);
        _sharpening = bounds.Prove(plan).IsLeastWood
            ? Task.CompletedTask
            : Task.Factory.StartNew(() => Sharpen(plan), TaskCreationOptions.LongRunning);
    }

    /// <summary>The bounds, as good as they are.</summary>
    public WoodBounds Bounds { get; }

    /// <summary>The proof for the plan that was found in the end: waits for better bounds where they could still make a difference.</summary>
    /// <remarks>A bound is never above what a plan uses, so waiting changes nothing once the two are equal.</remarks>
    public PlanProof Prove(Plan plan)
    {
        while (!Bounds.Prove(plan).IsLeastWood && !_sharpening.IsCompleted)
            Task.WaitAny([_sharpening], millisecondsTimeout: 10);
        return Bounds.Prove(plan);
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
            Bounds.Sharpen(plan, _stop.Token);
        }
        catch (Exception e) when (e is DllNotFoundException or TypeInitializationException)
        {
            // The solver has no native code for this machine: the quick bounds stand.
        }
    }
}

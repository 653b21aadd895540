using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Paper;

/// <summary>Which saw a person takes for a visit: a distance beyond the fence is set on the crosscut saw's stop, if that saw can make the cut.</summary>
public static class SawInHand
{
    /// <summary>The longest cut across a piece that a crosscut sled makes; 24 in (common practice, no source).</summary>
    public static Length LongestCrosscut { get; } = Length.FromInches(24, 0, 1);

    /// <summary>The farthest a stop is set beside a sled's blade; 60 in (common practice, no source).</summary>
    public static Length FarthestStop { get; } = Length.FromInches(60, 0, 1);

    /// <summary>The saw and what guides it.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="workpiece">Finds a workpiece by its id.</param>
    public static string Of(Visit visit, Func<string, Workpiece> workpiece) =>
        visit.Saw switch
        {
            Saw.Fence => "Table saw, fence",
            Saw.Stop => IsTrack(visit, workpiece) ? "Track saw, two stops" : "Crosscut, stop",
            _ => "Track saw",
        };

    /// <summary>True when a stop's distance is set on the track saw instead: to rip, to cut across a wide piece, or far from the end.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="workpiece">Finds a workpiece by its id.</param>
    public static bool IsTrack(Visit visit, Func<string, Workpiece> workpiece) =>
        visit.Saw == Saw.Stop
        && (
            visit.Setting > FarthestStop
            || visit.Cuts.Any(cut => cut.Kind == CutKind.Sizing && IsBeyondSled(cut, workpiece(cut.On)))
        );

    // No crosscut saw makes a cut along a whole board (common practice, no source).
    private static bool IsBeyondSled(SawCut cut, Workpiece piece) =>
        cut.Along == SheetAxis.Width || piece.Width > LongestCrosscut;
}

using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Paper;

/// <summary>What a person takes in hand for a cut at a setting.</summary>
public enum GuideInHand
{
    /// <summary>The table saw's fence.</summary>
    Fence,

    /// <summary>A crosscut sled, or another crosscut saw, with its stop at the distance.</summary>
    Sled,

    /// <summary>The track saw, its track set by two sticks of the distance.</summary>
    Track,
}

/// <summary>Which saw a person takes for a visit, cut by cut.</summary>
/// <remarks>
/// A distance beyond the fence is set on the crosscut saw's stop, if that saw can make the cuts, else on the track saw. A piece
/// whose edge is too short for the fence goes on the sled. One guide is set for all cuts of a visit where one will do: the
/// sled where it can make every cut, the track saw where the fence can make none.
/// </remarks>
public sealed class SawInHand
{
    private readonly Func<string, Workpiece> _workpiece;
    private readonly SawLimits _saws;
    private readonly Visit _visit;

    /// <param name="visit">The visit.</param>
    /// <param name="workpiece">Finds a workpiece by its id.</param>
    /// <param name="saws">What the shop takes for a short edge.</param>
    public SawInHand(Visit visit, Func<string, Workpiece> workpiece, SawLimits saws)
    {
        (_visit, _workpiece, _saws) = (visit, workpiece, saws);
        var sizing = visit.Cuts.Where(c => c.Kind == CutKind.Sizing).ToList();
        All = OfAll(sizing);
    }

    /// <summary>The longest cut across a piece that a crosscut sled makes; 24 in (common practice, no source).</summary>
    public static Length LongestCrosscut { get; } = Length.FromInches(24, 0, 1);

    /// <summary>The farthest a stop is set beside a sled's blade; 60 in (common practice, no source).</summary>
    public static Length FarthestStop { get; } = Length.FromInches(60, 0, 1);

    /// <summary>What makes all cuts of the visit; null when some need another guide than the fence, set to the same distance.</summary>
    public GuideInHand? All { get; }

    /// <summary>The saw and what guides it.</summary>
    public string Name =>
        All switch
        {
            GuideInHand.Fence => "Table saw, fence",
            GuideInHand.Sled => "Crosscut, stop",
            GuideInHand.Track => "Track saw, two stops",
            _ => _visit.Cuts.Any(c => For(c) == GuideInHand.Track)
                ? "Table saw, fence; track"
                : "Table saw, fence; sled",
        };

    /// <summary>What makes one of its cuts.</summary>
    public GuideInHand For(SawCut cut) =>
        All
        ?? (
            !IsShort(cut) ? GuideInHand.Fence
            : IsWithinSled(cut) ? GuideInHand.Sled
            : GuideInHand.Track
        );

    private GuideInHand? OfAll(List<SawCut> sizing)
    {
        if (_visit.Saw != Saw.Stop && !sizing.Any(IsShort))
            return GuideInHand.Fence;
        if (sizing.All(IsWithinSled))
            return GuideInHand.Sled;
        return _visit.Saw == Saw.Stop || sizing.All(IsShort) ? GuideInHand.Track : null;
    }

    private bool IsShort(SawCut cut) =>
        cut.Kind == CutKind.Sizing && VisitCautions.IsShortAtFence(cut, _workpiece(cut.On), _saws);

    private bool IsWithinSled(SawCut cut)
    {
        var piece = _workpiece(cut.On);
        var through = cut.Along == SheetAxis.Width ? piece.Length : piece.Width;
        return _visit.Setting <= FarthestStop && through <= LongestCrosscut;
    }
}

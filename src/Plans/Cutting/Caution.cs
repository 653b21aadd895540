using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Cutting;

/// <summary>Something to mind at a visit.</summary>
public enum Caution
{
    /// <summary>The fence stands close to the blade.</summary>
    NarrowRip,

    /// <summary>A piece has a short edge at the fence and may turn.</summary>
    ShortEdge,

    /// <summary>A short piece comes off at the stop.</summary>
    ShortPiece,

    /// <summary>A piece reaches far beyond the table and may tip.</summary>
    LargePiece,
}

/// <summary>What to mind at each visit: the one place that says so, for findings, cards and the page.</summary>
public static class VisitCautions
{
    // Common practice, no source: a piece that reaches far beyond the table tips.
    private static readonly Length Large = Length.FromMillimetres(1200);

    /// <summary>What to mind at a visit; nothing for pieces that are easily held.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="workpiece">The workpiece with an id.</param>
    /// <param name="saws">What the shop takes for narrow and for short.</param>
    public static IEnumerable<Caution> Of(Visit visit, Func<string, Workpiece> workpiece, SawLimits saws)
    {
        var worked = visit.Cuts.Select(cut => (Cut: cut, On: workpiece(cut.On))).ToList();
        if (visit.Saw == Saw.Fence && visit.Setting < saws.LeastRip)
            yield return Caution.NarrowRip;
        if (visit.Saw == Saw.Fence && worked.Any(w => IsShortAtFence(w.Cut, w.On, saws)))
            yield return Caution.ShortEdge;
        if (visit.Saw == Saw.Stop && visit.Setting < saws.LeastRip)
            yield return Caution.ShortPiece;
        if (worked.Any(w => w.On.Length > Large || w.On.Width > Large))
            yield return Caution.LargePiece;
    }

    /// <summary>True when the edge of a piece that rides along the fence is so short that the piece may turn: a sled makes that cut.</summary>
    /// <param name="cut">The cut.</param>
    /// <param name="on">The piece it goes through.</param>
    /// <param name="saws">What the shop takes for short.</param>
    public static bool IsShortAtFence(SawCut cut, Workpiece on, SawLimits saws) =>
        AtFence(cut, on) is var edge && (edge < saws.LeastEdge || edge < cut.Distance);

    private static Length AtFence(SawCut cut, Workpiece on) => cut.Along == SheetAxis.Width ? on.Length : on.Width;
}

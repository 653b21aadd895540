using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Paper;

/// <summary>What to take care of at one setting, said on its card.</summary>
public static class SawCautions
{
    // Common practice, no source: hands stay a hand's breadth and more from the blade; a piece with a short edge at the
    // fence turns; a piece that reaches far beyond the table tips.
    private static readonly Length Narrow = Length.FromMillimetres(150);
    private static readonly Length Short = Length.FromMillimetres(300);
    private static readonly Length Large = Length.FromMillimetres(1200);

    /// <summary>The cautions of a visit; none for pieces that are easily held.</summary>
    public static IEnumerable<string> Of(Visit visit, JobWords words)
    {
        var worked = visit.Cuts.Select(cut => (Cut: cut, On: words.Workpiece(cut.On))).ToList();
        if (visit.Saw == Saw.Fence && visit.Setting < Narrow)
            yield return "narrow rip: push block or two push sticks, never a hand.";
        if (visit.Saw == Saw.Fence && worked.Any(w => IsShort(AtFence(w.Cut, w.On), visit.Setting)))
            yield return "short edge at the fence: use a sled with its stop at this distance instead.";
        if (visit.Saw == Saw.Stop && visit.Setting < Narrow)
            yield return "short piece: clamp it down, keep hands away, let the blade stop first.";
        if (worked.Any(w => w.On.Length > Large || w.On.Width > Large))
            yield return "large piece: support it all round, or have a second pair of hands.";
    }

    private static bool IsShort(Length edge, Length setting) => edge < Short || edge < setting;

    private static Length AtFence(SawCut cut, Workpiece on) => cut.Along == SheetAxis.Width ? on.Length : on.Width;
}

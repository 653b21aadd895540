using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Paper;

/// <summary>What to take care of at one setting, said on its card.</summary>
public static class SawCautions
{
    // Common practice, no source: hands stay a hand's breadth and more from the blade; a piece shorter than the blade is
    // wide, or wider than it is long, turns at the fence; what reaches beyond the table by half its length tips.
    private static readonly Length Narrow = Length.FromMillimetres(150);
    private static readonly Length Short = Length.FromMillimetres(300);
    private static readonly Length Large = Length.FromMillimetres(1200);

    /// <summary>The cautions of a visit; none for pieces that are easily held.</summary>
    public static IEnumerable<string> Of(Visit visit, JobWords words)
    {
        var worked = visit.Cuts.Select(cut => (Cut: cut, On: words.Workpiece(cut.On))).ToList();
        if (visit.Saw == Saw.Fence && visit.Setting < Narrow)
            yield return "narrow rip: push block or two push sticks, never a hand.";
        if (visit.Saw == Saw.Fence && worked.Any(w => AlongFence(w.Cut, w.On) < Short))
            yield return "a short piece runs along the fence here: carry it with a sled or a wide push block.";
        if (visit.Saw == Saw.Fence && worked.Any(w => AlongFence(w.Cut, w.On) < visit.Setting))
            yield return "a piece is wider than it is long: guide it with a sled, not by the fence alone.";
        if (visit.Saw == Saw.Stop && visit.Setting < Narrow)
            yield return "short piece: clamp it to the sled or gauge, keep hands outside, let the blade stop first.";
        if (worked.Any(w => w.On.Length > Large || w.On.Width > Large))
            yield return "large piece: support it before, beside and behind the saw, or have a second pair of hands.";
    }

    private static Length AlongFence(SawCut cut, Workpiece on) => cut.Along == SheetAxis.Width ? on.Length : on.Width;
}

using Nookwright.Cutting;

namespace Nookwright.Paper;

/// <summary>What to take care of at one setting, in the words of its card.</summary>
public static class SawCautions
{
    /// <summary>The cautions of a visit; none for pieces that are easily held.</summary>
    public static IEnumerable<string> Of(Visit visit, JobWords words) =>
        VisitCautions.Of(visit, words.Workpiece, words.Saws).Select(caution => Say(caution, words));

    private static string Say(Caution caution, JobWords words) =>
        caution switch
        {
            Caution.NarrowRip =>
                $"narrow rip, under {words.Size(words.Saws.LeastRip)}: push block or two push sticks, never a hand.",
            Caution.ShortEdge =>
                $"short edge at the fence, under {words.Size(words.Saws.LeastEdge)} or shorter than the distance: use a sled "
                    + "with its stop at this distance instead.",
            Caution.ShortPiece =>
                $"short piece, under {words.Size(words.Saws.LeastRip)}: clamp it down, keep hands away, let the blade stop first.",
            _ => "large piece: support it all round, or have a second pair of hands.",
        };
}

using Nookwright.Cutting;

namespace Nookwright.Paper;

/// <summary>What to take care of at one setting, in the words of its card.</summary>
public static class SawCautions
{
    /// <summary>The cautions of a visit; none for pieces that are easily held.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="words">The job's words.</param>
    /// <param name="inHand">The saw that is taken for it.</param>
    public static IEnumerable<string> Of(Visit visit, JobWords words, SawInHand inHand) =>
        VisitCautions
            .Of(visit, words.Workpiece, words.Saws)
            .Select(caution => OnTheSled(caution, inHand))
            .OfType<Caution>()
            .Distinct()
            .Select(caution => Say(caution, words));

    // On a sled no edge is too short, and what is narrow at the fence is short at the stop.
    private static Caution? OnTheSled(Caution caution, SawInHand inHand) =>
        (inHand.All, caution) switch
        {
            (GuideInHand.Sled, Caution.ShortEdge) => null,
            (GuideInHand.Sled, Caution.NarrowRip) => Caution.ShortPiece,
            _ => caution,
        };

    private static string Say(Caution caution, JobWords words) =>
        caution switch
        {
            Caution.NarrowRip =>
                $"narrow rip, under {words.Size(words.Saws.LeastRip)}: push block or two push sticks, never a hand.",
            Caution.ShortEdge =>
                $"an edge under {words.Size(words.Saws.LeastEdge)}, or shorter than the distance, does not ride along the fence: cut "
                    + "those as it says below.",
            Caution.ShortPiece =>
                $"short piece, under {words.Size(words.Saws.LeastRip)}: clamp it down, keep hands away, let the blade stop first.",
            _ => "large piece: support it all round, or have a second pair of hands.",
        };
}

using Nookwright.Cutting;
using Nookwright.Flow;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>A visit to a saw in words, the same on the card on paper and on the page: what to set, what goes in, what comes out.</summary>
/// <param name="book">The job.</param>
/// <param name="words">The job's words.</param>
/// <param name="visit">The visit.</param>
public sealed class VisitWords(Workbook book, JobWords words, Visit visit)
{
    /// <summary>The saw and what guides it.</summary>
    public string Saw => SawInHand.Of(visit, words.Workpiece);

    /// <summary>From where to where the distance is, and which way the cuts go.</summary>
    public string Guide
    {
        get
        {
            var ways = visit.Cuts.Where(c => c.Kind == CutKind.Sizing).Select(c => c.Along).Distinct().ToList();
            var way = ways switch
            {
                [SheetAxis.Width] => ", all cuts along the figure",
                [SheetAxis.Length] => ", all cuts across the figure",
                _ => "",
            };
            var set = SawInHand.IsTrack(visit, words.Workpiece)
                ? "From the edge to the blade's near side: mark it on two sticks and set both ends of the track by them"
                : $"From {GuideName} to blade";
            return $"{set}{way}. Measure the first piece before you cut the rest.";
        }
    }

    /// <summary>What this visit keeps together, and why, a sentence a group.</summary>
    public IEnumerable<string> Matches =>
        from id in visit.Matches
        join match in book.PartList.Matches on id equals match.Id
        let letters = JobWords.Counted(match.Sides.Select(side => words.Letter(side.Part)))
        select $"{letters}. {LengthLabel.In(match.Because)}";

    /// <summary>What to take care of.</summary>
    public IEnumerable<string> Cautions => SawCautions.Of(visit, words);

    /// <summary>The letters of the parts that are done after this visit, with how many of each; empty when none is.</summary>
    public string Done => Results(WorkpieceUse.Part);

    /// <summary>The held parts that are kept long, with how many of each; empty when none is.</summary>
    public string Kept => Results(WorkpieceUse.Held);

    private string GuideName => visit.Saw == Cutting.Saw.Stop ? "stop" : "fence";

    /// <summary>What goes in and what comes out: <c>S1-R1 → A × 2</c>; empty for passes that only prepare.</summary>
    public string Lead(CutChain chain) => IsSizing(chain) ? $"{chain.First.On} → {Given(chain)}" : "";

    /// <summary>How it goes in, for which parts, and what is left; for passes that only prepare, the order to make them.</summary>
    public string Detail(CutChain chain)
    {
        if (!IsSizing(chain))
            return string.Join("; ", chain.Cuts.Select(new CutWords(words).Preparing));
        var edge = CutWords.Edge(chain.First.Along, chain.First.From);
        var left = chain.Leaves is { } leaves ? $"Left: {words.Described(leaves)}." : "Nothing left.";
        return $"{words.Sides(words.Workpiece(chain.First.On))}, {edge} to the {GuideName}.{For(chain)} {left}";
    }

    private static bool IsSizing(CutChain chain) => chain.First.Kind == CutKind.Sizing;

    // Which letters a strip will become, so that a part can be found on every card it passes.
    private string For(CutChain chain)
    {
        var strips = chain.Gives.Select(words.Workpiece).Where(piece => piece.Part is null);
        var letters = strips.Select(words.PartsIn).Where(parts => parts.Length > 0).Distinct().ToList();
        return letters.Count == 0 ? "" : $" For {string.Join("; ", letters)}.";
    }

    private string Given(CutChain chain)
    {
        var given = chain.Gives.Select(words.Called).ToList();
        return given.Distinct().Count() == given.Count ? string.Join(", ", given) : JobWords.Counted(given);
    }

    private string Results(WorkpieceUse use)
    {
        var pieces = visit.Cuts.Where(c => c.Kind == CutKind.Sizing).SelectMany(c => new[] { c.Gives, c.Leaves });
        var results = pieces.OfType<string>().Select(words.Workpiece).Where(piece => piece.Use == use);
        return JobWords.Counted(results.Select(words.Called));
    }
}

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
            var proof =
                visit.Cuts.Count(c => c.Kind == CutKind.Sizing) > 1
                    ? " Measure the first piece before you cut the rest."
                    : "";
            return $"{set}{way}.{proof}";
        }
    }

    /// <summary>What this visit keeps together, and why, a sentence a group.</summary>
    public IEnumerable<string> Matches =>
        from id in visit.Matches
        join match in book.PartList.Matches on id equals match.Id
        let letters = JobWords.Counted(match.Sides.Select(side => words.Letter(side.Part)))
        select $"{letters}. {LengthLabel.In(match.Because)}";

    /// <summary>What to take in hand: the stack for this setting, all of it; whole sheets that no track saw has touched.</summary>
    public string Take
    {
        get
        {
            var stack = words.Loose.Waits.Count(w => w.Visit == visit.Number);
            var whole = visit.Cuts.Select(c => c.On).Where(IsWholeSheet).Distinct().ToList();
            var taken = stack == 0 ? "" : $"stack {visit.Number}, {JobWords.Count(stack, "piece")}";
            var sheets = whole.Count == 0 ? "" : $"{string.Join(", ", whole)}, whole as it comes";
            return string.Join("; ", new[] { taken, sheets }.Where(text => text.Length > 0));
        }
    }

    /// <summary>How many times the blade is passed.</summary>
    public string Cuts => JobWords.Count(visit.Cuts.Count, "cut");

    /// <summary>What lies about when this visit is done: how many pieces, on which stacks; empty when nothing waits.</summary>
    public string Waiting
    {
        get
        {
            var stacks = words.Loose.After(visit.Number).GroupBy(w => w.Visit).ToList();
            var said = stacks.Select(s => s.Count() == 1 ? $"{s.Key}" : $"{s.Key} ({s.Count()})");
            var count = JobWords.Count(stacks.Sum(s => s.Count()), "piece waits", "pieces wait");
            return stacks.Count == 0
                ? ""
                : $"{count}, on {(stacks.Count == 1 ? "stack" : "stacks")} {string.Join(", ", said)}";
        }
    }

    /// <summary>What is done to the finished parts away from the saw before they are stacked: corners cut out; a sentence a letter.</summary>
    public IEnumerable<string> Then =>
        from part in book.PartList.Parts.DistinctBy(p => p.Letter)
        where part.Notch is not null && DoneLetters.Contains(part.Letter)
        select $"{part.Letter}: {NotchWords.Of(part.Notch!, words)}";

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

    // Which letters a strip will become, so that a part can be found on every card it passes, and where it is put until then.
    private string For(CutChain chain)
    {
        var strips = chain.Gives.Select(words.Workpiece).Where(piece => piece.Part is null);
        var said = strips.Select(ForStrip).Where(text => text.Length > 0).Distinct().ToList();
        return said.Count == 0 ? "" : $" For {string.Join("; ", said)}.";
    }

    private string ForStrip(Workpiece strip) =>
        (words.PartsIn(strip), words.Stack(strip.Id)) switch
        {
            ("", _) => "",
            (var parts, { } stack) => $"{parts}: stack\u00a0{stack}",
            (var parts, null) => parts,
        };

    private bool IsWholeSheet(string id) => words.Workpiece(id).Use == WorkpieceUse.Sheet;

    private HashSet<string> DoneLetters => [.. ResultsOf(WorkpieceUse.Part).Select(words.Called)];

    private string Given(CutChain chain)
    {
        var given = chain.Gives.Select(words.Called).ToList();
        return given.Distinct().Count() == given.Count ? string.Join(", ", given) : JobWords.Counted(given);
    }

    private string Results(WorkpieceUse use) => JobWords.Counted(ResultsOf(use).Select(words.Called));

    private IEnumerable<Workpiece> ResultsOf(WorkpieceUse use) =>
        visit
            .Cuts.Where(c => c.Kind == CutKind.Sizing)
            .SelectMany(c => new[] { c.Gives, c.Leaves })
            .OfType<string>()
            .Select(words.Workpiece)
            .Where(piece => piece.Use == use);
}

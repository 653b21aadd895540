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
    private readonly SawInHand _inHand = new(visit, words.Workpiece, words.Saws);

    /// <summary>The saw and what guides it.</summary>
    public string Saw => _inHand.Name;

    /// <summary>From where to where the distance is, and which way the cuts go.</summary>
    public string Guide
    {
        get
        {
            var ways = visit.Cuts.Where(c => c.Kind == CutKind.Sizing).Select(c => c.Along).Distinct().ToList();
            var way = ways switch
            {
                [SheetAxis.Width] => " All cuts along the figure.",
                [SheetAxis.Length] => " All cuts across the figure.",
                _ => "",
            };
            var set = _inHand.All switch
            {
                GuideInHand.Track =>
                    "From the edge to the blade's near side: mark it on two sticks and set both ends of the track by them.",
                GuideInHand.Sled => "From stop to blade.",
                GuideInHand.Fence => "From fence to blade.",
                _ =>
                    "From fence to blade. Set the other guide by a piece just cut, not by the tape: they are one setting.",
            };
            var proof =
                visit.Cuts.Count(c => c.Kind == CutKind.Sizing) > 1
                    ? " Measure the first piece before you cut the rest."
                    : "";
            return set + way + proof;
        }
    }

    /// <summary>What this visit keeps together, and why; groups that differ in one number only are told in one sentence.</summary>
    public IEnumerable<string> Matches =>
        from match in MatchWords.Together(book.PartList.Matches.Where(m => visit.Matches.Contains(m.Id)), words)
        select $"{match.Letters}. {LengthLabel.In(match.Because)}";

    /// <summary>Which parts of a running grain come off here, in what order, each with its number in the run; a sentence a run.</summary>
    public IEnumerable<string> Runs
    {
        get
        {
            var made = ResultsOf(WorkpieceUse.Part).Select(piece => piece.Part).OfType<string>().ToList();
            return from run in book.CutRequest.Runs
                let here = made.Where(run.Parts.Contains).ToList()
                where here.Count > 1
                select $"Running grain {run.Id} comes off as {string.Join(", ", here.Select(part => InRun(part, run)))}: write "
                    + "these numbers on the backs before you cut.";
        }
    }

    /// <summary>What the track saw does before this visit and not earlier: sheets to break down, pieces left before to prepare; empty when nothing.</summary>
    public string First
    {
        get
        {
            var broken = (book.Plan?.Breakdown ?? []).Select(c => words.Workpiece(c.On).Sheet).ToHashSet();
            var sheets = words.LiftedFor(visit.Number).Where(s => broken.Contains(words.Workpiece(s).Sheet)).ToList();
            var left = LeftBefore.Of(book.Plan).Where(l => IsPreparedHere(l.Piece)).Select(l => l.Piece).ToList();
            string[] todo =
            [
                sheets.Count == 0
                    ? ""
                    : $"break down {string.Join(", ", sheets)} as {(sheets.Count == 1 ? "its page says" : "their pages say")}",
                left.Count == 0 ? "" : $"prepare {string.Join(", ", left)} as the cutting plan says",
            ];
            return string.Join("; ", todo.Where(text => text.Length > 0));
        }
    }

    /// <summary>What to take in hand: the stack for this setting, all of it; whole sheets and pieces set aside that no track saw has touched.</summary>
    public string Take
    {
        get
        {
            var stack = words.Loose.Waits.Count(w => w.Visit == visit.Number);
            var taken = stack == 0 ? "" : $"stack {visit.Number}, {JobWords.Count(stack, "piece")}";
            var made = (book.Plan?.Cuts ?? []).SelectMany(c => new[] { c.Gives, c.Leaves }).ToHashSet();
            var whole = visit.Cuts.Select(c => c.On).Where(on => !made.Contains(on)).Distinct().Select(AsItComes);
            return string.Join("; ", whole.Prepend(taken).Where(text => text.Length > 0));
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
    public IEnumerable<string> Cautions => SawCautions.Of(visit, words, _inHand);

    /// <summary>The letters of the parts that are done after this visit, with how many of each; empty when none is.</summary>
    public string Done => Results(WorkpieceUse.Part);

    /// <summary>The held parts that are kept long, with how many of each; empty when none is.</summary>
    public string Kept => Results(WorkpieceUse.Held);

    /// <summary>What goes in and what comes out: <c>S1-R1 → A × 2</c>; empty for passes that only prepare.</summary>
    public string Lead(CutChain chain) => IsSizing(chain) ? $"{chain.First.On} → {Given(chain)}" : "";

    /// <summary>How it goes in, for which parts, and what is left; for passes that only prepare, the order to make them.</summary>
    public string Detail(CutChain chain)
    {
        if (!IsSizing(chain))
            return string.Join("; ", chain.Cuts.Select(new CutWords(words).Preparing));
        var edge = Against(chain.First);
        var left = chain.Leaves is { } leaves ? $"Left: {words.Described(leaves)}." : "Nothing left.";
        return $"goes in {words.Sides(words.Workpiece(chain.First.On))}, {edge}.{For(chain)} {left}";
    }

    // Where one guide does not do for all of them, the odd ones are told first.
    private string Against(SawCut cut)
    {
        var edge = CutWords.Edge(cut.Along, cut.From);
        return (_inHand.All, _inHand.For(cut)) switch
        {
            (null, GuideInHand.Sled) => $"ON THE SLED, {edge} to its stop",
            (null, GuideInHand.Track) => $"WITH THE TRACK SAW, {edge} to the stops",
            (_, GuideInHand.Fence) => $"{edge} to the fence",
            (_, GuideInHand.Sled) => $"{edge} to the stop",
            _ => $"{edge} to the stops",
        };
    }

    private static bool IsSizing(CutChain chain) => chain.First.Kind == CutKind.Sizing;

    // Which letters a strip will become, so that a part can be found on every card it passes, and where it is put until then.
    private string For(CutChain chain)
    {
        var strips =
            from id in chain.Gives
            where words.Workpiece(id).Part is null
            let text = ForStrip(words.Workpiece(id))
            where text.Length > 0
            group id by text;
        var said = strips.ToList();
        return said.Count switch
        {
            0 => "",
            1 => $" For {said[0].Key}.",
            // Alike from outside, these go to different stacks.
            _ => $" {string.Join("; ", said.Select(s => $"{string.Join(", ", s)} for {s.Key}"))}.",
        };
    }

    private string ForStrip(Workpiece strip) =>
        (words.PartsIn(strip), words.Stack(strip.Id)) switch
        {
            ("", _) => "",
            (var parts, { } stack) => $"{parts}: stack\u00a0{stack}",
            (var parts, null) => parts,
        };

    private string AsItComes(string id) =>
        words.Workpiece(id).Use == WorkpieceUse.Sheet
            ? $"{id}, whole as it comes"
            : $"{words.LeftAs(id)}, set aside before";

    // All pieces left of one sheet are prepared when the first of them is needed.
    private bool IsPreparedHere(string left) =>
        words.Loose.Lifts.TryGetValue(words.Workpiece(left).Sheet, out var setting) && setting == visit.Number;

    private string InRun(string part, CutRun run) =>
        $"{run.Parts.Index().First(p => p.Item == part).Index + 1}\u00a0{words.Letter(part)}";

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

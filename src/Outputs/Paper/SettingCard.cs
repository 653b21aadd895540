using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>The card of one visit: which saw, at which distance, what goes in, what comes out, what is left.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Book">The job.</param>
/// <param name="Words">The job's words.</param>
/// <param name="Left">The left edge of what is on the card.</param>
/// <param name="Width">The width of what is on the card.</param>
internal sealed record SettingCard(Visit Visit, Workbook Book, JobWords Words, double Left, double Width)
{
    /// <summary>The em of the distance: figures 17 mm high, to be read at arm's length.</summary>
    public const double BigSize = 24;

    private const double UnitSize = 9;
    private const double Size = 4;
    private const double LeadSize = 4.6;
    private const double Box = 4.2;
    private const double BoxStep = 5.6;

    /// <summary>What stands on top of the card, and of every card it goes on with.</summary>
    public IReadOnlyList<CardBlock> Top(bool goesOn) => [TitleLine(goesOn), Distance()];

    /// <summary>Everything else, in the order it is done.</summary>
    public IReadOnlyList<CardBlock> Body() => [.. Advice(), .. Cuts(), .. Results()];

    /// <summary>The saw from above, with what goes in and what comes off.</summary>
    public CardBlock Picture(double height) =>
        new(
            height,
            y => SettingPicture.Of(Visit, Book.Plan!, Book.CutRequest, Book.Lengths, Width, height).At(Left, y)
        );

    private CardBlock TitleLine(bool goesOn)
    {
        var title = $"Setting {Visit.Number} of {Book.Plan!.Visits.Count}{(goesOn ? ", continued" : "")}";
        var saw = Visit.Saw switch
        {
            Saw.Fence => "TABLE SAW, FENCE",
            Saw.Stop => "CROSSCUT, STOP",
            _ => "TRACK SAW",
        };
        var (right, done) = (Left + Width, TextMetrics.Width("done", TypeSize.Body));
        var titleEnd = Left + TextMetrics.Width(title, TypeSize.Head, bold: true);
        var sawAt = Math.Max(titleEnd + 8, Left + (Width * 0.42));
        return new(
            9,
            y =>
                [
                    new Mark.Label(title, new(Left, y + 4.6), TypeSize.Head, Bold: true),
                    new Mark.Label(saw, new(sawAt, y + 4.6), TypeSize.Head, Bold: true),
                    Shapes.TickBox(right - 5.5, y, 5.5),
                    new Mark.Label("done", new(right - 7.5 - done, y + 4.6), TypeSize.Body),
                ]
        );
    }

    // The distance, and beside it, where there is room, how to take it.
    private CardBlock Distance()
    {
        const double Narrowest = 50;
        var number = Words.Bare(Visit.Setting);
        var unitAt = Left + TextMetrics.Width(number, BigSize, bold: true) + 3;
        var adviceAt = unitAt + TextMetrics.Width(Words.Unit, UnitSize, bold: true) + 8;
        var distance = new CardBlock(
            BigSize * 1.02,
            y =>
                [
                    new Mark.Label(number, new(Left, y + (BigSize * 0.82)), BigSize, Bold: true),
                    new Mark.Label(Words.Unit, new(unitAt, y + (BigSize * 0.82)), UnitSize, Bold: true),
                ]
        );
        var width = Left + Width - adviceAt;
        if (width >= Narrowest)
            return CardBlock.Beside(distance, CardBlock.Text(adviceAt, width, Guide(), Size).Lowered(BigSize * 0.1));
        return distance.Above(Line(Guide()));
    }

    private IEnumerable<CardBlock> Advice()
    {
        if (Visit.Round > 1)
            yield return Line($"Round {Visit.Round}: only after the readings of the round before.");
        foreach (var match in Matches())
            yield return Line($"Keep together: {match}");
        foreach (var caution in SawCautions.Of(Visit, Words))
            yield return Line($"Take care: {caution}", bold: true);
        yield return CardBlock.Gap(1.5);
    }

    private string Guide()
    {
        var way = Visit.Cuts.Where(c => c.Kind == CutKind.Sizing).Select(c => c.Along).Distinct().ToList() switch
        {
            [SheetAxis.Width] => ", all cuts along the figure",
            [SheetAxis.Length] => ", all cuts across the figure",
            _ => "",
        };
        var from = Visit.Saw == Saw.Stop ? "From stop to blade" : "From fence to blade";
        return $"{from}{way}. Measure the first piece before you cut the rest.";
    }

    private IEnumerable<string> Matches() =>
        from id in Visit.Matches
        join match in Book.PartList.Matches on id equals match.Id
        let letters = JobWords.Counted(match.Sides.Select(s => Words.Letter(s.Part)))
        select $"{letters}. {LengthLabel.In(match.Because)}";

    private IEnumerable<CardBlock> Cuts()
    {
        yield return Line("In this order:", bold: true);
        foreach (var chain in CutChain.Of(Visit.Cuts))
            yield return chain.First.Kind == CutKind.Sizing
                ? Ticked(chain.Cuts.Count, Detail(chain), $"{chain.First.On} → {Given(chain)}")
                : Ticked(chain.Cuts.Count, string.Join("; ", chain.Cuts.Select(new CutWords(Words).Preparing)));
    }

    private string Detail(CutChain chain)
    {
        var on = Words.Workpiece(chain.First.On);
        var guide = Visit.Saw == Saw.Stop ? "stop" : "fence";
        var edge = CutWords.Edge(chain.First.Along, chain.First.From);
        var left = chain.Leaves is { } leaves ? $"Left: {Words.Described(leaves)}." : "Nothing left.";
        return $"{Words.Sides(on)}, {edge} to the {guide}.{For(chain)} {left}";
    }

    // Which letters a strip will become, so that a part can be found on every card it passes.
    private string For(CutChain chain)
    {
        var strips = chain.Gives.Select(Words.Workpiece).Where(piece => piece.Part is null).ToList();
        var letters = strips.Select(Words.PartsIn).Where(parts => parts.Length > 0).Distinct().ToList();
        return letters.Count == 0 ? "" : $" For {string.Join("; ", letters)}.";
    }

    private string Given(CutChain chain)
    {
        var given = chain.Gives.Select(Words.Called).ToList();
        return given.Distinct().Count() == given.Count ? string.Join(", ", given) : JobWords.Counted(given);
    }

    private IEnumerable<CardBlock> Results()
    {
        var given = Visit.Cuts.Where(c => c.Kind == CutKind.Sizing).SelectMany(c => new[] { c.Gives, c.Leaves });
        var pieces = given.OfType<string>().Select(Words.Workpiece).ToList();
        yield return CardBlock.Gap(1.5);
        foreach (var (use, says) in ResultKinds)
        {
            var named = pieces.Where(p => p.Use == use).Select(Words.Called).ToList();
            if (named.Count > 0)
                yield return Line($"{says} {JobWords.Counted(named)}", bold: use == WorkpieceUse.Part);
        }
    }

    private static readonly (WorkpieceUse Use, string Says)[] ResultKinds =
    [
        (WorkpieceUse.Part, "Done, write the letter on each:"),
        (WorkpieceUse.Held, "Kept long until read:"),
    ];

    private CardBlock Line(string text, bool bold = false) => CardBlock.Text(Left, Width, text, Size, bold).Padded(0.6);

    // One box a pass, five in a row, so that nobody loses count.
    private CardBlock Ticked(int passes, string text, string lead = "")
    {
        const int InRow = 5;
        var columns = Math.Min(passes, InRow);
        var rows = ((passes - 1) / InRow) + 1;
        var boxes = new CardBlock(
            rows * BoxStep,
            y =>
                Enumerable
                    .Range(0, passes)
                    .Select(i => Shapes.TickBox(Left + (i % InRow * BoxStep), y + 0.5 + (i / InRow * BoxStep), Box))
        );
        var indent = (columns * BoxStep) + 1.5;
        var says = CardBlock.Text(Left + indent, Width - indent, text, Size);
        if (lead.Length > 0)
            says = CardBlock.Text(Left + indent, Width - indent, lead, LeadSize, bold: true).Above(says);
        return CardBlock.Beside(boxes, says).Padded(1);
    }
}

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

    private VisitWords Says { get; } = new(Book, Words, Visit);

    /// <summary>What stands on top of the card, and of every card it goes on with.</summary>
    public IReadOnlyList<CardBlock> Top(bool goesOn) => [TitleLine(goesOn), Distance()];

    /// <summary>Everything else, in the order it is done.</summary>
    public IReadOnlyList<CardBlock> Body() => [.. Advice(), .. Cuts(), .. Results()];

    /// <summary>The saw from above, with what goes in and what comes off.</summary>
    public CardBlock Picture(double height)
    {
        var leftOut = SettingPicture.LeftOut(Visit, Book.Plan!);
        var note = leftOut == 0 ? CardBlock.Gap(0) : Line($"Drawn are the first; {leftOut} more as listed.");
        return note.Above(
            new(
                height - note.Height,
                y =>
                    SettingPicture
                        .Of(Visit, Book.Plan!, Book.CutRequest, Book.Lengths, Width, height - note.Height)
                        .At(Left, y)
            )
        );
    }

    private CardBlock TitleLine(bool goesOn)
    {
        // Counted on from round to round.
        var title = $"Setting {Visit.Number} of {Book.Plan!.Visits[^1].Number}{(goesOn ? ", continued" : "")}";
        var saw = Says.Saw.ToUpperInvariant();
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
            return CardBlock
                .Beside(distance, CardBlock.Text(adviceAt, width, Says.Guide, Size).Lowered(BigSize * 0.1))
                .Padded(0.8);
        return distance.Above(Line(Says.Guide));
    }

    private IEnumerable<CardBlock> Advice()
    {
        if (Visit.Round > 1)
            yield return Line($"Round {Visit.Round}: only after the readings of the round before.");
        foreach (var match in Says.Matches)
            yield return Line($"Keep together: {match}");
        foreach (var run in Says.Runs)
            yield return Line(run);
        foreach (var caution in Says.Cautions)
            yield return Line($"Take care: {caution}", bold: true);
        yield return CardBlock.Gap(1.5);
    }

    private IEnumerable<CardBlock> Cuts()
    {
        var take = Says.Take.Length > 0 ? $"Take {Says.Take}; " : "";
        var first = Says.First.Length > 0 ? $"First {Says.First}. " : "";
        yield return Line($"{first}{take}{Says.Cuts}{(Visit.Cuts.Count > 1 ? ", in this order" : "")}:", bold: true);
        foreach (var chain in CutChain.Of(Visit.Cuts))
            yield return Ticked(chain.Cuts.Count, Says.Detail(chain), Says.Lead(chain));
    }

    private IEnumerable<CardBlock> Results()
    {
        yield return CardBlock.Gap(1.5);
        if (Says.Done.Length > 0)
            yield return Line($"Done, write on each: {Says.Done}", bold: true);
        if (Says.Kept.Length > 0)
            yield return Line($"Kept long until read: {Says.Kept}");
        foreach (var then in Says.Then)
            yield return Line(then);
        if (Says.Waiting.Length > 0)
            yield return Line($"Then {Says.Waiting}.");
    }

    private CardBlock Line(string text, bool bold = false) => CardBlock.Text(Left, Width, text, Size, bold).Padded(0.6);

    // One box a pass, five in a row, so that nobody loses count.
    private CardBlock Ticked(int passes, string text, string lead)
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

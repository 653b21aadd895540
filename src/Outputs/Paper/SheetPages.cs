using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>The breakdown: one page a sheet with its layout and the first, rough cuts in order.</summary>
internal static class SheetPages
{
    // A sheet twice as long as wide fills the page's width at the most; below the least its letters are hard to read.
    private const double HighestLayout = 108;
    private const double LowestLayout = 70;

    /// <summary>The pages; none when there is no plan.</summary>
    /// <param name="book">The job, its plan that of one round.</param>
    /// <param name="words">The job's words.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="section">What these pages are called among the packet's.</param>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper, string section) =>
        book.Plan is { } plan
            ?
            [
                .. plan.Sheets.SelectMany(sheet =>
                    Pages(sheet, plan, book, words, new(paper, section, Title(sheet, plan)))
                ),
            ]
            : [];

    // Counted on from round to round.
    private static string Title(PlanSheet sheet, Plan plan) => $"Sheet {sheet.Number} of {plan.Sheets[^1].Number}";

    private static IReadOnlyList<PaperPage> Pages(
        PlanSheet sheet,
        Plan plan,
        Workbook book,
        JobWords words,
        PageFlow flow
    )
    {
        var orders = BreakdownOrders.Of(plan.Breakdown.Where(c => words.Workpiece(c.On).Sheet == sheet.Number), words);
        var truths = new SheetTruths(words);
        var parts = PartsFrom(sheet, words);
        flow.Text(Says(sheet, words, truths), bold: true);
        if (words.Loose.Lifts.TryGetValue(sheet.Number, out var setting))
            flow.Text(
                orders.IsEmpty
                    ? $"Take it to setting {setting} whole, without a track-saw cut; until then leave it where it leans."
                    : $"Break it down, wholly, for setting {setting}; until then leave it where it leans.",
                bold: true
            );
        foreach (var truth in truths.Of(sheet))
            flow.Text(truth);
        flow.Text(Lies(sheet), TypeSize.Table);
        flow.Space(2);
        flow.Draw(
            SheetLayout.Of(
                plan,
                sheet.Number,
                book.CutRequest,
                book.Lengths,
                flow.Paper.BodyWidth,
                Math.Min(HeightBeside(orders, parts, flow), SheetLayout.HeightOf(sheet, flow.Paper.BodyWidth))
            )
        );
        flow.Space(2);
        flow.Text(parts, bold: true);
        if (!orders.IsEmpty)
            orders.Draw(flow);
        return flow.Pages;
    }

    // Orders that go on to a second page anyway leave the picture as large as can be.
    private static double HeightBeside(BreakdownOrders orders, string parts, PageFlow flow)
    {
        const double Gaps = 7; // Round the picture, and what the last order asks for beyond its own line.
        var lines = TextMetrics.Lines(parts, flow.Paper.BodyWidth, TypeSize.Body, bold: true).Count;
        var free = flow.Left - orders.HeightOn(flow.Paper) - Gaps - (lines * TypeSize.Body * TypeSize.Leading);
        return free < LowestLayout ? HighestLayout : Math.Min(free, HighestLayout);
    }

    private static string Says(PlanSheet sheet, JobWords words, SheetTruths truths)
    {
        var from = truths.From(sheet) is { Length: > 0 } rack ? $", {rack}" : "";
        return $"{words.Material(sheet.Material)}, {words.Sides(sheet.Length, sheet.Width)}{from}; write {sheet.Workpiece} on it";
    }

    private static string PartsFrom(PlanSheet sheet, JobWords words)
    {
        var whole = words.Workpiece(sheet.Workpiece);
        var held = words.HeldIn(whole) is { Length: > 0 } kept ? $"; held: {kept}" : "";
        return $"Parts from this sheet: {words.CutFrom(whole)}{held}";
    }

    private static string Lies(PlanSheet sheet) =>
        (
            sheet.Width > sheet.Length
                ? "Turn this page so that the arrow of the figure points to the right; edges are named as the sheet lies then. "
                : "Drawn as the sheet lies before you, its figure to the right. "
        )
        + "On each piece write its name, upright, with an arrow along the figure to its right, and the stack it goes to. Left, "
        + "right, top and bottom are as that name reads, here and on the cards.";
}

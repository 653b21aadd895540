using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>The breakdown: one page a sheet with its layout and the first, rough cuts in order.</summary>
internal static class SheetPages
{
    // A sheet twice as long as wide fills the page's width at the most; less would make its letters hard to read.
    private const double HighestLayout = 108;
    private const double LowestLayout = 86;
    private const double OrderSize = TypeSize.Table;
    private const double Indent = 16;
    private const double BelowItem = 1.2;

    /// <summary>The pages; none when there is no plan.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper) =>
        book.Plan is { } plan ? [.. plan.Sheets.SelectMany(sheet => Pages(sheet, plan, book, words, paper))] : [];

    private static IReadOnlyList<PaperPage> Pages(
        PlanSheet sheet,
        Plan plan,
        Workbook book,
        JobWords words,
        PaperFormat paper
    )
    {
        var orders = OrdersOf(sheet, plan, words);
        var flow = new PageFlow(paper, "Breakdown of the sheets", $"Sheet {sheet.Number} of {plan.Sheets.Count}");
        flow.Text(Says(sheet, words), bold: true);
        if (words.Loose.Lifts.TryGetValue(sheet.Number, out var setting))
            flow.Text($"Break it down, wholly, for setting {setting}; until then leave it where it leans.", bold: true);
        flow.Text(Lies(sheet));
        flow.Space(2);
        var free = flow.Left - HeightOf(orders, paper);
        // Orders that go on to a second page anyway leave the picture as large as can be.
        var height = free < LowestLayout ? HighestLayout : Math.Min(free, HighestLayout);
        flow.Draw(SheetLayout.Of(plan, sheet.Number, book.CutRequest, book.Lengths, paper.BodyWidth, height));
        flow.Space(2);
        flow.Text($"Parts from this sheet: {words.PartsIn(words.Workpiece(sheet.Workpiece))}", bold: true);
        DrawOrders(flow, orders);
        return flow.Pages;
    }

    private static string Says(PlanSheet sheet, JobWords words) =>
        $"{words.Material(sheet.Material)}, {words.Sides(sheet.Length, sheet.Width)}; write {sheet.Workpiece} on it";

    private static string Lies(PlanSheet sheet) =>
        (
            sheet.Width > sheet.Length
                ? "Turn this page so that the arrow of the figure points to the right; edges are named as the sheet lies then. "
                : "Drawn as the sheet lies before you, its figure to the right. "
        )
        + "On each piece write its name, upright, with an arrow along the figure to its right, and the stack it goes to. Left, "
        + "right, top and bottom are as that name reads, here and on the cards.";

    private static IReadOnlyList<(int Number, string Order)> OrdersOf(PlanSheet sheet, Plan plan, JobWords words)
    {
        var cuts = plan.Breakdown.Where(cut => words.Workpiece(cut.On).Sheet == sheet.Number);
        return [.. cuts.Select(cut => (cut.Number, new CutWords(words).Breakdown(cut)))];
    }

    // With the line of parts and the head above the orders.
    private static double HeightOf(IReadOnlyList<(int Number, string Order)> orders, PaperFormat paper)
    {
        const double Above = 30;
        const double Leading = OrderSize * TypeSize.Leading;
        var lines = orders.Select(o => TextMetrics.Lines(o.Order, paper.BodyWidth - Indent, OrderSize).Count);
        return Above + lines.Sum(count => (count * Leading) + BelowItem);
    }

    private static void DrawOrders(PageFlow flow, IReadOnlyList<(int Number, string Order)> orders)
    {
        if (orders.Count == 0)
        {
            flow.Space(2);
            flow.Text("No track-saw cut: the sheet goes to the table saw whole.");
            return;
        }
        flow.Head("Track-saw cuts, in order");
        flow.Text(
            "Mark the distance from the edge named and lay the track so that the blade runs beyond the mark.",
            OrderSize
        );
        flow.Space(BelowItem);
        foreach (var (number, order) in orders)
        {
            flow.Need(OrderSize * TypeSize.Leading * 2);
            flow.Add(Shapes.TickBox(flow.Paper.Left + 9, flow.Y + 0.2, 4));
            flow.Item($"{number}", order, OrderSize, Indent);
        }
    }
}

using Nookwright.Cutting;
using Nookwright.Flow;

namespace Nookwright.Paper;

/// <summary>The breakdown: one page a sheet with its layout and the first, rough cuts in order.</summary>
internal static class SheetPages
{
    /// <summary>The pages; none when there is no plan.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper) =>
        book.Plan is { } plan ? [.. plan.Sheets.SelectMany(sheet => Pages(sheet, plan, words, paper))] : [];

    private static IReadOnlyList<PaperPage> Pages(PlanSheet sheet, Plan plan, JobWords words, PaperFormat paper)
    {
        var flow = new PageFlow(paper, "Breakdown of the sheets", $"Sheet {sheet.Number} of {plan.Sheets.Count}");
        flow.Text(
            $"{words.Material(sheet.Material)}, {words.Sides(sheet.Length, sheet.Width)}, written {sheet.Workpiece}",
            bold: true
        );
        flow.Text("Drawn as it lies before you: its length and figure to the right.");
        flow.Space(3);
        flow.Text($"Parts from this sheet: {words.PartsIn(words.Workpiece(sheet.Workpiece))}", bold: true);
        DrawCuts(flow, [.. plan.Breakdown.Where(c => words.Workpiece(c.On).Sheet == sheet.Number)], words);
        return flow.Pages;
    }

    private static void DrawCuts(PageFlow flow, IReadOnlyList<SawCut> cuts, JobWords words)
    {
        if (cuts.Count == 0)
        {
            flow.Space(2);
            flow.Text("No track-saw cut: the sheet goes to the table saw whole.");
            return;
        }
        flow.Head("Track-saw cuts, in order");
        var says = new CutWords(words);
        foreach (var cut in cuts)
        {
            var height = TypeSize.Body * TypeSize.Leading * 2;
            flow.Need(height);
            flow.Add(Shapes.TickBox(flow.Paper.Left + 9, flow.Y + 0.5, 4));
            flow.Item($"{cut.Number}", says.Breakdown(cut), indent: 16);
        }
    }
}

using System.Globalization;
using Nookwright.Buying;
using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>What to buy, what to take from the rack, what it costs as far as prices are known, and what it weighs.</summary>
internal static class ShoppingPages
{
    private static readonly Table Sheets = new([
        new("", 4),
        new("No.", 8, Anchor.End, Bold: true),
        new("Sheets", 38, Bold: true),
        new("Size, figure along the first", 32),
        new("Each", 15, Anchor.End),
        new("Cost", 17, Anchor.End),
        new("Weight each", 18, Anchor.End),
        new("Why", 50),
    ]);

    private static readonly Table Edging = new([
        new("", 4),
        new("Edging", 46, Bold: true),
        new("Buy", 28, Anchor.End),
        new("Why", 90),
    ]);

    /// <summary>The pages; none when there is no plan to buy for.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper)
    {
        if (book.Plan is not { } plan)
            return [];
        var list = ShoppingList.Of(plan, book.PartList, book.Project);
        var flow = new PageFlow(paper, "Shopping list", "Shopping list");
        DrawSheets(flow, "Sheets to buy", list.Sheets, words);
        if (list.Sheets.Count > 0)
            flow.Text(Sums(list, words), bold: true);
        DrawSheets(flow, "From your rack", list.FromRack, words);
        if (list.Edgings.Count > 0)
        {
            flow.Head("Edging");
            Edging.Draw(
                flow,
                list.Edgings.Select(e => (string[])[Table.TickBox, e.Name, words.Size(e.ToBuy), LengthLabel.In(e.Why)])
            );
        }
        if (list.PartsWithoutSheet.Count > 0)
            flow.Text(
                $"Not covered, for want of a sheet: {string.Join(", ", list.PartsWithoutSheet.Select(words.Named))}."
            );
        return flow.Pages;
    }

    private static void DrawSheets(PageFlow flow, string head, IReadOnlyList<SheetLine> lines, JobWords words)
    {
        if (lines.Count == 0)
            return;
        flow.Head(head);
        Sheets.Draw(flow, lines.Select(line => Row(line, words)));
    }

    private static string[] Row(SheetLine line, JobWords words) =>
        [
            Table.TickBox,
            $"{line.Count}",
            words.Material(line.Material),
            words.Sides(line.Length, line.Width),
            Money(line.Price),
            Money(line.Cost),
            words.Weight(line.KilogramsEach) ?? "not known",
            line.Why,
        ];

    private static string Sums(ShoppingList list, JobWords words)
    {
        var cost = $"Sheets together {Money(list.KnownCost)}";
        var unpriced = list.Unpriced.Sum(line => line.Count);
        var without = unpriced == 0 ? "" : $", without {JobWords.Count(unpriced, "sheet")} whose price is not written";
        var weight = words.Weight(list.Kilograms) is { } known ? $". They weigh {known} together." : ".";
        return cost + without + weight;
    }

    private static string Money(decimal? amount) =>
        amount is { } known ? known.ToString("N2", CultureInfo.InvariantCulture) : "not known";
}

using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Parts;
using Nookwright.Projects;

namespace Nookwright.Paper;

/// <summary>The part list: one line per letter, grouped by material.</summary>
internal static class PartPages
{
    private static readonly Table Columns = new([
        new("Part", 11, Bold: true),
        new("Name", 46),
        new("No.", 7, Anchor.End),
        new("Finished", 31, Anchor.End),
        new("Cut to", 31, Anchor.End),
        new("Figure", 13),
        new("Edges; what waits", 43),
    ]);

    // A bare list has one word for letter and name.
    private static readonly Table LabelColumns = new([
        new("Part", 57, Bold: true),
        new("No.", 7, Anchor.End),
        new("Finished", 31, Anchor.End),
        new("Cut to", 31, Anchor.End),
        new("Figure", 13),
        new("What waits, what runs", 43),
    ]);

    /// <summary>The pages; none when there is nothing to make.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper)
    {
        if (book.PartList.Parts.Count == 0)
            return [];
        var flow = new PageFlow(paper, "Parts", "Parts");
        flow.Text(
            $"Sizes are length × width in {words.Units}. The figure column says which of the two the figure runs along."
        );
        var isLabelled = book.PartList.Parts.All(p => p.Letter == p.Panel.Name);
        foreach (var material in book.PartList.Parts.GroupBy(p => p.Panel.Material))
        {
            flow.Head($"{Wood(material.First(), words)}: {JobWords.Count(material.Count(), "part")}");
            var rows = material.GroupBy(p => p.Letter).Select(alike => Row([.. alike], book, words));
            if (isLabelled)
                LabelColumns.Draw(flow, rows.Select(row => (string[])[row[0], .. row[2..]]));
            else
                Columns.Draw(flow, rows);
        }
        return flow.Pages;
    }

    // A bare list need not say how thick its sheets are.
    private static string Wood(Part part, JobWords words)
    {
        var (name, thickness) = (words.Material(part.Panel.Material), part.Panel.Thickness.Length);
        return thickness.IsPositive ? $"{name}, {words.Size(thickness)} thick" : name;
    }

    private static string[] Row(IReadOnlyList<Part> alike, Workbook book, JobWords words)
    {
        var part = alike[0];
        return
        [
            part.Letter,
            AlikeNames.Together(alike.Select(p => p.Panel.Name)),
            $"{alike.Count}",
            words.BareSides(part.Panel.Length.Length, part.Panel.Width.Length),
            CutTo(part, words),
            Figure(part.Panel.Figure),
            Notes(part, book, words),
        ];
    }

    private static string CutTo(Part part, JobWords words) =>
        part.Blank is { } blank
            ? $"{words.BareSides(blank.Length, blank.Width)}, held"
            : words.BareSides(part.CutLength.Length, part.CutWidth.Length);

    private static string Figure(PanelFigure figure) =>
        figure switch
        {
            PanelFigure.Length => "length",
            PanelFigure.Width => "width",
            _ => "either",
        };

    private static string Notes(Part part, Workbook book, JobWords words)
    {
        var edges = EdgeWords.Of(part.Panel, book.Project.Shop.Edgings, words);
        var waits = part.Blank is { } blank ? [$"waits for {string.Join(", ", blank.Awaits)}"] : Array.Empty<string>();
        var run = part.Run is { } place ? [$"no. {place.Order} of running grain {place.Run}"] : Array.Empty<string>();
        var notch = part.Notch is { } cutOut ? [NotchWords.Of(cutOut, words)] : Array.Empty<string>();
        return string.Join("; ", notch.Concat(edges).Concat(waits).Concat(run));
    }
}

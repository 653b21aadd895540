using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Parts;

namespace Nookwright.Paper;

/// <summary>Each letter drawn once: outline, holes and grooves, edged edges, figure, finished sizes.</summary>
internal static class PartDrawings
{
    private const int Columns = 3;
    private const double Gap = 4;
    private const double Height = 44;
    private const double CaptionHeight = 6;

    /// <summary>The pages; none when there is nothing to make.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, PaperFormat paper)
    {
        var letters = book.PartList.Parts.GroupBy(part => part.Letter).ToList();
        if (letters.Count == 0)
            return [];
        var flow = new PageFlow(paper, "Parts drawn", "Parts drawn");
        flow.Text(
            "Seen from the show face, length to the right; not to one scale. What is worked from the other face is dashed."
        );
        flow.Space(3);
        foreach (var row in letters.Chunk(Columns))
            DrawRow(flow, row, book);
        return flow.Pages;
    }

    private static void DrawRow(PageFlow flow, IEnumerable<IGrouping<string, Part>> row, Workbook book)
    {
        flow.Need(Height + CaptionHeight + Gap);
        var width = (flow.Paper.BodyWidth - (Gap * (Columns - 1))) / Columns;
        foreach (var (i, alike) in row.Index())
        {
            var x = flow.Paper.Left + (i * (width + Gap));
            var caption = $"{alike.Key}: {JobWords.Count(alike.Count(), "piece")}";
            flow.Add(Shapes.Box(x, flow.Y, width, Height + CaptionHeight, Pen.Dimension));
            flow.Add(new Mark.Label(caption, new(x + 2, flow.Y + 4.4), TypeSize.Table, Bold: true));
            flow.Add(
                PartPicture.Of(alike.First(), book.Lengths, width - 2, Height - 1).At(x + 1, flow.Y + CaptionHeight)
            );
        }
        flow.Space(Height + CaptionHeight + Gap);
    }
}

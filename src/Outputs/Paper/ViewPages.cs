using Nookwright.Drawing;
using Nookwright.Flow;

namespace Nookwright.Paper;

/// <summary>The built-in drawn to scale: plan, front and both sides, a page each, with a ruler to check the print.</summary>
internal static class ViewPages
{
    private const double RulerGap = 4;

    private static readonly (string Title, Func<Workbook, double, double, Picture> View)[] Views =
    [
        ("Seen from the front", (book, width, height) => Elevation.Of(book, SeenFrom.Front, width, height)),
        ("Seen from the left", (book, width, height) => Elevation.Of(book, SeenFrom.Left, width, height)),
        ("Seen from the right", (book, width, height) => Elevation.Of(book, SeenFrom.Right, width, height)),
    ];

    /// <summary>The pages; none when nothing is designed yet.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, PaperFormat paper) =>
        book.BuiltIn.Pieces.Count == 0 ? [] : [.. Views.Select(view => Page(view.Title, view.View, book, paper))];

    private static PaperPage Page(
        string title,
        Func<Workbook, double, double, Picture> view,
        Workbook book,
        PaperFormat paper
    )
    {
        var flow = new PageFlow(paper, "Plan and elevations", title);
        flow.Draw(view(book, paper.BodyWidth, flow.Left - ScaleBar.Height - RulerGap));
        flow.Add(ScaleBar.At(paper.Left, paper.BodyBottom - ScaleBar.Height));
        return flow.Pages[0];
    }
}

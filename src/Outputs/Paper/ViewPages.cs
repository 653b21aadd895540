using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Paper;

/// <summary>The built-in drawn to scale: plan, front and both sides, a page each, with a ruler to check the print.</summary>
internal static class ViewPages
{
    private const double RulerGap = 4;

    private static readonly (
        string Title,
        Func<Workbook, bool> IsWide,
        Func<Workbook, double, double, Picture> View
    )[] Views =
    [
        ("Plan", book => Wide(book) > Deep(book), (book, width, height) => PlanView.Of(book, width, height)),
        (
            "Seen from the front",
            book => Wide(book) > High(book),
            (book, width, height) => Elevation.Of(book, SeenFrom.Front, width, height)
        ),
        (
            "Seen from the left",
            book => Deep(book) > High(book),
            (book, width, height) => Elevation.Of(book, SeenFrom.Left, width, height)
        ),
        (
            "Seen from the right",
            book => Deep(book) > High(book),
            (book, width, height) => Elevation.Of(book, SeenFrom.Right, width, height)
        ),
    ];

    /// <summary>The pages; none when nothing is designed yet.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, PaperFormat paper) =>
        book.BuiltIn.Pieces.Count == 0
            ? []
            : [.. Views.Select(view => Page(view.Title, view.View, book, Turned(paper, view.IsWide(book))))];

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

    // A wide view on paper that lies is drawn larger.
    private static PaperFormat Turned(PaperFormat paper, bool isWide) => isWide ? paper.Lying : paper;

    private static Length Wide(Workbook book) => Span(book, corner => corner.X);

    private static Length Deep(Workbook book) => Span(book, corner => corner.Y);

    private static Length High(Workbook book) => Span(book, corner => corner.Z);

    private static Length Span(Workbook book, Func<Point3, Length> along)
    {
        var pieces = book.BuiltIn.Pieces.SelectMany(piece => new[] { piece.Low, piece.High });
        var corners = pieces.Concat(book.Room.Floor).Concat(book.Room.Ceiling).Select(along).ToList();
        return corners.Max() - corners.Min();
    }
}

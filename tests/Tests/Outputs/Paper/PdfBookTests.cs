using Nookwright.Drawing;
using Nookwright.Paper;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Nookwright.Tests.Paper;

/// <summary>What is written is read again by a reader that shares no code with the writer.</summary>
public class PdfBookTests
{
    private static readonly Mark[] Ruler =
    [
        new Mark.Line(new(50, 100), new(150, 100), Pen.Cut),
        new Mark.Label("23 3\u20444 in", new(50, 90), 5),
        new Mark.Label("turned", new(30, 90), 5, Anchor.Middle, Turn: 90, Bold: true),
        new Mark.Path([new(20, 150), new(60, 150), new(60, 190)], true, Fill.Held, Pen.Outline),
        new Mark.Group("box-1", [new Mark.Circle(new(100, 170), 20, Fill.Hatch, Pen.Thin)]),
    ];

    [Fact]
    public void A_hundred_millimetres_are_283_46_points_on_paper()
    {
        using var document = Open(new Picture(215.9, 279.4, Ruler, "ruler"));
        var line = Assert.Single(document.GetPage(1).Paths, path => path.LineWidth is > 1.9 and < 2.1);
        var box = line.GetBoundingRectangle()!.Value;
        Assert.Equal(283.46, box.Width, 2);
    }

    [Fact]
    public void Letters_stand_where_the_picture_has_them()
    {
        using var document = Open(new Picture(210, 297, Ruler, "ruler"));
        var page = document.GetPage(1);
        var first = page.Letters.First(letter => letter.Value == "2");
        Assert.Equal(50 * 72 / 25.4, first.StartBaseLine.X, 1);
        Assert.Equal(page.Height - (90 * 72 / 25.4), first.StartBaseLine.Y, 1);
    }

    [Fact]
    public void A_fraction_is_set_small_with_its_numerator_raised_and_reads_as_a_fraction()
    {
        using var document = Open(new Picture(210, 297, Ruler, "ruler"));
        var letters = document.GetPage(1).Letters;
        var (over, under) = (
            letters.First(l => l.Value == "3" && l.PointSize < 12),
            letters.First(l => l.Value == "4")
        );
        Assert.True(over.StartBaseLine.Y > under.StartBaseLine.Y);
        Assert.Contains("23 3\u20444 in", string.Concat(letters.Select(l => l.Value)), StringComparison.Ordinal);
    }

    [Fact]
    public void The_measured_width_of_a_text_is_the_width_on_paper()
    {
        using var document = Open(new Picture(210, 297, Ruler, "ruler"));
        var letters = document.GetPage(1).Letters.Where(l => l.TextOrientation == TextOrientation.Horizontal).ToList();
        var width = letters.Max(l => l.EndBaseLine.X) - letters.Min(l => l.StartBaseLine.X);
        Assert.Equal(Nookwright.Lettering.TextMetrics.Width("23 3\u20444 in", 5) * 72 / 25.4, width, 1);
    }

    [Fact]
    public void Each_section_has_one_bookmark_and_the_file_has_a_title()
    {
        var empty = new Picture(210, 297, [], "empty");
        var book = new PdfBook(
            "My nook",
            new(2026, 1, 2),
            [new("Cover", empty), new("Parts", empty), new("Parts", empty)]
        );
        using var document = Open(book);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        Assert.Equal(["Cover", "Parts"], bookmarks.Roots.Select(root => root.Title));
        Assert.Equal("My nook", document.Information.Title);
    }

    [Fact]
    public void Many_books_can_be_written_at_the_same_time()
    {
        var picture = new Picture(210, 297, Ruler, "ruler");
        var pages = new int[8];
        Parallel.For(0, pages.Length, i => pages[i] = Open(picture).NumberOfPages);
        Assert.All(pages, count => Assert.Equal(1, count));
    }

    private static PdfDocument Open(Picture picture) => Open(new PdfBook("t", new(2026, 1, 2), [new("s", picture)]));

    private static PdfDocument Open(PdfBook book)
    {
        var stream = new MemoryStream();
        book.Write(stream);
        return PdfDocument.Open(stream.ToArray());
    }
}

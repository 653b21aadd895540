using System.Diagnostics;
using Nookwright.Drawing;
using Nookwright.Paper;
using Nookwright.Projects;
using Nookwright.Tests.Fixtures;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Nookwright.Tests.Paper;

/// <summary>The packet of a hand-made job, read again by a reader that shares no code with the writer.</summary>
public sealed class PacketTests
{
    private const double PointsPerMillimetre = 72 / 25.4;

    private static readonly PacketEdition Edition = PacketEdition.Of(new(2026, 11, 25), "the document's text");
    private static readonly byte[] OnLetter = Write(PaperSize.Letter);
    private static readonly byte[] OnA4 = Write(PaperSize.A4);

    public static TheoryData<PaperSize> Papers => [PaperSize.Letter, PaperSize.A4];

    /// <summary>ASME Y14.1: size A is 8.5 × 11 in. ISO 216: A4 is 210 × 297 mm. ISO 32000-1: a point is 1/72 in.</summary>
    [Theory]
    [InlineData(PaperSize.Letter, 612, 792)]
    [InlineData(PaperSize.A4, 595.28, 841.89)]
    public void Every_page_is_as_large_as_the_paper_standard_says(PaperSize size, double width, double height) =>
        Assert.All(
            Pages(size),
            page =>
            {
                var box = page.MediaBox.Bounds;
                Assert.Equal(width, Math.Min(box.Width, box.Height), 1);
                Assert.Equal(height, Math.Max(box.Width, box.Height), 1);
            }
        );

    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_page_says_job_revision_date_and_which_page_of_how_many_it_is(PaperSize size)
    {
        var pages = Pages(size);
        Assert.All(
            pages.Index(),
            page =>
            {
                var text = TextOf(page.Item);
                Assert.Contains("Bench under the stairs", text, StringComparison.Ordinal);
                Assert.Contains($"Revision {Edition.Revision} · 2026-11-25", text, StringComparison.Ordinal);
                Assert.Contains($"page {page.Index + 1} of {pages.Count}", text, StringComparison.Ordinal);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void Nothing_is_written_into_the_margins(PaperSize size)
    {
        const double Margin = 12 * PointsPerMillimetre;
        foreach (var page in Pages(size))
        {
            Assert.All(
                page.Letters,
                letter =>
                {
                    Assert.True(
                        letter.StartBaseLine.X >= Margin,
                        $"page {page.Number}: {letter.Value} in the left margin"
                    );
                    Assert.True(
                        letter.EndBaseLine.X <= page.Width - Margin,
                        $"page {page.Number}: {letter.Value} in the right margin"
                    );
                    Assert.True(
                        letter.StartBaseLine.Y >= Margin,
                        $"page {page.Number}: {letter.Value} in the lower margin"
                    );
                    Assert.True(
                        letter.StartBaseLine.Y <= page.Height - Margin,
                        $"page {page.Number}: {letter.Value} in the upper margin"
                    );
                }
            );
        }
    }

    /// <summary>100 mm are 283.46 points, 4 in are 288 (ISO 32000-1: a point is 1/72 in).</summary>
    [Theory]
    [MemberData(nameof(Papers))]
    public void Every_drawing_to_scale_has_a_ruler_that_is_true_on_paper(PaperSize size)
    {
        var drawings = Pages(size).Where(page => IsOf(page, "Plan and elevations")).ToList();
        Assert.NotEmpty(drawings);
        Assert.All(
            drawings,
            page =>
            {
                var widths = page.Paths.Select(path => path.GetBoundingRectangle()?.Width ?? 0).ToList();
                Assert.Contains(widths, width => Math.Abs(width - 283.46) < 0.02);
                Assert.Contains(widths, width => Math.Abs(width - 288) < 0.02);
            }
        );
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void No_two_letters_lie_on_each_other_on_any_card_or_list(PaperSize size)
    {
        var pages = Pages(size).Where(page => !IsDrawing(page) || IsOf(page, "Setting cards"));
        foreach (var page in pages)
            Assert.Empty(Overlaps(page));
    }

    [Theory]
    [MemberData(nameof(Papers))]
    public void No_letter_of_a_list_or_card_is_smaller_than_three_millimetres_but_for_the_figures_of_fractions(
        PaperSize size
    )
    {
        const double Smallest = 3 * PointsPerMillimetre;
        var lists = Pages(size).Where(page => !IsDrawing(page));
        var small = lists.SelectMany(page => page.Letters).Where(l => l.PointSize < Smallest - 0.01);
        Assert.All(small, letter => Assert.True(char.IsDigit(letter.Value[0]), letter.Value));
    }

    [Fact]
    public void The_contents_on_the_cover_name_the_page_each_section_starts_on()
    {
        using var document = PdfDocument.Open(OnLetter);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        var cover = TextOf(document.GetPage(1));
        var sections = bookmarks.GetNodes().OfType<UglyToad.PdfPig.Outline.DocumentBookmarkNode>().ToList();
        Assert.Contains(sections, s => s.Title == "Setting cards");
        Assert.All(
            sections.Where(s => s.PageNumber > 1),
            section => Assert.Contains($"{section.Title}{section.PageNumber}", cover, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Every_letter_is_in_the_part_list_and_on_a_card_or_among_the_held_parts()
    {
        var pages = Pages(PaperSize.Letter);
        var list = Words(pages, "Parts");
        var work = Words(pages, "Setting cards").Concat(Words(pages, "Held parts")).ToHashSet();
        Assert.All(HandMadeWorkbook.Letters, letter => Assert.Contains(letter, list));
        Assert.All(HandMadeWorkbook.Letters, letter => Assert.Contains(letter, work));
    }

    [Fact]
    public void The_distance_on_a_card_is_set_in_figures_at_least_sixteen_millimetres_high()
    {
        var cards = Pages(PaperSize.Letter).Where(page => IsOf(page, "Setting cards"));
        var figure = cards.First().Letters.First(l => l.Value == "5" && l.PointSize > 40);
        Assert.InRange(figure.BoundingBox.Height / PointsPerMillimetre, 16, 19);
    }

    private static string Unspaced(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    [Fact]
    public void Cards_say_what_to_dress_what_to_cut_what_comes_out_and_what_is_left()
    {
        var cards = string.Concat(Pages(PaperSize.Letter).Where(p => IsOf(p, "Setting cards")).Select(TextOf));
        Assert.Contains(
            "Dress the bottom edge of S1-C1 (96 × 15 7⁄8 in), blade 1⁄8 in from it, 1⁄4 in off in all",
            cards,
            StringComparison.Ordinal
        );
        Assert.Contains("S1-R1-0 → A × 2", cards, StringComparison.Ordinal);
        Assert.Contains(
            "First break down S1 as its page says. Take stack 1, 3 pieces; 6 cuts, in this order:",
            cards,
            StringComparison.Ordinal
        );
        Assert.Contains("Done, write on each: A × 4", cards, StringComparison.Ordinal);
        Assert.Contains("The sides of a box must be equally long, or it leans.", cards, StringComparison.Ordinal);
        // Where a line ends, its last space is not on the page.
        Assert.Contains("Left:S1-X1(351⁄2×151⁄2in,keepas1a).", Unspaced(cards), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_sheet_says_its_cuts_in_words_and_the_parts_it_holds()
    {
        var sheet = TextOf(Pages(PaperSize.Letter).First(page => IsOf(page, "Breakdown of the sheets")));
        Assert.Contains("Parts from this sheet: A × 4, B × 4", sheet, StringComparison.Ordinal);
        Assert.Contains(
            "S1: mark 15 7⁄8 in from the bottom edge, cut along the figure",
            sheet,
            StringComparison.Ordinal
        );
    }

    /// <summary>By hand: one sheet of birch at 78 and one of oak at 142 make 220.</summary>
    [Fact]
    public void The_shopping_list_counts_the_sheets_and_adds_up_their_prices()
    {
        var list = TextOf(Pages(PaperSize.Letter).Single(page => IsOf(page, "Shopping list")));
        Assert.Contains("White oak", list, StringComparison.Ordinal);
        Assert.Contains("Sheets together 220.00", list, StringComparison.Ordinal);
    }

    [Fact]
    public void A_held_part_is_listed_with_its_reading_and_how_long_it_is_left()
    {
        var held = TextOf(Pages(PaperSize.Letter).Single(page => IsOf(page, "Held parts")));
        Assert.Contains("run.width", held, StringComparison.Ordinal);
        Assert.Contains("50 × 17 in", held, StringComparison.Ordinal);
        Assert.Contains("over both outer sides", held, StringComparison.Ordinal);
    }

    [Fact]
    public void Safety_names_tipping_kickback_lifting_cords_and_what_is_not_checked()
    {
        var safety = string.Concat(Pages(PaperSize.Letter).Where(p => IsOf(p, "Safety")).Select(TextOf));
        foreach (var word in new[] { "Kickback", "riving knife", "55 lb", "Tipping", "400.12", "has not been checked" })
            Assert.Contains(word, safety, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_with_nothing_to_cut_still_has_a_cover_and_its_safety()
    {
        var whole = HandMadeWorkbook.Make();
        var empty = whole with { Plan = null, PartList = new([], [], [], []), Findings = [] };
        var sections = Packet.Pages(empty, PaperSize.A4, Edition).Select(page => page.Section).Distinct().ToList();
        Assert.Contains("Cover", sections);
        Assert.Contains("Safety", sections);
        Assert.DoesNotContain("Setting cards", sections);
    }

    [Fact]
    public void The_same_document_has_the_same_revision_and_another_has_another()
    {
        Assert.Equal(PacketEdition.Of(default, "a"), PacketEdition.Of(default, "a"));
        Assert.NotEqual(PacketEdition.Of(default, "a"), PacketEdition.Of(default, "b"));
        // FIPS 180-4's example: the SHA-256 of "abc" starts with ba7816bf.
        Assert.Equal("ba7816bf", PacketEdition.Of(default, "abc").Revision);
    }

    [Fact]
    public void By_itself_it_takes_the_jobs_own_paper_and_the_documents_revision()
    {
        var book = HandMadeWorkbook.Make();
        var stream = new MemoryStream();
        Packet.Write(book with { Project = book.Project with { Paper = PaperSize.A4 } }, new(2026, 11, 25), stream);
        using var document = PdfDocument.Open(stream.ToArray());
        Assert.Equal(841.89, document.GetPage(1).Height, 1);
        Assert.Equal("Bench under the stairs", document.Information.Title);
    }

    [Fact]
    public void Another_reader_finds_the_same_text()
    {
        Assert.SkipUnless(File.Exists("/usr/bin/pdftotext"), "pdftotext is not on this machine.");
        var path = Path.Combine(Path.GetTempPath(), $"packet-{Guid.NewGuid():N}.pdf");
        File.WriteAllBytes(path, OnA4);
        try
        {
            using var reader = Process.Start(
                new ProcessStartInfo("pdftotext", [path, "-"]) { RedirectStandardOutput = true }
            )!;
            var text = reader.StandardOutput.ReadToEnd();
            Assert.Contains("Bench under the stairs", text, StringComparison.Ordinal);
            Assert.Contains("15 1⁄2", text, StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public void The_check_for_letters_on_each_other_sees_one_word_printed_on_another()
    {
        Mark[] marks = [new Mark.Label("door", new(50, 50), 5), new Mark.Label("side", new(52, 51), 5)];
        var stream = new MemoryStream();
        new PdfBook("t", default, [new("s", new(210, 297, marks, "two words"))]).Write(stream);
        Assert.NotEmpty(Overlaps(PdfDocument.Open(stream.ToArray()).GetPage(1)));
    }

    private static byte[] Write(PaperSize size)
    {
        var stream = new MemoryStream();
        Packet.Write(HandMadeWorkbook.Make(), size, Edition, stream);
        return stream.ToArray();
    }

    private static IReadOnlyList<Page> Pages(PaperSize size) =>
        [.. PdfDocument.Open(size == PaperSize.A4 ? OnA4 : OnLetter).GetPages()];

    private static string TextOf(Page page) => string.Concat(page.Letters.Select(l => l.Value)).Replace('\u00a0', ' ');

    private static bool IsOf(Page page, string section) =>
        TextOf(page).Contains(section, StringComparison.Ordinal) && page.Number > 1;

    // Drawings have their own lettering.
    private static bool IsDrawing(Page page) => page.Number == 1 || DrawnSections.Any(section => IsOf(page, section));

    private static readonly string[] DrawnSections =
    [
        "Plan and elevations",
        "Parts drawn",
        "Breakdown of the sheets",
        "Setting cards",
    ];

    private static IEnumerable<string> Words(IEnumerable<Page> pages, string section) =>
        pages
            .Where(page => IsOf(page, section))
            .SelectMany(page => page.GetWords())
            .Select(word => word.Text.Trim(','));

    // Letters' boxes, a little smaller; spaces and a fraction's bar have no ink that matters.
    private static IEnumerable<string> Overlaps(Page page)
    {
        const double Touch = 0.5;
        var inked = page
            .Letters.Where(l => l.Value.Trim().Length > 0 && l.Value != "\u2044")
            .OrderBy(l => l.BoundingBox.Left);
        var beside = new List<Letter>();
        foreach (var letter in inked)
        {
            var box = letter.BoundingBox;
            beside.RemoveAll(other => other.BoundingBox.Right - Touch <= box.Left);
            foreach (var other in beside.Select(b => b.BoundingBox))
                if (other.Bottom < box.Top - Touch && box.Bottom < other.Top - Touch)
                    yield return $"page {page.Number}: {letter.Value} on another letter at {letter.StartBaseLine}";
            beside.Add(letter);
        }
    }
}

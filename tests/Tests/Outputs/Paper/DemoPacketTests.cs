using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Measure;
using Nookwright.Paper;
using Nookwright.Projects;
using Nookwright.Tests.House;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace Nookwright.Tests.Paper;

/// <summary>The packets of the demos, from document to paper.</summary>
public sealed class DemoPacketTests
{
    private static readonly Dictionary<string, Workbook> Books = [];

    public static TheoryData<string, PaperSize> Packets =>
        new()
        {
            { "window-nook", PaperSize.Letter },
            { "window-nook", PaperSize.A4 },
            { "shelf-wall", PaperSize.Letter },
            { "shelf-wall", PaperSize.A4 },
        };

    [Theory]
    [MemberData(nameof(Packets))]
    public void Every_letter_is_found_in_the_list_on_a_sheet_and_on_a_card_or_among_the_held(
        string demo,
        PaperSize size
    )
    {
        var book = BookOf(demo);
        var pages = Printed(book, size);
        var letters = book.PartList.Parts.Select(part => part.Letter).Distinct();
        var (list, sheets) = (Words(pages, "Parts"), Words(pages, "Breakdown of the sheets"));
        var work = Words(pages, "Setting cards").Union(Words(pages, "Held parts")).ToHashSet();
        Assert.All(
            letters,
            letter => Assert.True(list.Contains(letter) && sheets.Contains(letter) && work.Contains(letter), letter)
        );
    }

    [Theory]
    [MemberData(nameof(Packets))]
    public void Each_visit_has_a_card_and_each_sheet_a_page(string demo, PaperSize size)
    {
        var (book, text) = (BookOf(demo), string.Concat(Printed(BookOf(demo), size).Select(TextOf)));
        foreach (var visit in book.Plan!.Visits)
            Assert.Contains($"Setting {visit.Number} of {book.Plan.Visits.Count}", text, StringComparison.Ordinal);
        foreach (var sheet in book.Plan.Sheets)
            Assert.Contains($"Sheet {sheet.Number} of {book.Plan.Sheets.Count}", text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Packets))]
    public void Nothing_is_printed_off_the_paper(string demo, PaperSize size)
    {
        const double Edge = 10 * 72 / 25.4;
        foreach (var page in Printed(BookOf(demo), size))
        {
            Assert.All(page.Letters, l => Assert.InRange(l.StartBaseLine.X, Edge, page.Width - Edge));
            Assert.All(page.Letters, l => Assert.InRange(l.EndBaseLine.X, Edge, page.Width - Edge));
            Assert.All(page.Letters, l => Assert.InRange(l.StartBaseLine.Y, Edge, page.Height - Edge));
        }
    }

    [Theory]
    [InlineData(LengthUnit.Inches)]
    [InlineData(LengthUnit.Millimetres)]
    public void A_job_that_was_only_just_begun_prints_too(LengthUnit units)
    {
        var pages = Printed(Workbook.Of(new Project { Units = units }), PaperSize.A4);
        Assert.Contains("A job without a name", TextOf(pages[0]), StringComparison.Ordinal);
    }

    private static Workbook BookOf(string demo)
    {
        lock (Books)
        {
            if (!Books.TryGetValue(demo, out var book))
                Books[demo] = book = Workbook
                    .Of(JobFile.Read(Checkout.File("demo", $"{demo}.nook.json")).Value)
                    .WithPlan();
            return book;
        }
    }

    private static IReadOnlyList<Page> Printed(Workbook book, PaperSize size)
    {
        var stream = new MemoryStream();
        Packet.Write(book, size, PacketEdition.Of(new(2026, 11, 25), "demo"), stream);
        return [.. PdfDocument.Open(stream.ToArray()).GetPages()];
    }

    private static HashSet<string> Words(IEnumerable<Page> pages, string section) =>
        [
            .. pages
                .Where(page => page.Number > 1 && TextOf(page).Contains(section, StringComparison.Ordinal))
                .SelectMany(page => page.GetWords())
                .SelectMany(word => word.Text.Split('\u00a0', ',', '.', ';')),
        ];

    private static string TextOf(Page page) => string.Concat(page.Letters.Select(l => l.Value)).Replace('\u00a0', ' ');
}

using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Projects;

namespace Nookwright.Paper;

/// <summary>All that is printed for a job: cover, findings, views, parts, shopping, safety, the plan in short, breakdown, setting cards, what is held.</summary>
/// <remarks>A pure function of the workbook and the edition: no clock, nothing measured anew.</remarks>
public static class Packet
{
    /// <summary>Writes the packet as PDF on the job's own paper, its revision that of the job's document as saved.</summary>
    /// <param name="book">The job with all that follows from it.</param>
    /// <param name="date">The day it is made.</param>
    /// <param name="stream">Where to; it stays open.</param>
    public static void Write(Workbook book, DateOnly date, Stream stream) =>
        Write(book, book.Project.Paper, PacketEdition.Of(date, JobText.Write(book.Project)), stream);

    /// <summary>Writes the packet as PDF; the stream stays open.</summary>
    /// <param name="book">The job with all that follows from it.</param>
    /// <param name="size">The paper.</param>
    /// <param name="edition">Date and revision, on every page.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(Workbook book, PaperSize size, PacketEdition edition, Stream stream) =>
        new PdfBook(CoverPage.Name(book), edition.Date, Pages(book, size, edition)).Write(stream);

    /// <summary>The packet's pages, in order.</summary>
    public static IReadOnlyList<PaperPage> Pages(Workbook book, PaperSize size, PacketEdition edition)
    {
        var (paper, words) = (PaperFormat.Of(size), new JobWords(book));
        IReadOnlyList<PaperPage> pages =
        [
            .. FindingPages.Of(book, paper),
            .. ViewPages.Of(book, paper),
            .. PartPages.Of(book, words, paper),
            .. PartDrawings.Of(book, paper),
            .. ShoppingPages.Of(book, words, paper),
            .. SafetyPages.Of(paper),
            .. PlanPages.Of(book, words, paper),
            .. SheetPages.Of(book, words, paper),
            .. CardPages.Of(book, words, paper),
            .. HeldPage.Of(book, words, paper),
            .. GrainPages.Of(book, words, paper),
        ];
        var cover = CoverPage.Of(book, edition, Contents(pages), paper);
        var furniture = new PageFurniture(CoverPage.Name(book), edition, pages.Count + 1);
        return [.. pages.Prepend(cover).Select((page, i) => furniture.On(page, i + 1))];
    }

    // Page 1 is the cover.
    private static IReadOnlyList<(string Section, int Page)> Contents(IReadOnlyList<PaperPage> pages) =>
        [
            .. pages
                .Select((page, i) => (page.Section, Page: i + 2))
                .GroupBy(entry => entry.Section)
                .Select(section => section.First()),
        ];
}

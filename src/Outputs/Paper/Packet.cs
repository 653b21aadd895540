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
    /// <param name="round">That round alone, see <see cref="Pages"/>; null for all.</param>
    public static void Write(Workbook book, PaperSize size, PacketEdition edition, Stream stream, int? round = null) =>
        new PdfBook(CoverPage.Name(book), edition.Date, Pages(book, size, edition, round)).Write(stream);

    /// <summary>The packet's pages, in order.</summary>
    /// <param name="book">The job with all that follows from it.</param>
    /// <param name="size">The paper.</param>
    /// <param name="edition">Date and revision, on every page.</param>
    /// <param name="round">
    /// Only what is needed to cut that round, for whoever has the packet of the rounds before; null for the whole packet.
    /// </param>
    public static IReadOnlyList<PaperPage> Pages(
        Workbook book,
        PaperSize size,
        PacketEdition edition,
        int? round = null
    )
    {
        var (paper, words) = (PaperFormat.Of(size), new JobWords(book));
        var rounds = RoundOnPaper.Of(book).Where(r => round is null || r.Number == round).ToList();
        IReadOnlyList<PaperPage> pages =
        [
            .. round is null ? Before(book, words, paper) : [],
            .. rounds.SelectMany(r => r.Pages(paper)),
            .. HeldPage.Of(book, words, paper),
            .. round is null ? GrainPages.Of(book, words, paper) : [],
        ];
        var cover = CoverPage.Of(book, edition, Contents(pages), paper);
        var furniture = new PageFurniture(CoverPage.Name(book), edition, pages.Count + 1);
        return [.. pages.Prepend(cover).Select((page, i) => furniture.On(page, i + 1))];
    }

    private static IEnumerable<PaperPage> Before(Workbook book, JobWords words, PaperFormat paper) =>
        [
            .. FindingPages.Of(book, paper),
            .. ViewPages.Of(book, paper),
            .. PartPages.Of(book, words, paper),
            .. PartDrawings.Of(book, paper),
            .. ShoppingPages.Of(book, words, paper),
            .. SafetyPages.Of(paper),
        ];

    // Page 1 is the cover.
    private static IReadOnlyList<(string Section, int Page)> Contents(IReadOnlyList<PaperPage> pages) =>
        [
            .. pages
                .Select((page, i) => (page.Section, Page: i + 2))
                .GroupBy(entry => entry.Section)
                .Select(section => section.First()),
        ];
}

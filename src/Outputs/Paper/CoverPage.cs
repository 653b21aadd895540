using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>The cover: what job it is, how it looks, how much there is to do, what waits, and where to find what.</summary>
internal static class CoverPage
{
    private const double TitleSize = 9;
    private const double HighestView = 108;
    private const double LowestView = 50;
    private const double EntryHeight = TypeSize.Body * 1.55;

    // Names and lists without end must not push the contents off the page.
    private const int MostLines = 3;

    /// <summary>The cover, one page.</summary>
    /// <param name="book">The job.</param>
    /// <param name="edition">Date and revision.</param>
    /// <param name="contents">Sections with their first pages.</param>
    /// <param name="paper">The paper.</param>
    public static PaperPage Of(
        Workbook book,
        PacketEdition edition,
        IReadOnlyList<(string Section, int Page)> contents,
        PaperFormat paper
    )
    {
        var flow = new PageFlow(paper, "Cover", "");
        flow.Space(2);
        flow.Text(Shortened(Name(book), paper, TitleSize, bold: true), TitleSize, bold: true);
        flow.Text($"Packet of {edition.Date:yyyy-MM-dd}, revision {edition.Revision}", TypeSize.Body);
        flow.Space(4);
        var waits = Shortened(Waits(book), paper, TypeSize.Body, bold: false);
        var height = Math.Clamp(flow.Left - HeightBelow(waits, contents.Count), LowestView, HighestView);
        if (book.BuiltIn.Pieces.Count > 0 || book.Room.Walls.Count > 0)
            flow.Draw(RoomView.Of(book, paper.BodyWidth, height));
        flow.Space(4);
        flow.Text(Counts(book), TypeSize.Head, bold: true);
        flow.Space(1);
        flow.Text(waits);
        flow.Text(ToMend(book), bold: true);
        flow.Head("In this packet");
        foreach (var (section, page) in contents)
            DrawEntry(flow, section, page);
        return flow.Pages[0];
    }

    // All below the view, with its gaps and heads.
    private static double HeightBelow(string waits, int entries)
    {
        const double HeadsAndGaps = 44;
        return HeadsAndGaps + ((waits.Count('\n') + 1) * TypeSize.Body * TypeSize.Leading) + (entries * EntryHeight);
    }

    private static string Shortened(string text, PaperFormat paper, double size, bool bold)
    {
        var lines = TextMetrics.Lines(text, paper.BodyWidth - (2 * size), size, bold);
        return lines.Count <= MostLines ? string.Join('\n', lines) : $"{string.Join('\n', lines.Take(MostLines))} …";
    }

    /// <summary>The job's name, or what stands for it.</summary>
    public static string Name(Workbook book) =>
        book.Project.Name.Length > 0 ? book.Project.Name : "A job without a name";

    private static string Counts(Workbook book)
    {
        var parts = JobWords.Count(book.PartList.Parts.Count, "part");
        return book.Plan is { } plan
            ? $"{parts} · {JobWords.Count(plan.Sheets.Count, "sheet")} · {JobWords.Count(plan.Settings, "saw setting")} · {JobWords.Count(plan.Visits.Count, "visit")}"
            : $"{parts}; no cutting plan yet";
    }

    private static string Waits(Workbook book)
    {
        var held = book.PartList.Parts.Count(p => p.IsHeld);
        if (held == 0)
            return "Nothing is held: every part is cut to its final size.";
        var readings = string.Join(", ", HeldPage.Awaited(book));
        return $"{JobWords.Count(held, "part")} held long until read: {readings}.";
    }

    private static string ToMend(Workbook book)
    {
        var count = book.Findings.Count(f => f.Severity == Trouble.Severity.MustMend);
        return count == 0 ? "" : $"{JobWords.Count(count, "finding")} to be mended before you cut: see Findings.";
    }

    private static void DrawEntry(PageFlow flow, string section, int page)
    {
        const double Size = TypeSize.Body;
        var (left, right, baseline) = (flow.Paper.Left, flow.Paper.Right, flow.Y + Size);
        flow.Add(
            new Mark.Label(section, new(left, baseline), Size),
            new Mark.Label($"{page}", new(right, baseline), Size, Anchor.End),
            Shapes.Rule(left, right, baseline + 1.3, Pen.Dimension)
        );
        flow.Space(EntryHeight);
    }
}

using Nookwright.Drawing;
using Nookwright.Flow;

namespace Nookwright.Paper;

/// <summary>The setting cards: two a page where they fit, each in its own frame, to be cut apart and hung at the saw.</summary>
internal static class CardPages
{
    private const double Padding = 5;
    private const double Gap = 6;
    private const double LowestPicture = 27;
    private const double HighestPicture = 62;

    /// <summary>One card per visit, in order; a card longer than a page goes on with its distance repeated.</summary>
    /// <param name="book">The job, its plan that of one round.</param>
    /// <param name="words">The job's words.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="section">What these pages are called among the packet's.</param>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper, string section)
    {
        if (book.Plan is not { Visits.Count: > 0 } plan)
            return [];
        var flow = new PageFlow(paper, section, "");
        foreach (var visit in plan.Visits)
            Draw(flow, new(visit, book, words, paper.Left + Padding, paper.BodyWidth - (2 * Padding)));
        return flow.Pages;
    }

    private static void Draw(PageFlow flow, SettingCard card)
    {
        var rest = new Queue<CardBlock>(card.Body());
        for (var goesOn = false; rest.Count > 0; goesOn = true)
        {
            var bands = Fill(card.Top(goesOn), rest, flow.Whole - (2 * Padding));
            DrawFrame(flow, rest.Count > 0 ? bands : [.. bands, .. Picture(flow, card, bands)]);
        }
    }

    // A picture where a card has room for it: what is free of half a page, or of a whole page for a longer card.
    private static IEnumerable<CardBlock> Picture(PageFlow flow, SettingCard card, IReadOnlyList<CardBlock> bands)
    {
        var filled = bands.Sum(b => b.Height) + (2 * Padding);
        var free = (filled <= Half(flow) ? Half(flow) : flow.Whole) - filled;
        if (free >= LowestPicture)
            yield return card.Picture(Math.Min(free, HighestPicture));
    }

    // As many bands as a page holds.
    private static List<CardBlock> Fill(IReadOnlyList<CardBlock> top, Queue<CardBlock> rest, double room)
    {
        var bands = new List<CardBlock>([.. top, rest.Dequeue()]);
        while (rest.TryPeek(out var next) && bands.Sum(b => b.Height) + next.Height <= room)
            bands.Add(rest.Dequeue());
        return bands;
    }

    private static double Half(PageFlow flow) => Math.Floor((flow.Whole - Gap) / 2);

    private static void DrawFrame(PageFlow flow, IReadOnlyList<CardBlock> bands)
    {
        var height = Math.Max(Half(flow), bands.Sum(b => b.Height) + (2 * Padding));
        flow.Need(height);
        flow.Add(Shapes.Box(flow.Paper.Left, flow.Y, flow.Paper.BodyWidth, height, Pen.Outline));
        var y = flow.Y + Padding;
        foreach (var band in bands)
        {
            flow.Add(band.Draw(y));
            y += band.Height;
        }
        flow.Space(height + Gap);
    }
}

using Nookwright.Drawing;
using Nookwright.Flow;

namespace Nookwright.Paper;

/// <summary>The setting cards: two a page where they fit, each in its own frame, to be cut apart and hung at the saw.</summary>
internal static class CardPages
{
    private const double Padding = 5;
    private const double Gap = 6;

    /// <summary>One card per visit, in order; a card longer than a page goes on with its distance repeated.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper)
    {
        if (book.Plan is not { Visits.Count: > 0 } plan)
            return [];
        var flow = new PageFlow(paper, "Setting cards", "");
        foreach (var visit in plan.Visits)
            Draw(flow, new(visit, book, words, paper.Left + Padding, paper.BodyWidth - (2 * Padding)));
        return flow.Pages;
    }

    private static void Draw(PageFlow flow, SettingCard card)
    {
        var rest = new Queue<CardBlock>(card.Body());
        for (var goesOn = false; rest.Count > 0; goesOn = true)
            DrawFrame(flow, Fill(card.Top(goesOn), rest, flow.Whole - (2 * Padding)));
    }

    // As many bands as a page holds.
    private static List<CardBlock> Fill(IReadOnlyList<CardBlock> top, Queue<CardBlock> rest, double room)
    {
        var bands = new List<CardBlock>([.. top, rest.Dequeue()]);
        while (rest.TryPeek(out var next) && bands.Sum(b => b.Height) + next.Height <= room)
            bands.Add(rest.Dequeue());
        return bands;
    }

    private static void DrawFrame(PageFlow flow, IReadOnlyList<CardBlock> bands)
    {
        var half = Math.Floor((flow.Whole - Gap) / 2);
        var height = Math.Max(half, bands.Sum(b => b.Height) + (2 * Padding));
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

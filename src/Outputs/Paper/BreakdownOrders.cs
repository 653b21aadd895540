using Nookwright.Cutting;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>Track-saw cuts as a list to tick off, in their order.</summary>
/// <param name="Orders">Each cut's number and what to do.</param>
internal sealed record BreakdownOrders(IReadOnlyList<(int Number, string Order)> Orders)
{
    private const double Size = TypeSize.Table;
    private const double Indent = 16;
    private const double BelowItem = 1.2;

    private const string How =
        "Mark the distance from the edge named and lay the track so that the blade runs beyond the mark. A pencil line is true "
        + "enough: every edge that is measured from at a setting is dressed or cut true before.";

    /// <summary>The orders of some cuts.</summary>
    public static BreakdownOrders Of(IEnumerable<SawCut> cuts, JobWords words)
    {
        var say = new CutWords(words);
        return new([.. cuts.Select(cut => (cut.Number, say.Breakdown(cut)))]);
    }

    /// <summary>True when there is nothing to do.</summary>
    public bool IsEmpty => Orders.Count == 0;

    /// <summary>How high the list is on a paper.</summary>
    public double HeightOn(PaperFormat paper)
    {
        if (IsEmpty)
            return 0;
        const double Head = (TypeSize.Head * TypeSize.Leading) + 3.5;
        const double Leading = Size * TypeSize.Leading;
        var how = TextMetrics.Lines(How, paper.BodyWidth, Size).Count * Leading;
        var lines = Orders.Select(o => TextMetrics.Lines(o.Order, paper.BodyWidth - Indent, Size).Count);
        return Head + how + BelowItem + lines.Sum(count => (count * Leading) + BelowItem);
    }

    /// <summary>Draws the list, with how to go about it.</summary>
    public void Draw(PageFlow flow)
    {
        flow.Head("Track-saw cuts, in order");
        flow.Text(How, Size);
        flow.Space(BelowItem);
        DrawItems(flow);
    }

    /// <summary>Draws the cuts alone.</summary>
    public void DrawItems(PageFlow flow)
    {
        foreach (var (number, order) in Orders)
        {
            flow.Need(Size * TypeSize.Leading * 2);
            flow.Add(Shapes.TickBox(flow.Paper.Left + 9, flow.Y + 0.2, 4));
            flow.Item($"{number}", order, Size, Indent);
        }
    }
}

using Nookwright.Design;
using Nookwright.Shop;

namespace Nookwright.Paper;

/// <summary>What is on a panel's edges, and which stay long, in words.</summary>
internal static class EdgeWords
{
    /// <summary>One phrase per edging or length left long; none for four bare edges cut to size.</summary>
    public static IEnumerable<string> Of(Panel panel, IReadOnlyList<Edging> edgings, JobWords words)
    {
        var edges = Edges(panel).ToList();
        foreach (var edged in edges.Where(e => e.Edge.Edging is not null).GroupBy(e => e.Edge.Edging))
            yield return $"{Name(edgings, edged.Key!)} on {Which(edged.Select(e => e.Side))}";
        foreach (var longer in edges.Where(e => e.Edge.LongBy is not null).GroupBy(e => e.Edge.LongBy!.Length))
            yield return $"long by {words.Size(longer.Key)} at {Which(longer.Select(e => e.Side))}";
    }

    private static IEnumerable<(PanelEdge Edge, string Side)> Edges(Panel panel)
    {
        var isLong = panel.Length.Length >= panel.Width.Length;
        var (ends, sides) = isLong ? ("short edge", "long edge") : ("long edge", "short edge");
        (PanelEdge? Edge, string Side)[] all =
        [
            (panel.Edges.Start, ends),
            (panel.Edges.End, ends),
            (panel.Edges.Low, sides),
            (panel.Edges.High, sides),
            (panel.Edges.Inner, "inside corner"),
        ];
        return all.Where(e => e.Edge is not null).Select(e => (e.Edge!, e.Side));
    }

    private static string Which(IEnumerable<string> sides)
    {
        var all = sides.ToList();
        return all.Count == 4 && all.All(side => side.EndsWith("edge", StringComparison.Ordinal))
            ? "all edges"
            : string.Join(" and ", all.GroupBy(s => s).Select(g => JobWords.Count(g.Count(), g.Key)));
    }

    private static string Name(IReadOnlyList<Edging> edgings, string id) =>
        edgings.FirstOrDefault(e => e.Id == id) is { Name.Length: > 0 } edging ? edging.Name : id;
}

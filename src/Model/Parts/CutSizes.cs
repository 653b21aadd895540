using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Parts;

/// <summary>From a panel's finished size to what the saw sets: less the edging that counts, plus what stays long.</summary>
internal static class CutSizes
{
    public static Traced Length(Panel panel) =>
        Cut(panel.Length, $"{panel.Id}.cut-length", panel.Edges.Start, panel.Edges.End);

    public static Traced Width(Panel panel) =>
        Cut(panel.Width, $"{panel.Id}.cut-width", panel.Edges.Low, panel.Edges.High);

    public static Traced Of(Part part, MatchedSide side) => side == MatchedSide.Length ? part.CutLength : part.CutWidth;

    private static Traced Cut(Traced finished, string name, params IReadOnlyList<PanelEdge?> edges)
    {
        var cut = edges.OfType<PanelEdge>().Aggregate(finished, Cut);
        return ReferenceEquals(cut, finished) ? finished : cut.Called(name);
    }

    private static Traced Cut(Traced size, PanelEdge edge)
    {
        if (edge.Counted.IsPositive)
            size -= Traced.ByRule(edge.Counted, $"{edge.Edging} on an edge is part of the finished size");
        return edge.LongBy is { } longBy ? size + longBy : size;
    }
}

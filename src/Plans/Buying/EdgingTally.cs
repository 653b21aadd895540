using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Buying;

/// <summary>Adds up the edges that carry edging.</summary>
internal static class EdgingTally
{
    /// <summary>Trimmed off and spoilt: common practice, no source.</summary>
    private const int PercentMore = 10;

    public static IEnumerable<EdgingLine> Lines(PartList parts, Project project)
    {
        var edges = parts.Parts.SelectMany(EdgesOf).ToLookup(edge => edge.Edging);
        var named = project.Shop.Edgings.DistinctBy(edging => edging.Id).ToDictionary(e => e.Id);
        var inOrder = named.Keys.Concat(edges.Select(group => group.Key)).Distinct();
        return inOrder
            .Where(id => edges[id].Any())
            .Select(id => Line(id, named.GetValueOrDefault(id), [.. edges[id]], project.Units));
    }

    private static EdgingLine Line(string id, Edging? edging, List<Edge> edges, LengthUnit unit)
    {
        var name = edging is { Name.Length: > 0 } ? edging.Name : id;
        var onParts = edges.Aggregate(Length.Zero, (sum, edge) => sum + edge.Length);
        var parts = edges.Select(edge => edge.Part).Distinct().Count();
        var why =
            $"{Count(edges.Count, "edge")} of {Count(parts, "part")} {(edges.Count == 1 ? "comes" : "come")} to {LengthText.Write(onParts, unit)}; {PercentMore} % more for trimming (common practice, no source).";
        return new(id, name, onParts, WithTrimming(onParts, unit), why);
    }

    /// <summary>Rounded up to whole inches or centimetres: nobody buys less.</summary>
    private static Length WithTrimming(Length onParts, LengthUnit unit)
    {
        var step = unit == LengthUnit.Inches ? Length.Inch : Length.FromMillimetres(10);
        var withTrimming = new Length((long)decimal.Ceiling(onParts.Nanometres * (100m + PercentMore) / 100));
        return withTrimming.CeilingTo(step);
    }

    /// <summary>An edge is as long as the part when the edging goes on: what stays long carries it too.</summary>
    private static IEnumerable<Edge> EdgesOf(Part part)
    {
        var (panel, edges) = (part.Panel, part.Panel.Edges);
        var along = Length.Max(panel.Length.Length, part.CutLength.Length);
        var across = Length.Max(panel.Width.Length, part.CutWidth.Length);
        var notch = part.Notch;
        Length Left(Length whole, Length? cut, bool touches) => touches && cut is { } gone ? whole - gone : whole;
        var all = new (PanelEdge? Edge, Length Length)[]
        {
            (edges.Start, Left(across, notch?.Width, notch is { AtEnd: false })),
            (edges.End, Left(across, notch?.Width, notch is { AtEnd: true })),
            (edges.Low, Left(along, notch?.Length, notch is { AtHigh: false })),
            (edges.High, Left(along, notch?.Length, notch is { AtHigh: true })),
            (edges.Inner, notch?.Length ?? Length.Zero),
            (edges.Inner, notch?.Width ?? Length.Zero),
        };
        return all.Where(e => e.Edge?.Edging is not null).Select(e => new Edge(e.Edge!.Edging!, part.Id, e.Length));
    }

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    private readonly record struct Edge(string Edging, string Part, Length Length);
}

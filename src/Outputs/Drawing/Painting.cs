namespace Nookwright.Drawing;

/// <summary>Paints faces onto a picture in an order already found, grouped by what they belong to.</summary>
internal sealed class Painting(Sight sight, OnPaper onPaper)
{
    /// <summary>The marks, from the farthest face to the nearest.</summary>
    /// <param name="facets">In painting order.</param>
    /// <param name="captionOf">What a thing is, by its id.</param>
    public IReadOnlyList<Mark> Of(IReadOnlyList<Facet> facets, Func<string, string?> captionOf)
    {
        var groups = new List<Mark>();
        for (var first = 0; first < facets.Count; )
        {
            var after = first;
            while (after < facets.Count && facets[after].About == facets[first].About)
                after++;
            var marks = Enumerable.Range(first, after - first).SelectMany(i => Marks(facets[i])).ToArray();
            groups.Add(new Mark.Group(facets[first].About, marks, captionOf(facets[first].About)));
            first = after;
        }
        return groups;
    }

    /// <summary>Where a point of the room lies on the picture.</summary>
    public Spot At(Vertex point) => onPaper.At(sight.See(point));

    /// <summary>Where a spot as seen at full size lies on the picture.</summary>
    public Spot AtSeen(Spot seen) => onPaper.At(seen);

    /// <summary>What is seen, at full size, at a spot of the picture.</summary>
    public Spot SeenAt(Spot spot) => onPaper.SeenAt(spot);

    private IEnumerable<Mark> Marks(Facet facet)
    {
        var rings = facet.Outlines.Select(r => r.Select(At).ToArray()).ToArray();
        if (IsWhole(facet))
            return [new Mark.Path(rings[0], true, facet.Look.Fill, facet.Look.Pen)];
        var filled = new Mark.Path(WithHoles(rings), true, facet.Look.Fill, Pen.None);
        var edges = rings.Length > 1 ? rings.Select(Outline) : facet.Edges.Select(Line);
        return edges.Prepend(filled);

        Mark Outline(Spot[] ring) => new Mark.Path(ring, true, Fill.None, facet.Look.Pen);
        Mark Line((Vertex From, Vertex To) edge) => new Mark.Line(At(edge.From), At(edge.To), facet.Look.Pen);
    }

    /// <summary>True for a face that was not cut and whose every edge is seen.</summary>
    private static bool IsWhole(Facet facet) =>
        facet.Outlines.Count == 1 && facet.Edges.Count() == facet.Outlines[0].Count;

    /// <summary>One line round an outline and its holes: in to each hole and back out by the same way, from the last corner.</summary>
    private static Spot[] WithHoles(Spot[][] rings)
    {
        var outline = rings[0];
        var ways = rings.Skip(1).SelectMany(hole => hole.Append(hole[0]).Append(outline[^1]));
        return [.. outline, .. ways];
    }
}

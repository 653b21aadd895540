namespace Nookwright.Drawing;

/// <summary>Puts faces in the order a painter paints them, so that nearer ones cover what is behind them.</summary>
/// <remarks>
/// Two faces that are seen one over the other are compared where they overlap: the one that is nearer there is painted
/// later; of two in one plane the later given is. Faces that need no cutting are painted whole. Where faces wind round each other, or go through
/// each other, so that no order is right, those few are cut along each other's planes by binary space partition
/// (Fuchs, Kedem and Naylor 1980).
/// </remarks>
internal static class PaintingOrder
{
    /// <summary>Faces that touch to within this many millimetres are taken to touch: a fiftieth of the thinnest line at full size.</summary>
    public const double Touching = 0.01;

    /// <summary>The faces, cut where they have to be, from the farthest to the nearest.</summary>
    /// <param name="facets">Faces that look at the eye.</param>
    /// <param name="sight">Where the eye is.</param>
    public static IReadOnlyList<Facet> Of(IReadOnlyList<Facet> facets, Sight sight)
    {
        var before = Before(facets, sight);
        var order = new List<Facet>(facets.Count);
        foreach (var knot in Knots.InOrder(before))
            if (knot.Count == 1)
                order.Add(facets[knot[0]]);
            else
                order.AddRange(SpaceCuts.InPaintingOrder([.. knot.Order().Select(i => facets[i])]));
        return order;
    }

    /// <summary>For each face, those that are painted before it because it covers some of them.</summary>
    private static List<int>[] Before(IReadOnlyList<Facet> facets, Sight sight)
    {
        var seen = facets.Select(f => new SeenFacet(f, sight)).ToArray();
        var before = seen.Select(_ => new List<int>()).ToArray();
        for (var i = 0; i < seen.Length; i++)
        for (var j = i + 1; j < seen.Length; j++)
        {
            var cover = seen[i].Compare(seen[j]);
            if (cover is Cover.Over or Cover.Through)
                before[i].Add(j);
            if (cover is Cover.Under or Cover.Through)
                before[j].Add(i);
        }
        return before;
    }
}

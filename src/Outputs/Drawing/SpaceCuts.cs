namespace Nookwright.Drawing;

/// <summary>Cuts faces along each other's planes until an order of painting is right everywhere.</summary>
/// <remarks>
/// Binary space partition (Fuchs, Kedem and Naylor 1980). All faces look at the eye, so the eye is always in front of a
/// face's plane: what lies behind it is painted first, then what lies in it, then what lies in front.
/// </remarks>
internal static class SpaceCuts
{
    /// <summary>How many planes are tried for the one that cuts fewest faces.</summary>
    private const int Tries = 12;

    /// <summary>The faces in convex fragments, from the farthest to the nearest.</summary>
    public static IEnumerable<Facet> InPaintingOrder(IReadOnlyList<Facet> facets) =>
        Sorted([.. facets.SelectMany(f => f.Pieces.Select(p => new Fragment(f, p)))])
            .Select(f => f.Of with { Outlines = [f.Piece.Corners], Pieces = [f.Piece] });

    private static IEnumerable<Fragment> Sorted(List<Fragment> fragments)
    {
        if (fragments.Count <= 1)
            return fragments;
        var chosen = BestPlane(fragments);
        var plane = CuttingPlane.Of(chosen);
        var (behind, within, before) = (new List<Fragment>(), new List<Fragment> { chosen }, new List<Fragment>());
        foreach (var fragment in fragments)
            if (!ReferenceEquals(fragment.Piece, chosen.Piece))
                plane.Sort(fragment, behind, within, before);
        return Sorted(behind).Concat(within).Concat(Sorted(before));
    }

    private static Fragment BestPlane(List<Fragment> fragments)
    {
        var step = Math.Max(1, fragments.Count / Tries);
        return Enumerable
            .Range(0, (fragments.Count + step - 1) / step)
            .Select(i => fragments[i * step])
            .MinBy(f => fragments.Count(CuttingPlane.Of(f).Cuts));
    }
}

/// <summary>A convex piece of a face.</summary>
internal readonly record struct Fragment(Facet Of, ConvexPiece Piece);

/// <summary>The plane of a face.</summary>
internal readonly record struct CuttingPlane(Vertex Normal, double Offset)
{
    public static CuttingPlane Of(Fragment fragment) =>
        new(fragment.Of.Normal, fragment.Of.Normal.Dot(fragment.Piece.Corners[0]));

    public bool Cuts(Fragment fragment)
    {
        var (least, most) = Reach(fragment);
        return least < -PaintingOrder.Touching && most > PaintingOrder.Touching;
    }

    public void Sort(Fragment fragment, List<Fragment> behind, List<Fragment> within, List<Fragment> before)
    {
        var (least, most) = Reach(fragment);
        if (least >= -PaintingOrder.Touching && most <= PaintingOrder.Touching)
            within.Add(fragment);
        else if (most <= PaintingOrder.Touching)
            behind.Add(fragment);
        else if (least >= -PaintingOrder.Touching)
            before.Add(fragment);
        else
        {
            behind.Add(Side(fragment, -1));
            before.Add(Side(fragment, 1));
        }
    }

    private (double Least, double Most) Reach(Fragment fragment)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var corner in fragment.Piece.Corners)
        {
            var height = Normal.Dot(corner) - Offset;
            (least, most) = (Math.Min(least, height), Math.Max(most, height));
        }
        return (least, most);
    }

    /// <summary>What of a fragment is on one side; the new line is not an edge a person sees.</summary>
    private Fragment Side(Fragment fragment, int sign)
    {
        var (corners, edges) = (new List<Vertex>(), new List<bool>());
        var old = fragment.Piece;
        for (var i = 0; i < old.Corners.Length; i++)
        {
            var (here, next) = (old.Corners[i], old.Corners[(i + 1) % old.Corners.Length]);
            var (a, b) = (sign * (Normal.Dot(here) - Offset), sign * (Normal.Dot(next) - Offset));
            if (a >= 0)
            {
                corners.Add(here);
                edges.Add(old.IsEdge[i] && (a > 0 || b >= 0));
            }
            if ((a > 0 && b < 0) || (a < 0 && b > 0))
            {
                corners.Add(here + ((next - here) * (a / (a - b))));
                edges.Add(a < 0 && old.IsEdge[i]);
            }
        }
        return fragment with { Piece = new([.. corners], [.. edges]) };
    }
}

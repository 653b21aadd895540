namespace Nookwright.Drawing;

/// <summary>Tells what is seen at a spot of a painted view.</summary>
/// <param name="painted">Faces in painting order.</param>
/// <param name="sight">Where they are seen from.</param>
internal sealed class Visible(IReadOnlyList<Facet> painted, Sight sight)
{
    /// <summary>The id of what is nearest at a spot, as seen at full size, or null where nothing is.</summary>
    public string? At(Spot seen)
    {
        for (var i = painted.Count - 1; i >= 0; i--)
            if (Covers(painted[i], seen))
                return painted[i].About;
        return null;
    }

    /// <summary>The id of what is seen where a point of the room would be.</summary>
    public string? At(Vertex point) => At(sight.See(point));

    private bool Covers(Facet facet, Spot spot) => facet.Pieces.Any(p => Covers(p, spot));

    private bool Covers(ConvexPiece piece, Spot spot)
    {
        var from = sight.See(piece.Corners[^1]);
        foreach (var corner in piece.Corners)
        {
            var to = sight.See(corner);
            // Anticlockwise as seen, and y runs down: the inside is where this product is not positive.
            if (((to.X - from.X) * (spot.Y - from.Y)) - ((to.Y - from.Y) * (spot.X - from.X)) > 0)
                return false;
            from = to;
        }
        return true;
    }
}

namespace Nookwright.Drawing;

/// <summary>A flat face that looks at the eye, or a fragment of one, as it is painted.</summary>
/// <param name="About">The id of what it belongs to.</param>
/// <param name="Normal">Out of the face, one millimetre long.</param>
/// <param name="Outlines">What is filled: the outline, then holes in it; of a fragment, one convex outline.</param>
/// <param name="Pieces">The same area in convex pieces, anticlockwise as seen.</param>
/// <param name="Look">How it is painted.</param>
internal sealed record Facet(
    string About,
    Vertex Normal,
    IReadOnlyList<IReadOnlyList<Vertex>> Outlines,
    IReadOnlyList<ConvexPiece> Pieces,
    FacetLook Look
)
{
    /// <summary>The edges a person sees, not those where the face was cut into pieces.</summary>
    public IEnumerable<(Vertex From, Vertex To)> Edges => Pieces.SelectMany(p => p.Edges);

    /// <summary>A solid's face.</summary>
    public static Facet Of(string about, SolidFace face, FacetLook look) =>
        new(about, face.Normal, [.. face.Rings], ConvexPiece.Of(face), look);

    /// <summary>A face of the room.</summary>
    public static Facet Of(RoomFace face, FacetLook look) =>
        Of(face.Id, new SolidFace(face.Corners, [], face.Normal, SolidFaceKind.Edge), look);
}

/// <summary>How a face is painted.</summary>
internal readonly record struct FacetLook(Fill Fill, Pen Pen);

/// <summary>A convex outline in space, and which of its edges are edges of the whole.</summary>
/// <param name="Corners">In order.</param>
/// <param name="IsEdge">For each corner, whether the line to the next is seen.</param>
internal sealed record ConvexPiece(Vertex[] Corners, bool[] IsEdge)
{
    /// <summary>The lines that are seen.</summary>
    public IEnumerable<(Vertex From, Vertex To)> Edges =>
        Enumerable
            .Range(0, Corners.Length)
            .Where(i => IsEdge[i])
            .Select(i => (Corners[i], Corners[(i + 1) % Corners.Length]));

    /// <summary>A face in convex pieces: itself when it has four corners and no hole, else triangles.</summary>
    public static IReadOnlyList<ConvexPiece> Of(SolidFace face)
    {
        if (face.Kind == SolidFaceKind.HoleWall)
            return [new([.. face.Outline], [true, false, true, false])];
        if (face.Holes.Count == 0 && face.Outline.Count <= 4)
            return [new([.. face.Outline], [.. face.Outline.Select(_ => true)])];
        return [.. Triangles(face)];
    }

    private static IEnumerable<ConvexPiece> Triangles(SolidFace face)
    {
        var corners = face.Rings.SelectMany(r => r).ToArray();
        var next = NextInRing(face);
        foreach (var t in Triangulation.Of(face).Chunk(3))
            yield return new(
                [corners[t[0]], corners[t[1]], corners[t[2]]],
                [next[t[0]] == t[1], next[t[1]] == t[2], next[t[2]] == t[0]]
            );
    }

    private static int[] NextInRing(SolidFace face)
    {
        var next = new List<int>();
        foreach (var ring in face.Rings)
        {
            var first = next.Count;
            next.AddRange(Enumerable.Range(1, ring.Count).Select(i => first + (i % ring.Count)));
        }
        return [.. next];
    }
}

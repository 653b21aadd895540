using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate.Polygon;

namespace Nookwright.Drawing;

/// <summary>Cuts flat faces into triangles for the screen.</summary>
internal static class Triangulation
{
    private static readonly GeometryFactory Plane = new();

    /// <summary>Corner triples, anticlockwise as seen from outside, into the face's rings laid end to end.</summary>
    public static IReadOnlyList<int> Of(SolidFace face) =>
        face.Holes.Count == 0 && face.Outline.Count <= 4 ? Fan(face.Outline.Count) : Cut(face);

    /// <summary>The triangles of a convex outline.</summary>
    public static IReadOnlyList<int> Fan(int corners) =>
        [.. Enumerable.Range(2, corners - 2).SelectMany(i => new[] { 0, i - 1, i })];

    private static List<int> Cut(SolidFace face)
    {
        var (right, up) = AxesOf(face.Normal);
        var rings = face
            .Rings.Select(ring => ring.Select(v => new Coordinate(v.Dot(right), v.Dot(up))).ToArray())
            .ToArray();
        var indexOf = new Dictionary<Coordinate, int>();
        foreach (var corner in rings.SelectMany(r => r))
            indexOf[corner] = indexOf.Count;
        var triangles = (GeometryCollection)PolygonTriangulator.Triangulate(PolygonOf(rings));
        return [.. triangles.Geometries.SelectMany(t => Anticlockwise(t.Coordinates)).Select(c => indexOf[c])];
    }

    /// <summary>The rings as one polygon; a hole that runs over an edge or into another is left out, so that a bad design is still shown.</summary>
    private static Polygon PolygonOf(Coordinate[][] rings)
    {
        var whole = Plane.CreatePolygon(Closed(rings[0]), [.. rings.Skip(1).Select(Closed)]);
        return whole.IsValid ? whole : Plane.CreatePolygon(Closed(rings[0]));
    }

    private static Coordinate[] Anticlockwise(Coordinate[] t)
    {
        var turn = ((t[1].X - t[0].X) * (t[2].Y - t[0].Y)) - ((t[1].Y - t[0].Y) * (t[2].X - t[0].X));
        return turn > 0 ? [t[0], t[1], t[2]] : [t[0], t[2], t[1]];
    }

    private static LinearRing Closed(Coordinate[] ring) => Plane.CreateLinearRing([.. ring, ring[0]]);

    /// <summary>Two directions in a face's plane, so that right turned into up is the normal.</summary>
    private static (Vertex Right, Vertex Up) AxesOf(Vertex normal)
    {
        var other = Math.Abs(normal.Z) < 0.9 ? new Vertex(0, 0, 1) : new Vertex(1, 0, 0);
        var right = other.Cross(normal).Unit();
        return (right, normal.Cross(right));
    }
}

using Nookwright.Design;

namespace Nookwright.Drawing;

/// <summary>A panel as a solid in the room, in millimetres.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="Faces">Its faces; together they close it.</param>
public sealed record Solid(Panel Panel, IReadOnlyList<SolidFace> Faces)
{
    /// <summary>Its lowest x, y and z.</summary>
    public Vertex Low { get; } = Extent.Of(Faces).Low;

    /// <summary>Its highest x, y and z.</summary>
    public Vertex High { get; } = Extent.Of(Faces).High;

    /// <summary>The middle of its bounding box.</summary>
    public Vertex Centre => (Low + High) * 0.5;

    /// <summary>Straight edges a person sees: outlines and the rims of holes, but not the sides of a round hole's facets.</summary>
    public IEnumerable<(Vertex From, Vertex To)> Edges =>
        Faces.Where(f => f.Kind != SolidFaceKind.HoleWall).SelectMany(f => f.Edges).Where(e => Precedes(e.From, e.To));

    /// <summary>Each edge belongs to two faces, in opposite directions: one of the two is taken.</summary>
    private static bool Precedes(Vertex a, Vertex b) => (a.X, a.Y, a.Z).CompareTo((b.X, b.Y, b.Z)) < 0;
}

/// <summary>A flat face of a solid.</summary>
/// <param name="Outline">Its corners, anticlockwise as seen from outside the solid.</param>
/// <param name="Holes">Holes in it, clockwise as seen from outside.</param>
/// <param name="Normal">One millimetre long, pointing out of the solid.</param>
/// <param name="Kind">Which face it is.</param>
public sealed record SolidFace(
    IReadOnlyList<Vertex> Outline,
    IReadOnlyList<IReadOnlyList<Vertex>> Holes,
    Vertex Normal,
    SolidFaceKind Kind
)
{
    /// <summary>The outline and the holes.</summary>
    public IEnumerable<IReadOnlyList<Vertex>> Rings => Holes.Prepend(Outline);

    /// <summary>Its edges in order; the rims of a hole belong to the show and hidden faces.</summary>
    public IEnumerable<(Vertex From, Vertex To)> Edges => Rings.SelectMany(EdgesOf);

    /// <summary>Six times the signed volume between the face and the room's origin: summed over a closed solid, six times its volume.</summary>
    public double SixfoldVolume => Rings.Sum(FanVolume);

    private static IEnumerable<(Vertex, Vertex)> EdgesOf(IReadOnlyList<Vertex> ring) =>
        ring.Select((from, i) => (from, ring[(i + 1) % ring.Count]));

    private static double FanVolume(IReadOnlyList<Vertex> ring)
    {
        var sum = 0.0;
        for (var i = 2; i < ring.Count; i++)
            sum += ring[0].Dot(ring[i - 1].Cross(ring[i]));
        return sum;
    }
}

/// <summary>Which face of a panel's solid.</summary>
public enum SolidFaceKind
{
    /// <summary>The show face.</summary>
    Show,

    /// <summary>The under or back face.</summary>
    Hidden,

    /// <summary>An edge.</summary>
    Edge,

    /// <summary>A facet of a round hole's wall.</summary>
    HoleWall,

    /// <summary>Where a drawing cuts it.</summary>
    Cut,
}

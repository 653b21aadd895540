namespace Nookwright.Drawing;

/// <summary>The box that things of the room fill, in millimetres.</summary>
/// <param name="Low">The lowest x, y and z.</param>
/// <param name="High">The highest x, y and z.</param>
public readonly record struct Extent(Vertex Low, Vertex High)
{
    /// <summary>The middle.</summary>
    public Vertex Centre => (Low + High) * 0.5;

    /// <summary>The box of some points; at the origin and empty when there are none.</summary>
    public static Extent Of(IEnumerable<Vertex> points)
    {
        Extent? box = null;
        foreach (var point in points)
            box = box is { } b ? new(Least(b.Low, point), Most(b.High, point)) : new(point, point);
        return box ?? default;
    }

    /// <summary>The box of some faces.</summary>
    public static Extent Of(IEnumerable<SolidFace> faces) => Of(faces.SelectMany(f => f.Outline));

    /// <summary>The box of some solids.</summary>
    public static Extent Of(IEnumerable<Solid> solids) => Of(solids.SelectMany(s => new[] { s.Low, s.High }));

    private static Vertex Least(Vertex a, Vertex b) => new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z));

    private static Vertex Most(Vertex a, Vertex b) => new(Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));
}

using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>Turns panels into solids: each outline carried through its thickness and set in the room.</summary>
/// <remarks>
/// Holes that go through are cut, as polygons of <see cref="HoleSides"/> sides. Grooves and pin holes are not: a member let
/// into a groove fills it, so that nothing of it is seen.
/// </remarks>
public static class Solids
{
    /// <summary>How many sides a round hole is drawn with.</summary>
    public const int HoleSides = 24;

    /// <summary>All panels of a built-in, in order.</summary>
    public static IReadOnlyList<Solid> Of(BuiltIn builtIn) => [.. builtIn.Panels.Select(Of)];

    /// <summary>One panel.</summary>
    public static Solid Of(Panel panel)
    {
        var frame = new PanelFrame(panel);
        var outline = panel.Outline.Corners.Select(c => (c.X.Millimetres, c.Y.Millimetres)).ToArray();
        var holes = panel.Machining.OfType<Machining.Through>().Select(Clockwise).ToArray();
        var walls = frame.WallsOf(outline, SolidFaceKind.Edge);
        var holeWalls = holes.SelectMany(hole => frame.WallsOf(hole, SolidFaceKind.HoleWall));
        return new(panel, [frame.Show(outline, holes), frame.Hidden(outline, holes), .. walls, .. holeWalls]);
    }

    private static (double X, double Y)[] Clockwise(Machining.Through hole)
    {
        var (x, y, radius) = (hole.Centre.X.Millimetres, hole.Centre.Y.Millimetres, hole.Diameter.Millimetres / 2);
        return
        [
            .. Enumerable
                .Range(0, HoleSides)
                .Select(i => -Math.Tau * i / HoleSides)
                .Select(angle => (x + (radius * Math.Cos(angle)), y + (radius * Math.Sin(angle)))),
        ];
    }
}

/// <summary>A panel's own frame as it stands in the room, for carrying flat rings into space.</summary>
internal readonly struct PanelFrame
{
    private readonly Vertex _origin;
    private readonly Vertex _x;
    private readonly Vertex _y;
    private readonly Vertex _z;
    private readonly double _thickness;

    public PanelFrame(Panel panel)
    {
        _origin = Vertex.Of(panel.Place.Origin);
        (_x, _y, _z) = (Axis(panel.Place.X), Axis(panel.Place.Y), Axis(panel.Place.Z));
        _thickness = panel.Thickness.Length.Millimetres;
    }

    public SolidFace Show(IReadOnlyList<(double, double)> outline, IReadOnlyList<(double, double)[]> holes) =>
        new(At(outline, _thickness), [.. holes.Select(Lifted)], _z, SolidFaceKind.Show);

    public SolidFace Hidden(IReadOnlyList<(double, double)> outline, IReadOnlyList<(double, double)[]> holes) =>
        new(Backwards(At(outline, 0)), [.. holes.Select(Laid)], -_z, SolidFaceKind.Hidden);

    /// <summary>The walls that stand on a ring: outside an anticlockwise one, inside a clockwise one.</summary>
    public IEnumerable<SolidFace> WallsOf(IReadOnlyList<(double X, double Y)> ring, SolidFaceKind kind)
    {
        var (low, high) = (At(ring, 0), At(ring, _thickness));
        var faces = new SolidFace[ring.Count];
        for (var i = 0; i < ring.Count; i++)
        {
            var next = (i + 1) % ring.Count;
            var normal = (low[next] - low[i]).Cross(_z).Unit();
            faces[i] = new([low[i], low[next], high[next], high[i]], [], normal, kind);
        }
        return faces;
    }

    private Vertex[] Lifted((double, double)[] ring) => At(ring, _thickness);

    private Vertex[] Laid((double, double)[] ring) => Backwards(At(ring, 0));

    private Vertex[] At(IReadOnlyList<(double X, double Y)> ring, double z)
    {
        var points = new Vertex[ring.Count];
        for (var i = 0; i < points.Length; i++)
            points[i] = _origin + (_x * ring[i].X) + (_y * ring[i].Y) + (_z * z);
        return points;
    }

    private static Vertex[] Backwards(Vertex[] ring) => [.. Enumerable.Reverse(ring)];

    private static Vertex Axis(Direction direction) => Vertex.Of(Placement.Along(direction, Length.Millimetre));
}

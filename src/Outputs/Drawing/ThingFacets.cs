using Nookwright.Projects;

namespace Nookwright.Drawing;

/// <summary>Faces of things on walls as they are painted: a window with its panes, an outlet with its plate's inner field.</summary>
internal static class ThingFacets
{
    private static readonly FacetLook Look = new(Fill.Paper, Pen.Room);

    /// <summary>A face, and what is drawn on it.</summary>
    public static IEnumerable<Facet> Of(RoomFace face) =>
        Fields(face)
            .Select(f => face with { Corners = Part(face.Corners, f) })
            .Prepend(face)
            .Select(f => Facet.Of(f, Look));

    /// <summary>Fields on a thing, as shares of its width and height from its lower left corner. Chosen by eye.</summary>
    private static IReadOnlyList<Window> Fields(RoomFace face) =>
        face.Thing?.Kind switch
        {
            _ when face.IsSide || face.Corners.Count != 4 => [],
            RoomThingKind.Window => [new(0.04, 0.04, 0.48, 0.96), new(0.52, 0.04, 0.96, 0.96)],
            RoomThingKind.Door => [new(0.06, 0, 0.94, 0.97)],
            RoomThingKind.Outlet => [new(0.3, 0.12, 0.7, 0.44), new(0.3, 0.56, 0.7, 0.88)],
            RoomThingKind.Switch => [new(0.35, 0.3, 0.65, 0.7)],
            _ => [],
        };

    private static Vertex[] Part(IReadOnlyList<Vertex> corners, Window field) =>
        [
            At(corners, field.Left, field.Top),
            At(corners, field.Right, field.Top),
            At(corners, field.Right, field.Bottom),
            At(corners, field.Left, field.Bottom),
        ];

    private static Vertex At(IReadOnlyList<Vertex> corners, double right, double up)
    {
        var (low, high) = (
            corners[0] + ((corners[1] - corners[0]) * right),
            corners[3] + ((corners[2] - corners[3]) * right)
        );
        return low + ((high - low) * up);
    }
}

using Nookwright.Geometry;
using Nookwright.Projects;
using Nookwright.Survey;

namespace Nookwright.Drawing;

/// <summary>A flat face of the room, looking into the recess.</summary>
/// <param name="Id">The thing's id, or <c>floor</c>, <c>ceiling</c>, <c>wall-back</c>, <c>wall-left</c>, <c>wall-right</c>.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Wall">The wall it is, or is on; null for floor and ceiling.</param>
/// <param name="Corners">Its corners, anticlockwise as seen from inside the recess.</param>
/// <param name="Normal">One millimetre long, pointing into the recess or out of the thing.</param>
public sealed record RoomFace(string Id, RoomFaceKind Kind, Wall? Wall, IReadOnlyList<Vertex> Corners, Vertex Normal)
{
    /// <summary>The thing it is a face of; null for walls, floor and ceiling.</summary>
    public RoomThing? Thing { get; init; }

    /// <summary>True for a face that stands out from the wall beside a thing's front.</summary>
    public bool IsSide { get; init; }
}

/// <summary>What a face of the room is.</summary>
public enum RoomFaceKind
{
    /// <summary>A wall.</summary>
    Wall,

    /// <summary>The floor.</summary>
    Floor,

    /// <summary>The ceiling.</summary>
    Ceiling,

    /// <summary>A face of a thing on a wall.</summary>
    Thing,
}

/// <summary>The room as faces: walls, floor, ceiling, and the things on the walls as far as they stand out.</summary>
public static class RoomSolids
{
    /// <summary>All faces of a room; what has not been measured is not there.</summary>
    public static IReadOnlyList<RoomFace> Of(Room room) =>
        [
            .. room.Walls.SelectMany(w => Quad(IdOf(w.Wall), RoomFaceKind.Wall, w.Wall, w.Corners)),
            .. Quad("floor", RoomFaceKind.Floor, null, room.Floor),
            .. Quad("ceiling", RoomFaceKind.Ceiling, null, [.. room.Ceiling.Reverse()]),
            .. room.Things.SelectMany(FacesOf),
        ];

    private static string IdOf(Wall wall) =>
        wall switch
        {
            Wall.Left => "wall-left",
            Wall.Right => "wall-right",
            _ => "wall-back",
        };

    private static IEnumerable<RoomFace> FacesOf(PlacedThing placed)
    {
        var faces = Quad(placed.Thing.Id, RoomFaceKind.Thing, placed.Thing.Wall, placed.Corners)
            .Select(f => f with { Thing = placed.Thing });
        return placed.Projection.IsPositive ? faces.SelectMany(f => Raised(f, placed.Projection.Millimetres)) : faces;
    }

    private static IEnumerable<RoomFace> Raised(RoomFace face, double projectionMillimetres)
    {
        var outwards = face.Normal * projectionMillimetres;
        var front = face with { Corners = [.. face.Corners.Select(c => c + outwards)] };
        return face.Corners.Select((_, i) => Side(face, i, outwards)).Prepend(front);
    }

    private static RoomFace Side(RoomFace face, int i, Vertex outwards)
    {
        var (a, b) = (face.Corners[i], face.Corners[(i + 1) % face.Corners.Count]);
        return face with
        {
            Corners = [a, b, b + outwards, a + outwards],
            Normal = (b - a).Cross(outwards).Unit(),
            IsSide = true,
        };
    }

    private static RoomFace[] Quad(string id, RoomFaceKind kind, Wall? wall, IReadOnlyList<Point3> corners)
    {
        if (corners.Count < 3)
            return [];
        var points = corners.Select(Vertex.Of).ToArray();
        return [new(id, kind, wall, points, (points[1] - points[0]).Cross(points[^1] - points[0]).Unit())];
    }
}

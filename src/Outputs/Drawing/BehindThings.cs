using Nookwright.Projects;
using Nookwright.Survey;

namespace Nookwright.Drawing;

/// <summary>Studs, outlets and the like on the wall looked at, dashed, so that they are found behind what covers them.</summary>
internal static class BehindThings
{
    /// <summary>The dashed outlines.</summary>
    public static IEnumerable<Mark> Of(ViewScene scene, Painting painting) =>
        from thing in scene.Workbook.Room.Things
        where IsShownThrough(thing.Thing.Kind) && FacesTheEye(thing, scene.Sight)
        select new Mark.Group(
            thing.Thing.Id,
            [new Mark.Path([.. thing.Corners.Select(c => painting.At(Vertex.Of(c)))], true, Fill.None, Pen.Hidden)],
            thing.Thing.Id
        );

    private static bool IsShownThrough(RoomThingKind kind) =>
        kind
            is RoomThingKind.Stud
                or RoomThingKind.Outlet
                or RoomThingKind.Switch
                or RoomThingKind.Vent
                or RoomThingKind.Pipe;

    private static bool FacesTheEye(PlacedThing thing, Sight sight)
    {
        if (thing.Corners.Count < 3)
            return false;
        var corners = thing.Corners.Select(Vertex.Of).ToArray();
        var normal = (corners[1] - corners[0]).Cross(corners[^1] - corners[0]).Unit();
        return normal.Dot(sight.Towards) > 0.5;
    }
}

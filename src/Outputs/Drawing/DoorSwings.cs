using Nookwright.Design;
using Nookwright.Projects;

namespace Nookwright.Drawing;

/// <summary>Dashed lines on doors that meet at the hinge side; common practice, no source.</summary>
internal static class DoorSwings
{
    /// <summary>The lines on every door that faces the eye and is not covered.</summary>
    public static IEnumerable<Mark> Of(ViewScene scene, Painting painting)
    {
        var solids = scene.Solids.ToDictionary(s => s.Panel.Id);
        return from piece in scene.Pieces
            where piece.Piece is Doors
            let doors = piece.Panels.Where(p => p.Role == PanelRole.Door).ToArray()
            from door in doors
            let solid = solids[door.Id]
            where IsSeen(scene, solid)
            select new Mark.Group(
                null,
                [.. Lines(solid, HingeOf((Doors)piece.Piece, doors, door), scene.Sight, painting)]
            );
    }

    private static bool IsSeen(ViewScene scene, Solid door)
    {
        var show = door.Faces.First(f => f.Kind == SolidFaceKind.Show).Normal;
        return show.Dot(scene.Sight.Towards) > 0.99 && scene.Visible.At(door.Centre) == door.Panel.Id;
    }

    /// <summary>Of a pair, each door hangs on its outer side; left and right as someone in front of the doors sees them.</summary>
    private static HingeSide HingeOf(Doors piece, IReadOnlyList<Panel> doors, Panel door)
    {
        if (doors.Count < 2)
            return piece.Hinge;
        var fromLeft = doors.OrderBy(d => LeftToRight(piece.Facing, d)).ToList();
        return fromLeft.IndexOf(door) == 0 ? HingeSide.Left : HingeSide.Right;
    }

    private static double LeftToRight(Facing facing, Panel door) =>
        facing switch
        {
            Facing.Left => -door.Place.Origin.Y.Millimetres,
            Facing.Right => door.Place.Origin.Y.Millimetres,
            _ => door.Place.Origin.X.Millimetres,
        };

    private static IEnumerable<Mark> Lines(Solid door, HingeSide hinge, Sight sight, Painting painting)
    {
        var window = Window.Around(new[] { door.Low, door.High }.Select(painting.At));
        var (hung, free) = hinge == HingeSide.Left ? (window.Left, window.Right) : (window.Right, window.Left);
        var at = new Spot(hung, window.Middle.Y);
        yield return new Mark.Line(new(free, window.Top), at, Pen.Hidden);
        yield return new Mark.Line(at, new(free, window.Bottom), Pen.Hidden);
    }
}

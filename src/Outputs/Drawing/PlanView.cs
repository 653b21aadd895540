using Nookwright.Flow;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Survey;

namespace Nookwright.Drawing;

/// <summary>The built-in in its recess seen from above, with dimensions, at a scale a rule can measure.</summary>
public static class PlanView
{
    /// <summary>How thick walls are drawn; their real thickness is nobody's concern here. Chosen by eye.</summary>
    private const double WallBand = 70;

    /// <summary>The picture, at the largest usual scale that fits.</summary>
    /// <param name="workbook">The job.</param>
    /// <param name="width">In millimetres.</param>
    /// <param name="height">In millimetres.</param>
    /// <param name="heightOfCut">
    /// What stands above this height is left out, and what goes through it is cut and dark; null to look down on everything.
    /// </param>
    public static Picture Of(Workbook workbook, double width, double height, Length? heightOfCut = null)
    {
        var solids = Solids.Of(workbook.BuiltIn);
        if (heightOfCut is { } cut)
            solids = [.. solids.SelectMany(s => LevelCut.Below(s, cut))];
        var scene = new ViewScene(workbook, Sight.FromAbove, solids);
        var corners = scene
            .Solids.SelectMany(s => new[] { s.Low, s.High })
            .Concat(Bands(workbook.Room).SelectMany(b => b));
        var view = new FlatView(
            heightOfCut is null ? "Plan" : $"Plan, cut {workbook.Lengths.Print(heightOfCut.Value)} above the floor",
            scene.Sight,
            Window.Around(corners.Select(scene.Sight.See)),
            ViewSizes.Plan(scene.Pieces),
            LeftMargin: 0,
            (painting, _) => Draw(scene, painting)
        );
        return view.At(workbook, width, height);
    }

    private static IEnumerable<Mark> Draw(ViewScene scene, Painting painting)
    {
        var labels = new ViewLabels(scene, painting);
        return
        [
            .. Walls(scene.Workbook.Room, painting),
            .. scene.Marks(painting),
            .. HiddenBoxes(scene, painting),
            .. labels.OnBoxes(),
            .. labels.OnTops(),
        ];
    }

    private static IEnumerable<Mark> Walls(Room room, Painting painting)
    {
        foreach (var band in Bands(room))
            yield return new Mark.Path([.. band.Select(painting.At)], true, Fill.Room, Pen.Room);
        foreach (var thing in room.Things.Where(t => t.Corners.Count >= 2))
            if (InWall(thing) is { } pen)
                yield return new Mark.Group(
                    thing.Thing.Id,
                    [
                        new Mark.Path(
                            [.. Band(thing.Corners[0], thing.Corners[1]).Select(painting.At)],
                            true,
                            FillOf(thing),
                            pen
                        ),
                    ],
                    thing.Thing.Id
                );
    }

    /// <summary>The pen of what is in a wall, or null for what is on it.</summary>
    private static Pen? InWall(PlacedThing thing) =>
        thing.Thing.Kind switch
        {
            RoomThingKind.Window or RoomThingKind.Door => Pen.Room,
            RoomThingKind.Stud => Pen.Hidden,
            _ => null,
        };

    private static Fill FillOf(PlacedThing thing) => thing.Thing.Kind == RoomThingKind.Stud ? Fill.None : Fill.Paper;

    private static IEnumerable<IReadOnlyList<Vertex>> Bands(Room room) =>
        room
            .Walls.Where(w => w.Corners.Count >= 2)
            .Select(w => Band(w.Corners[0], w.Corners[1], w.Wall == Wall.Back ? WallBand : 0));

    /// <summary>A strip of wall behind the line between two points of its face, given from left to right as seen from inside.</summary>
    private static IReadOnlyList<Vertex> Band(Geometry.Point3 left, Geometry.Point3 right, double longer = 0)
    {
        var (a, b) = (Vertex.Of(left), Vertex.Of(right));
        var along = new Vertex(b.X - a.X, b.Y - a.Y, 0).Unit();
        var behind = new Vertex(-along.Y, along.X, 0) * WallBand;
        var ends = along * longer;
        return [a - ends, b + ends, b + ends + behind, a - ends + behind];
    }

    /// <summary>The outlines of boxes under a top, dashed.</summary>
    private static IEnumerable<Mark> HiddenBoxes(ViewScene scene, Painting painting) =>
        from piece in scene.Pieces
        where piece.Piece is Carcass or SupportBox
        let window = Window.Around([painting.At(Vertex.Of(piece.Low)), painting.At(Vertex.Of(piece.High))])
        select new Mark.Path(window.Corners, true, Fill.None, Pen.Hidden);
}

using Nookwright.Flow;
using Nookwright.Projects;

namespace Nookwright.Drawing;

/// <summary>A picture of the built-in standing in its room, as someone sees it from in front, aside and above.</summary>
/// <remarks>Parallel edges stay parallel. Walls on the near side and the ceiling are left out.</remarks>
public static class RoomView
{
    // Chosen by eye: doors stay easy to read, the tops still show.
    private const double AsideDegrees = 28;
    private const double AboveDegrees = 24;
    private const double Margin = 2;

    /// <summary>The picture, as large as a frame of this size allows.</summary>
    /// <param name="workbook">The job.</param>
    /// <param name="width">In millimetres.</param>
    /// <param name="height">In millimetres.</param>
    public static Picture Of(Workbook workbook, double width, double height)
    {
        var solids = Solids.Of(workbook.BuiltIn);
        var sight = Sight.FromFrontAbove(ComesForwardOnTheRight(solids) ? -AsideDegrees : AsideDegrees, AboveDegrees);
        var faces = RoomSolids.Of(workbook.Room);
        var room = faces.Where(f => IsDrawn(f, faces, sight)).ToArray();
        var seen = Window.Around(
            room.SelectMany(f => f.Corners).Concat(solids.SelectMany(CornersOf)).Select(sight.See)
        );
        var painting = new Painting(sight, OnPaper.Fitting(seen, Window.Of(width, height, Margin)));
        var captions = Captions.Of(workbook);
        IReadOnlyList<Mark> marks =
        [
            .. painting.Of([.. room.Where(f => f.Thing is null).Select(FacetOf)], captions),
            .. painting.Of(
                PaintingOrder.Of([.. room.Where(f => f.Thing is not null).SelectMany(ThingFacets.Of)], sight),
                captions
            ),
            .. painting.Of(PaintingOrder.Of([.. SolidFacets.Of(solids, sight, LookOf)], sight), captions),
        ];
        return new(width, height, marks, $"{workbook.Project.Name}: the built-in in its room");
    }

    /// <summary>True when what stands to the right comes out further than what stands to the left, and would hide it.</summary>
    private static bool ComesForwardOnTheRight(IReadOnlyList<Solid> solids)
    {
        var middle = Extent.Of(solids).Centre.X;
        double Front(IEnumerable<Solid> side) => side.Select(s => s.Low.Y).DefaultIfEmpty(0).Min();
        return Front(solids.Where(s => s.Centre.X > middle)) < Front(solids.Where(s => s.Centre.X <= middle)) - 50;
    }

    private static bool IsDrawn(RoomFace face, IReadOnlyList<RoomFace> all, Sight sight) =>
        SolidFacets.Looks(face.Normal, sight)
        && face.Kind != RoomFaceKind.Ceiling
        && face.Thing?.Kind != RoomThingKind.Stud
        && (
            face.Thing is null
            || all.Any(f => f.Kind == RoomFaceKind.Wall && f.Wall == face.Wall && SolidFacets.Looks(f.Normal, sight))
        );

    private static Facet FacetOf(RoomFace face) =>
        Facet.Of(face, new(face.Kind == RoomFaceKind.Floor ? Fill.Room : Fill.Paper, Pen.Room));

    private static FacetLook LookOf(Solid solid, SolidFace face) =>
        new(
            Math.Abs(face.Normal.Z) > 0.5 ? Fill.Light
                : Math.Abs(face.Normal.Y) > 0.5 ? Fill.Middle
                : Fill.Dark,
            Pen.Thin
        );

    private static IEnumerable<Vertex> CornersOf(Solid solid) => solid.Faces.SelectMany(f => f.Outline);
}

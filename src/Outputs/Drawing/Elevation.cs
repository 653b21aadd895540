using Nookwright.Flow;

namespace Nookwright.Drawing;

/// <summary>From which side an elevation is seen.</summary>
public enum SeenFrom
{
    /// <summary>From in front of the recess.</summary>
    Front,

    /// <summary>From beyond the left wall, which is left out.</summary>
    Left,

    /// <summary>From beyond the right wall, which is left out.</summary>
    Right,
}

/// <summary>An upright view square to the room, with dimensions, at a scale a rule can measure.</summary>
public static class Elevation
{
    /// <summary>The picture, at the largest usual scale that fits.</summary>
    /// <param name="workbook">The job.</param>
    /// <param name="from">From which side.</param>
    /// <param name="width">In millimetres.</param>
    /// <param name="height">In millimetres.</param>
    public static Picture Of(Workbook workbook, SeenFrom from, double width, double height)
    {
        var scene = new ViewScene(workbook, SightOf(from), Solids.Of(workbook.BuiltIn));
        var opening = Opening(workbook, from);
        var seen = Window.Around(
            opening.Concat(scene.Solids.SelectMany(s => new[] { s.Low, s.High })).Select(scene.Sight.See)
        );
        var view = new FlatView(
            NameOf(from),
            scene.Sight,
            seen,
            ViewSizes.Upright(workbook.BuiltIn.Pieces, from == SeenFrom.Front ? p => p.X : p => p.Y),
            ViewLabels.MarginFor(scene),
            (painting, window) => Draw(scene, opening, painting, window)
        );
        return view.At(workbook, width, height);
    }

    private static IEnumerable<Mark> Draw(
        ViewScene scene,
        IReadOnlyList<Vertex> opening,
        Painting painting,
        Window window
    )
    {
        var labels = new ViewLabels(scene, painting);
        if (opening.Count > 2)
            yield return new Mark.Path([.. opening.Select(painting.At)], true, Fill.None, Pen.Room);
        foreach (var mark in scene.Marks(painting))
            yield return mark;
        foreach (var mark in BehindThings.Of(scene, painting))
            yield return mark;
        foreach (var mark in DoorSwings.Of(scene, painting))
            yield return mark;
        foreach (var mark in labels.OnBoxes().Concat(labels.OnPanels()).Concat(labels.Beside(window)))
            yield return mark;
    }

    private static Sight SightOf(SeenFrom from) =>
        from switch
        {
            SeenFrom.Left => Sight.FromLeft,
            SeenFrom.Right => Sight.FromRight,
            _ => Sight.FromFront,
        };

    private static string NameOf(SeenFrom from) =>
        from switch
        {
            SeenFrom.Left => "Seen from the left",
            SeenFrom.Right => "Seen from the right",
            _ => "Front",
        };

    /// <summary>The recess's outline at its opening, or at the side looked through; none while it has not been measured.</summary>
    private static IReadOnlyList<Vertex> Opening(Workbook workbook, SeenFrom from)
    {
        var (floor, ceiling) = (workbook.Room.Floor, workbook.Room.Ceiling);
        if (floor.Count < 4 || ceiling.Count < 4)
            return [];
        var (a, b) = from switch
        {
            SeenFrom.Left => (0, 3),
            SeenFrom.Right => (1, 2),
            _ => (0, 1),
        };
        return [.. new[] { floor[a], floor[b], ceiling[b], ceiling[a] }.Select(Vertex.Of)];
    }
}

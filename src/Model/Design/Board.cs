using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>A panel in the frame of its piece, before the piece is set in the room.</summary>
/// <param name="Member">Its name within the piece: the part of the id after the dot.</param>
/// <param name="Role">What it does.</param>
/// <param name="Called">What a maker calls it: "left side".</param>
/// <param name="Material">The id of its sheet.</param>
/// <param name="Attitude">Which way it lies.</param>
/// <param name="Low">Its lowest corner, in the piece's frame.</param>
/// <param name="Size">Its finished sizes.</param>
internal sealed record Board(
    string Member,
    PanelRole Role,
    string Called,
    string Material,
    Attitude Attitude,
    Point3 Low,
    BoardSize Size
)
{
    /// <summary>Which way the figure runs.</summary>
    public PanelFigure Figure { get; init; }

    /// <summary>Its outline in its own frame when it is not a rectangle.</summary>
    public Outline? Outline { get; init; }

    /// <summary>Its edges.</summary>
    public PanelEdges Edges { get; init; } = new();

    /// <summary>What is machined into it, in its own frame.</summary>
    public IReadOnlyList<Machining> Machining { get; init; } = [];

    /// <summary>Where its own frame stands in its piece.</summary>
    public Placement Place =>
        new(
            Low + Start(Attitude.X, Size.Length) + Start(Attitude.Y, Size.Width) + Start(Attitude.Show, Size.Thickness),
            Attitude.X,
            Attitude.Y
        );

    /// <summary>Its highest corner, in the piece's frame.</summary>
    public Point3 High =>
        Low + Reach(Attitude.X, Size.Length) + Reach(Attitude.Y, Size.Width) + Reach(Attitude.Show, Size.Thickness);

    /// <summary>The same with a recess cut out: the box it takes away, in the piece's frame, open at one of the faces.</summary>
    public Board Cut(Point3 low, Point3 high)
    {
        var (from, to) = SolidBox.Between(Inside(low), Inside(high));
        var face = from.Z <= Length.Zero ? PanelFace.Hidden : PanelFace.Show;
        return With(new Machining.Groove(face, new(from.X, from.Y), new(to.X, to.Y), to.Z - from.Z));
    }

    /// <summary>The same with more machining.</summary>
    public Board With(params IEnumerable<Machining> more) => this with { Machining = [.. Machining, .. more] };

    /// <summary>A point of the piece, in the board's own frame.</summary>
    public Point3 Inside(Point3 point)
    {
        var place = Place;
        var from = point - place.Origin;
        return new(Component(place.X, from), Component(place.Y, from), Component(place.Z, from));
    }

    private static Length Component(Direction direction, Point3 vector) =>
        direction switch
        {
            Direction.PlusX => vector.X,
            Direction.MinusX => -vector.X,
            Direction.PlusY => vector.Y,
            Direction.MinusY => -vector.Y,
            Direction.PlusZ => vector.Z,
            _ => -vector.Z,
        };

    /// <summary>From the lowest corner to where the frame starts: nothing along an axis, the whole size against it.</summary>
    private static Point3 Start(Direction direction, Traced size) =>
        direction is Direction.MinusX or Direction.MinusY or Direction.MinusZ
            ? Point3.Origin - Placement.Along(direction, size.Length)
            : Point3.Origin;

    private static Point3 Reach(Direction direction, Traced size) =>
        Start(direction, size)
        + (
            direction is Direction.PlusX or Direction.PlusY or Direction.PlusZ
                ? Placement.Along(direction, size.Length)
                : Point3.Origin
        );
}

/// <summary>A board's finished sizes.</summary>
/// <param name="Length">Along its own x.</param>
/// <param name="Width">Along its own y.</param>
/// <param name="Thickness">Through it, as measured.</param>
internal readonly record struct BoardSize(Traced Length, Traced Width, Traced Thickness);

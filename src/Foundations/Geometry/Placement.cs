using Nookwright.Measure;

namespace Nookwright.Geometry;

/// <summary>One of the six directions along the axes of a frame.</summary>
public enum Direction
{
    /// <summary>Along x.</summary>
    PlusX,

    /// <summary>Against x.</summary>
    MinusX,

    /// <summary>Along y.</summary>
    PlusY,

    /// <summary>Against y.</summary>
    MinusY,

    /// <summary>Along z.</summary>
    PlusZ,

    /// <summary>Against z.</summary>
    MinusZ,
}

/// <summary>Where a frame stands in another, square to it: its origin and the directions of its x and y axes.</summary>
/// <remarks>
/// Right-handed: z is x turned into y. Exact, because built-ins are made of square pieces set square to each other; what
/// follows a crooked wall is a panel's outline, not its placement.
/// </remarks>
/// <param name="Origin">The frame's origin, in the outer frame.</param>
/// <param name="X">The direction of the frame's x axis, in the outer frame.</param>
/// <param name="Y">The direction of the frame's y axis, in the outer frame; square to x.</param>
public readonly record struct Placement(Point3 Origin, Direction X, Direction Y)
{
    /// <summary>The frame as it is.</summary>
    public static Placement Identity => new(Point3.Origin, Direction.PlusX, Direction.PlusY);

    /// <summary>The direction of the frame's z axis, in the outer frame.</summary>
    public Direction Z => Cross(X, Y);

    /// <summary>A point of the frame, in the outer frame.</summary>
    public Point3 Map(Point3 point) => Origin + Turn(point);

    /// <summary>A vector of the frame, in the outer frame.</summary>
    public Point3 Turn(Point3 vector) => Along(X, vector.X) + Along(Y, vector.Y) + Along(Z, vector.Z);

    /// <summary>A direction of the frame, in the outer frame.</summary>
    public Direction Turn(Direction direction) => DirectionOf(Turn(Along(direction, Length.Millimetre)));

    /// <summary>A frame inside this one, seen from the outer frame.</summary>
    /// <param name="inner">The inner frame, placed in this one.</param>
    public Placement Of(Placement inner) => new(Map(inner.Origin), Turn(inner.X), Turn(inner.Y));

    /// <summary>Moved in the outer frame.</summary>
    public Placement MovedBy(Point3 vector) => this with { Origin = Origin + vector };

    /// <summary>A vector of a given length in a direction.</summary>
    public static Point3 Along(Direction direction, Length length) =>
        direction switch
        {
            Direction.PlusX => new(length, Length.Zero, Length.Zero),
            Direction.MinusX => new(-length, Length.Zero, Length.Zero),
            Direction.PlusY => new(Length.Zero, length, Length.Zero),
            Direction.MinusY => new(Length.Zero, -length, Length.Zero),
            Direction.PlusZ => new(Length.Zero, Length.Zero, length),
            _ => new(Length.Zero, Length.Zero, -length),
        };

    private static Direction Cross(Direction a, Direction b)
    {
        var (p, q) = (Along(a, new(1)), Along(b, new(1)));
        long Minor(long pu, long pv, long qu, long qv) => (pu * qv) - (pv * qu);
        return DirectionOf(
            new(
                new(Minor(p.Y.Nanometres, p.Z.Nanometres, q.Y.Nanometres, q.Z.Nanometres)),
                new(Minor(p.Z.Nanometres, p.X.Nanometres, q.Z.Nanometres, q.X.Nanometres)),
                new(Minor(p.X.Nanometres, p.Y.Nanometres, q.X.Nanometres, q.Y.Nanometres))
            )
        );
    }

    private static Direction DirectionOf(Point3 vector) =>
        (Math.Sign(vector.X.Nanometres), Math.Sign(vector.Y.Nanometres), Math.Sign(vector.Z.Nanometres)) switch
        {
            (1, 0, 0) => Direction.PlusX,
            (-1, 0, 0) => Direction.MinusX,
            (0, 1, 0) => Direction.PlusY,
            (0, -1, 0) => Direction.MinusY,
            (0, 0, 1) => Direction.PlusZ,
            (0, 0, -1) => Direction.MinusZ,
            _ => throw new InvalidOperationException("The x and y axes of a placement must be square to each other."),
        };
}

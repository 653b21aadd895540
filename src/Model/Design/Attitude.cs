using Nookwright.Geometry;

namespace Nookwright.Design;

/// <summary>Which way a board lies in its piece: where its length and its width go; its show face looks along <see cref="Show"/>.</summary>
/// <remarks>
/// In the piece's own frame: x to the right as seen from in front of the piece, y into it, z up; origin at the left front
/// lower corner.
/// </remarks>
/// <param name="X">Along the board's length.</param>
/// <param name="Y">Along the board's width.</param>
internal readonly record struct Attitude(Direction X, Direction Y)
{
    /// <summary>Level, length to the right, shows its upper face.</summary>
    public static readonly Attitude Level = new(Direction.PlusX, Direction.PlusY);

    /// <summary>Level, length from the front to the back, shows its upper face.</summary>
    public static readonly Attitude LevelAlongY = new(Direction.PlusY, Direction.MinusX);

    /// <summary>Upright, length to the right, width up, shows to the front.</summary>
    public static readonly Attitude Front = new(Direction.PlusX, Direction.PlusZ);

    /// <summary>Upright, standing on end, shows to the front.</summary>
    public static readonly Attitude FrontOnEnd = new(Direction.PlusZ, Direction.MinusX);

    /// <summary>Upright, length into the piece, width up, shows to the right.</summary>
    public static readonly Attitude Right = new(Direction.PlusY, Direction.PlusZ);

    /// <summary>Upright, length out of the piece, width up, shows to the left.</summary>
    public static readonly Attitude Left = new(Direction.MinusY, Direction.PlusZ);

    /// <summary>Standing on end, width into the piece, shows to the left: a left side, seen from outside.</summary>
    public static readonly Attitude LeftOnEnd = new(Direction.PlusZ, Direction.PlusY);

    /// <summary>Standing on end, width out of the piece, shows to the right: a right side, seen from outside.</summary>
    public static readonly Attitude RightOnEnd = new(Direction.PlusZ, Direction.MinusY);

    /// <summary>Where the show face looks.</summary>
    public Direction Show => new Placement(Point3.Origin, X, Y).Z;

    /// <summary>What is up for someone who looks at the show face: the back of a level board, the top of an upright one.</summary>
    public Direction Up => Show is Direction.PlusZ or Direction.MinusZ ? Direction.PlusY : Direction.PlusZ;

    /// <summary>What is to the right for someone who looks at the show face.</summary>
    public Direction RightHand => new Placement(Point3.Origin, Up, Show).Z;
}

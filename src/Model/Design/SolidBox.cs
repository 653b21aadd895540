using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Design;

/// <summary>A box square to the axes.</summary>
/// <param name="Low">Its lowest corner.</param>
/// <param name="High">Its highest corner.</param>
internal readonly record struct SolidBox(Point3 Low, Point3 High)
{
    /// <summary>What a board takes up, in its piece's frame.</summary>
    public static SolidBox Of(Board board) => new(board.Low, board.High);

    /// <summary>The box between two corners, whichever is lower.</summary>
    public static SolidBox Between(Point3 a, Point3 b) =>
        new(
            new(Length.Min(a.X, b.X), Length.Min(a.Y, b.Y), Length.Min(a.Z, b.Z)),
            new(Length.Max(a.X, b.X), Length.Max(a.Y, b.Y), Length.Max(a.Z, b.Z))
        );

    /// <summary>What a panel takes up in the room; an L takes two boxes.</summary>
    public static IEnumerable<SolidBox> InRoom(Panel panel) =>
        Rectangles
            .Of(panel.Outline)
            .Select(rectangle =>
                Between(
                    panel.Place.Map(new(rectangle.Low.X, rectangle.Low.Y, default)),
                    panel.Place.Map(new(rectangle.High.X, rectangle.High.Y, panel.Thickness.Length))
                )
            );

    /// <summary>The smallest box around some.</summary>
    public static SolidBox Around(IEnumerable<SolidBox> boxes) =>
        boxes.Aggregate((a, b) => new(Between(a.Low, b.Low).Low, Between(a.High, b.High).High));

    /// <summary>What two boxes share, or null; boxes that only touch share nothing.</summary>
    public SolidBox? SharedWith(SolidBox other)
    {
        var low = new Point3(
            Length.Max(Low.X, other.Low.X),
            Length.Max(Low.Y, other.Low.Y),
            Length.Max(Low.Z, other.Low.Z)
        );
        var high = new Point3(
            Length.Min(High.X, other.High.X),
            Length.Min(High.Y, other.High.Y),
            Length.Min(High.Z, other.High.Z)
        );
        return low.X < high.X && low.Y < high.Y && low.Z < high.Z ? new SolidBox(low, high) : null;
    }

    /// <summary>The smallest of its three sizes.</summary>
    public Length Least => Length.Min(High.X - Low.X, Length.Min(High.Y - Low.Y, High.Z - Low.Z));
}

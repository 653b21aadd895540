using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>Distances along the walls, measured from their left ends as seen from inside, and where they are in the room.</summary>
internal sealed class AlongWalls(SurveyedReadings readings, RecessShape shape)
{
    /// <summary>A distance along a wall as x or y of the room; plain sums where the wall's end is the origin's.</summary>
    public Traced OnAxis(Wall wall, Traced along, Length height)
    {
        var point = Point(wall, along.Length, height);
        var value = wall == Wall.Back ? point.X : point.Y;
        var walls = wall == Wall.Back ? RoomSizes.Sideways(readings) : RoomSizes.Inward(readings);
        return value == along.Length
            ? along
            : Traced.Worked(
                Quantity.Of(value),
                $"along-{wall}-wall".ToLowerInvariant(),
                [along, .. walls.Select(r => r.Value)]
            );
    }

    /// <summary>A wall's length from end to end at a height, square or not.</summary>
    public Traced LengthOf(Wall wall, Length height)
    {
        var (left, right) = shape.Ends(wall, height);
        var length = new Length((long)Math.Round(Distance(left, right)));
        var walls = wall == Wall.Back ? RoomSizes.Sideways(readings) : RoomSizes.Inward(readings);
        return RoomSizes.FromWalls(length, $"{wall}-wall-length".ToLowerInvariant(), walls);
    }

    /// <summary>A point on a wall's face; real numbers, rounded to the nanometre.</summary>
    public Point3 Point(Wall wall, Length along, Length height)
    {
        var (left, right) = shape.Ends(wall, height);
        var length = (decimal)Distance(left, right);
        Length Between(Length from, Length to) =>
            length == 0
                ? from
                : new(
                    (long)decimal.Round(from.Nanometres + ((to - from).Nanometres * (decimal)along.Nanometres / length))
                );
        return new(Between(left.X, right.X), Between(left.Y, right.Y), height);
    }

    private static double Distance(Point3 a, Point3 b) =>
        Math.Sqrt(Math.Pow((b - a).X.Nanometres, 2) + Math.Pow((b - a).Y.Nanometres, 2));
}

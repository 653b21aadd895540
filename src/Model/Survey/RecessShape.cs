using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>The recess as a solid: where its corners are at any height, its floor, its ceiling, its faces.</summary>
/// <remarks>Points are rounded to the nanometre towards the recess's inside, so that rounding never makes room.</remarks>
internal sealed class RecessShape
{
    private static readonly PlaceInPlan[] AroundThePlan =
    [
        PlaceInPlan.LeftFront,
        PlaceInPlan.RightFront,
        PlaceInPlan.RightBack,
        PlaceInPlan.LeftBack,
    ];

    /// <summary>How high walls are drawn while nobody has read the ceiling; nothing is checked against it.</summary>
    public static readonly Length DrawnHeight = Length.FromMillimetres(2440);

    private readonly SurveyedReadings _readings;
    private readonly List<Point3> _floor;
    private readonly List<Point3> _ceiling;

    public RecessShape(SurveyedReadings readings)
    {
        _readings = readings;
        Back = new(readings);
        Sides = new(readings, Back);
        _floor = [.. AroundThePlan.Select(corner => Corner(corner, -Fall(corner)))];
        _ceiling = [.. AroundThePlan.Select(corner => Corner(corner, CeilingAt(corner)))];
    }

    public BackWall Back { get; }

    public SideWalls Sides { get; }

    public IReadOnlyList<Point3> Floor => HasWalls ? _floor : [];

    public IReadOnlyList<Point3> Ceiling => HasCeiling ? _ceiling : [];

    /// <summary>True when there is enough to say where the walls are.</summary>
    public bool HasWalls => Sides.IsKnown && Back.IsKnown;

    /// <summary>True when there is enough to say where the ceiling is.</summary>
    public bool HasCeiling => HasWalls && _readings.Of(RoomReadingKind.Ceiling).Any();

    /// <summary>How high the walls reach.</summary>
    public Length Top => _ceiling.Max(corner => corner.Z);

    /// <summary>The three walls, each one face from floor to ceiling.</summary>
    public IReadOnlyList<WallFace> Walls =>
        !HasWalls
            ? []
            :
            [
                new(Wall.Back, [_floor[3], _floor[2], _ceiling[2], _ceiling[3]]),
                new(Wall.Left, [_floor[0], _floor[3], _ceiling[3], _ceiling[0]]),
                new(Wall.Right, [_floor[2], _floor[1], _ceiling[1], _ceiling[2]]),
            ];

    /// <summary>The same walls in bands between the heights that were read, and in two halves where the middle was read.</summary>
    public IReadOnlyList<WallFace> Bands => HasWalls ? [.. Levels().SelectMany(b => Band(b.Low, b.High))] : [];

    /// <summary>A wall's left and right end as seen facing it from inside.</summary>
    public (Point3 Left, Point3 Right) Ends(Wall wall, Length height)
    {
        Point3 At(PlaceInPlan corner) => Corner(corner, height);
        return wall switch
        {
            Wall.Back => (At(PlaceInPlan.LeftBack), At(PlaceInPlan.RightBack)),
            Wall.Left => (At(PlaceInPlan.LeftFront), At(PlaceInPlan.LeftBack)),
            _ => (At(PlaceInPlan.RightBack), At(PlaceInPlan.RightFront)),
        };
    }

    private IEnumerable<(Length Low, Length High)> Levels()
    {
        var heights = _floor
            .Concat(_ceiling)
            .Select(corner => corner.Z)
            .Concat(_readings.WallHeights)
            .Append(Length.Zero);
        var levels = heights.Distinct().Where(height => height <= Top).Order().ToList();
        return levels.Count == 1 ? [(levels[0], levels[0])] : levels.Zip(levels.Skip(1));
    }

    private IEnumerable<WallFace> Band(Length low, Length high)
    {
        WallFace Face(Wall wall, Func<Length, Point3> left, Func<Length, Point3> right) =>
            new(wall, [left(low), right(low), right(high), left(high)]);
        foreach (var wall in new[] { Wall.Back, Wall.Left, Wall.Right })
        {
            Point3 Left(Length height) => Ends(wall, height).Left;
            Point3 Right(Length height) => Ends(wall, height).Right;
            Point3 Middle(Length height) => HalfWay(wall, height);
            if (wall == Wall.Back ? Back.HasMiddle : Sides.HasMiddle)
            {
                yield return Face(wall, Left, Middle);
                yield return Face(wall, Middle, Right);
            }
            else
            {
                yield return Face(wall, Left, Right);
            }
        }
    }

    private Point3 HalfWay(Wall wall, Length height)
    {
        var (left, right) = Ends(wall, height);
        decimal z = height.Nanometres;
        decimal Mean(Length a, Length b) => (a + b).Nanometres / 2m;
        return wall switch
        {
            Wall.Back => new(Down(Mean(left.X, right.X)), Down(Back.At(PlaceInPlan.Middle, z)), height),
            Wall.Left => new(Up(Sides.Left(PlaceInPlan.Middle, z)), Down(Mean(left.Y, right.Y)), height),
            _ => new(Down(Sides.Right(PlaceInPlan.Middle, z)), Down(Mean(left.Y, right.Y)), height),
        };
    }

    private Point3 Corner(PlaceInPlan corner, Length height)
    {
        decimal z = height.Nanometres;
        return corner switch
        {
            PlaceInPlan.LeftFront => new(Up(Sides.Left(PlaceInPlan.Front, z)), Length.Zero, height),
            PlaceInPlan.RightFront => new(Down(Sides.Right(PlaceInPlan.Front, z)), Length.Zero, height),
            PlaceInPlan.LeftBack => new(
                Up(Sides.Left(PlaceInPlan.Back, z)),
                Down(Back.At(PlaceInPlan.Left, z)),
                height
            ),
            _ => new(Down(Sides.Right(PlaceInPlan.Back, z)), Down(Back.At(PlaceInPlan.Right, z)), height),
        };
    }

    /// <summary>How far the floor lies below its high point; where nobody read it, not at all.</summary>
    private Length Fall(PlaceInPlan corner) =>
        _readings.Of(RoomReadingKind.Floor, corner).Select(r => r.Value.Length).DefaultIfEmpty().Max();

    /// <summary>The ceiling at a corner; where nobody read it, the lowest that was read.</summary>
    private Length CeilingAt(PlaceInPlan corner)
    {
        var here = _readings.Of(RoomReadingKind.Ceiling, corner).Select(r => r.Value.Length).ToList();
        var any = here.Count > 0 ? here : [.. _readings.Of(RoomReadingKind.Ceiling).Select(r => r.Value.Length)];
        return any.Count > 0 ? any.Min() : Length.Max(DrawnHeight, _readings.WallHeights.DefaultIfEmpty().Max());
    }

    private static Length Up(decimal nanometres) => new((long)decimal.Ceiling(nanometres));

    private static Length Down(decimal nanometres) => new((long)decimal.Floor(nanometres));
}

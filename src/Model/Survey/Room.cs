using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Survey;

/// <summary>The recess as read: wall faces, floor, ceiling, the things in it, and the box that fits inside at any height.</summary>
/// <remarks>
/// Frame: x to the right along the opening, y into the recess, z up from the floor's high point; origin at the left front
/// corner on the floor. Widths are parallel to the opening, depths square to it. Walls are straight between readings and
/// lean as read; redundant readings are kept with the document, not adjusted here: the narrowest governs. A wall no reading
/// settles is square to the opening and plumb.
/// </remarks>
/// <param name="Walls">The back, left and right wall, each one face from floor to ceiling; none when width or depth were not read.</param>
/// <param name="Floor">Four floor corners in space: left front, right front, right back, left back; none when there are no walls.</param>
/// <param name="Ceiling">Four ceiling corners in space, in the same order; none when the ceiling was not read.</param>
/// <param name="Things">What is on the walls, placed.</param>
/// <param name="Sizes">Names formulas may use, with their values: <c>room.width</c>, <c>window-1.bottom</c>, …</param>
/// <param name="Findings">What is missing or odd in the readings.</param>
public sealed record Room(
    IReadOnlyList<WallFace> Walls,
    IReadOnlyList<Point3> Floor,
    IReadOnlyList<Point3> Ceiling,
    IReadOnlyList<PlacedThing> Things,
    IReadOnlyDictionary<string, Traced> Sizes,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>
    /// The same walls as read: in bands between the heights of the readings, in two halves where the middle was read. The
    /// envelope follows these; empty when the three faces say all there is.
    /// </summary>
    public IReadOnlyList<WallFace> Bands { get; init; } = [];

    internal IReadOnlyList<WallFace> FacesAsRead => Bands.Count > 0 ? Bands : Walls;

    /// <summary>The recess that a job's readings describe; whatever is missing or odd in them is among its findings.</summary>
    public static Room Of(Project project)
    {
        var intake = new ReadingIntake(project.Units);
        foreach (var reading in project.Room.Readings)
            intake.Add(reading);
        var readings = new SurveyedReadings(intake.Taken);
        var shape = new RecessShape(readings);
        var bare = new Room(shape.Walls, shape.Floor, shape.Ceiling, [], new Dictionary<string, Traced>(), [])
        {
            Bands = shape.Bands,
        };
        var whole = RoomEnvelope.Of(bare, Length.Zero, Length.Max(Length.Zero, shape.Top));
        var sizes = RoomSizes.Of(readings, shape, whole);
        var things = new ThingPlacing(project.Units, readings, shape, sizes);
        foreach (var thing in project.Room.Things)
            things.Place(thing);
        var findings = intake
            .Findings.Concat(RoomChecks.Of(project.Units, readings, shape, sizes))
            .Concat(things.Findings);
        return bare with { Things = things.Placed, Sizes = sizes, Findings = [.. findings] };
    }

    /// <summary>The largest upright box, square to the opening, that fits between two heights.</summary>
    /// <param name="low">The lower height above the floor's high point.</param>
    /// <param name="high">The upper height; not below the lower.</param>
    public RoomEnvelope Envelope(Length low, Length high) => RoomEnvelope.Of(this, low, high);
}

/// <summary>A wall's face: a quadrilateral in space.</summary>
/// <param name="Wall">Which wall.</param>
/// <param name="Corners">
/// Four corners, as seen facing the wall from inside the recess: lower left, lower right, upper right, upper left.
/// </param>
public sealed record WallFace(Wall Wall, IReadOnlyList<Point3> Corners);

/// <summary>A thing on a wall, placed in the room.</summary>
/// <param name="Thing">As described.</param>
/// <param name="Corners">Its outline on the wall's face: lower left, lower right, upper right, upper left, as seen facing the wall.</param>
/// <param name="Projection">How far it stands out from the wall.</param>
public sealed record PlacedThing(RoomThing Thing, IReadOnlyList<Point3> Corners, Length Projection);

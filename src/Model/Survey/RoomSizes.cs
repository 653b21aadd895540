using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>The names a room gives to formulas, and what they come from.</summary>
/// <remarks>
/// <c>room.width</c>, <c>room.depth</c>: the narrowest width and the smallest depth read anywhere. <c>room.height</c>: the
/// lowest ceiling above the floor's high point. <c>room.floor.fall</c>: the floor's largest fall. <c>room.front.width</c>,
/// <c>room.middle.width</c>, <c>room.back.width</c>, <c>room.left.depth</c>, <c>room.middle.depth</c>,
/// <c>room.right.depth</c>: the smallest read there. <c>room.left</c>, <c>room.right</c> (x) and <c>room.back</c> (y): the
/// sides of the largest upright box that fits from floor to ceiling; where walls lean it is narrower than every width.
/// <c>room.ID</c>: a reading by its id.
/// </remarks>
internal static class RoomSizes
{
    public static Dictionary<string, Traced> Of(SurveyedReadings readings, RecessShape shape, RoomEnvelope whole)
    {
        var sizes = new Dictionary<string, Traced>();
        void Add(string name, Traced? value)
        {
            if (value is not null)
                sizes.TryAdd(name, value.Called(name));
        }
        Add("room.width", Smallest(readings.Of(RoomReadingKind.Width)));
        Add("room.depth", Smallest(readings.Of(RoomReadingKind.Depth)));
        Add("room.height", Smallest(readings.Of(RoomReadingKind.Ceiling)));
        Add("room.floor.fall", Largest(readings.Of(RoomReadingKind.Floor)));
        foreach (var at in new[] { PlaceInPlan.Front, PlaceInPlan.Middle, PlaceInPlan.Back })
            Add($"room.{RoomWords.Of(at)}.width", Smallest(readings.Of(RoomReadingKind.Width, at)));
        foreach (var at in new[] { PlaceInPlan.Left, PlaceInPlan.Middle, PlaceInPlan.Right })
            Add($"room.{RoomWords.Of(at)}.depth", Smallest(readings.Of(RoomReadingKind.Depth, at)));
        if (shape.HasWalls)
        {
            Add("room.left", FromWalls(whole.Left, "left-wall", Sideways(readings)));
            Add("room.right", FromWalls(whole.Right, "right-wall", Sideways(readings)));
            Add("room.back", FromWalls(whole.Back, "back-wall", Inward(readings)));
        }
        // Last, so that a reading's id never takes one of the names above.
        foreach (var reading in readings.All)
            sizes.TryAdd(reading.Value.Name!, reading.Value);
        return sizes;
    }

    /// <summary>A place on the walls, which all these readings together set.</summary>
    public static Traced FromWalls(Length value, string operation, IEnumerable<TakenReading> readings) =>
        Traced.Worked(Quantity.Of(value), operation, [.. readings.Select(r => r.Value)]);

    /// <summary>The readings that say where the side walls are.</summary>
    public static IEnumerable<TakenReading> Sideways(SurveyedReadings readings)
    {
        var anyDiagonal = readings.Of(RoomReadingKind.Diagonal).Any();
        return readings.All.Where(r =>
            r.Kind is RoomReadingKind.Width or RoomReadingKind.Diagonal
            || r is { Kind: RoomReadingKind.Lean, At: PlaceInPlan.Left or PlaceInPlan.Right }
            || (anyDiagonal && r.Kind == RoomReadingKind.Depth)
        );
    }

    /// <summary>The readings that say where the back wall is.</summary>
    public static IEnumerable<TakenReading> Inward(SurveyedReadings readings) =>
        readings.All.Where(r =>
            r.Kind == RoomReadingKind.Depth || r is { Kind: RoomReadingKind.Lean, At: PlaceInPlan.Back }
        );

    private static Traced? Smallest(IEnumerable<TakenReading> readings) => Governing(readings, Traced.Min);

    private static Traced? Largest(IEnumerable<TakenReading> readings) => Governing(readings, Traced.Max);

    private static Traced? Governing(IEnumerable<TakenReading> readings, Func<IReadOnlyList<Traced>, Traced> choose)
    {
        var values = readings.Select(r => r.Value).ToList();
        return values.Count > 1 ? choose(values) : values.SingleOrDefault();
    }
}

using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Survey;

/// <summary>What is missing among the readings of a recess, and where they contradict each other.</summary>
internal static class RoomChecks
{
    private const string CommonPractice = "common practice, no source";

    /// <summary>Redundant readings that differ by more are taken for a misread mark rather than a crooked wall.</summary>
    private static readonly Length Gross = Length.FromMillimetres(10);

    /// <summary>A side wall further out of square than this, per unit of depth, is taken for a misread diagonal.</summary>
    private const decimal GrossSplay = 0.1m;

    public static IEnumerable<Finding> Of(
        LengthUnit unit,
        SurveyedReadings readings,
        RecessShape shape,
        IReadOnlyDictionary<string, Traced> sizes
    ) =>
        Missing(readings)
            .Concat(Diagonals(readings, shape, unit))
            .Concat(NamesTaken(readings, sizes))
            .Concat(Crossing(shape));

    private static IEnumerable<Finding> Missing(SurveyedReadings readings)
    {
        Finding NotMeasured(string what, string todo) =>
            new("room.not-measured", Severity.Warning, $"The recess's {what} has not been read: {todo}", []);
        Finding Assumed(string rule, string message) => new(rule, Severity.Note, message, [], CommonPractice);

        if (readings.All.Count == 0)
        {
            yield return NotMeasured("size", "start with its width, its depth and the height of the ceiling.");
            yield break;
        }
        if (!readings.Of(RoomReadingKind.Width).Any())
            yield return NotMeasured("width", "take it at front and back, at the floor and higher up.");
        if (!readings.Of(RoomReadingKind.Depth).Any())
            yield return NotMeasured("depth", "take it at the left and at the right wall.");
        if (!readings.Of(RoomReadingKind.Ceiling).Any())
            yield return NotMeasured(
                "height",
                "take it from the floor's high point up to the ceiling at each corner. Until then nothing is checked against the ceiling."
            );
        if (!readings.Of(RoomReadingKind.Floor).Any())
            yield return Assumed("room.floor-assumed-level", "No fall of the floor was read; it is taken as level.");
        if (!readings.Of(RoomReadingKind.Lean).Any(r => r.At is PlaceInPlan.Left or PlaceInPlan.Right))
            yield return Assumed(
                "room.walls-assumed-plumb",
                "No lean of a side wall was read: the left wall is taken as plumb. Hold a level to both walls; two walls that lean the same way leave less room than any width shows."
            );
    }

    private static IEnumerable<Finding> Diagonals(SurveyedReadings readings, RecessShape shape, LengthUnit unit)
    {
        if (!shape.HasWalls)
            yield break;
        var corners = shape.Sides.Corners;
        if (corners.ByDiagonal == 0)
            yield return new(
                "room.no-diagonal",
                Severity.Note,
                "No diagonal sets the back corners: the left wall is taken as square to the opening. Take both diagonals in plan.",
                [],
                CommonPractice
            );
        foreach (var reading in corners.Impossible)
            yield return new(
                "room.diagonal-not-possible",
                Severity.Warning,
                $"Diagonal {Id(reading)} ({Print(reading.Value.Length, unit)}) does not close a triangle with the width and the depth; it is left out. Take it again.",
                [Id(reading)]
            );
        if (Math.Abs(corners.Disagreement) > Gross.Nanometres)
            yield return new(
                "room.readings-disagree",
                Severity.Warning,
                $"The two diagonals and the back width differ by {Print(new((long)Math.Abs(corners.Disagreement)), unit)}; the width governs. Take all three again.",
                [.. readings.Of(RoomReadingKind.Diagonal).Select(Id)],
                CommonPractice
            );
        foreach (var finding in Splayed(readings, shape, unit))
            yield return finding;
    }

    private static IEnumerable<Finding> Splayed(SurveyedReadings readings, RecessShape shape, LengthUnit unit)
    {
        var corners = shape.Sides.Corners;
        var splay = new Length((long)corners.Left);
        if (corners.ByDiagonal == 0 || Math.Abs(corners.Left) <= GrossSplay * shape.Back.At(PlaceInPlan.Left, 0))
            yield break;
        yield return new(
            "room.diagonal-doubtful",
            Severity.Warning,
            $"By its diagonals the left wall is {Print(splay.Abs(), unit)} out of square over the recess's depth. If it is not, take the diagonals again.",
            [.. readings.Of(RoomReadingKind.Diagonal).Select(Id)],
            CommonPractice
        );
    }

    private static IEnumerable<Finding> NamesTaken(
        SurveyedReadings readings,
        IReadOnlyDictionary<string, Traced> sizes
    ) =>
        readings
            .All.Where(r => !ReferenceEquals(sizes[r.Value.Name!], r.Value))
            .Select(r => new Finding(
                "room.name-taken",
                Severity.Warning,
                $"Formulas that say {r.Value.Name} do not mean reading {Id(r)}: something else has that name. Give the reading another id.",
                [Id(r)]
            ));

    private static IEnumerable<Finding> Crossing(RecessShape shape)
    {
        if (shape.HasWalls && (Crosses(shape.Floor) || (shape.HasCeiling && Crosses(shape.Ceiling))))
            yield return new(
                "room.walls-cross",
                Severity.MustMend,
                "By these readings the walls of the recess cross each other; look at the leans and at the heights they were taken over.",
                []
            );
    }

    private static bool Crosses(IReadOnlyList<Point3> plan) =>
        plan[1].X <= plan[0].X || plan[2].X <= plan[3].X || !plan[2].Y.IsPositive || !plan[3].Y.IsPositive;

    private static string Id(TakenReading reading) => reading.Value.Name!["room.".Length..];

    private static string Print(Length length, LengthUnit unit) => LengthText.Write(length, unit);
}

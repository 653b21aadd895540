using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Survey;

namespace Nookwright.Tests.Survey;

/// <summary>Surveys for tests, in millimetres.</summary>
internal static class SurveyGiven
{
    public static RoomReading Width(PlaceInPlan at, string value, string? height = null) =>
        Reading(RoomReadingKind.Width, at, value, height);

    public static RoomReading Depth(PlaceInPlan at, string value, string? height = null) =>
        Reading(RoomReadingKind.Depth, at, value, height);

    public static RoomReading Diagonal(PlaceInPlan at, string value, string? height = null) =>
        Reading(RoomReadingKind.Diagonal, at, value, height);

    public static RoomReading Lean(PlaceInPlan at, string value, string? over) =>
        Reading(RoomReadingKind.Lean, at, value, over);

    public static RoomReading Ceiling(PlaceInPlan at, string value) =>
        Reading(RoomReadingKind.Ceiling, at, value, null);

    public static RoomReading Floor(PlaceInPlan at, string value) => Reading(RoomReadingKind.Floor, at, value, null);

    /// <summary>A room whose readings are called r1, r2, … in this order.</summary>
    public static Room RoomOf(params IEnumerable<RoomReading> readings) => RoomWith([], readings);

    public static Room RoomWith(IReadOnlyList<RoomThing> things, params IEnumerable<RoomReading> readings) =>
        Room.Of(
            new Project
            {
                Units = LengthUnit.Millimetres,
                Room = new()
                {
                    Readings = [.. readings.Select((r, i) => r with { Id = $"r{i + 1}" })],
                    Things = things,
                },
            }
        );

    public static IEnumerable<string> Rules(Room room) => room.Findings.Select(finding => finding.Rule);

    private static RoomReading Reading(RoomReadingKind kind, PlaceInPlan at, string value, string? height) =>
        new()
        {
            Id = "",
            Kind = kind,
            At = at,
            Value = value,
            Height = height is null ? (SizeText?)null : new SizeText(height),
            Date = new(2026, 11, 2),
        };
}

using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Survey;

/// <summary>Takes in the readings as written: those that can be used, and a finding for each that cannot.</summary>
internal sealed class ReadingIntake(LengthUnit unit)
{
    private static readonly PlaceInPlan[] Corners =
    [
        PlaceInPlan.LeftFront,
        PlaceInPlan.RightFront,
        PlaceInPlan.LeftBack,
        PlaceInPlan.RightBack,
        PlaceInPlan.Middle,
    ];

    /// <summary>Longer than any recess; keeps squares of nanometres well within what a decimal holds.</summary>
    public static readonly Length Longest = Length.FromMillimetres(100_000);

    public List<TakenReading> Taken { get; } = [];

    public List<Finding> Findings { get; } = [];

    public void Add(RoomReading reading)
    {
        if (reading.Value is not { } written)
            Note(reading, "room.reading-awaited", "has not been taken yet; sizes that use it cannot be worked out.");
        else if (!Places(reading.Kind).Contains(reading.At))
            Refuse(reading, "room.reading-misplaced", $"{Misplaced(reading)}", "at");
        else if (reading is { Kind: RoomReadingKind.Lean, Height: null })
            Refuse(reading, "room.lean-without-height", "needs the height it was taken over; add it.", "height");
        else if (Read(reading, written, "value") is { } value && Height(reading) is { } height)
            Add(reading, height, value);
    }

    private void Add(RoomReading reading, Length height, Length value)
    {
        var name = $"room.{reading.Id}";
        if (Trouble(reading.Kind, height, value) is { } trouble)
            Refuse(reading, "room.reading-not-possible", trouble, "value");
        else
            Taken.Add(new(reading.Kind, reading.At, height, Traced.Read(value, name, reading.Date, isTaken: true)));
    }

    private string? Trouble(RoomReadingKind kind, Length height, Length value) =>
        kind switch
        {
            _ when value.Abs() > Longest || height.Abs() > Longest =>
                $"is more than {Print(Longest)}; no recess is that large. Look at the number again.",
            RoomReadingKind.Lean when !height.IsPositive =>
                $"is taken over {Print(height)}; a lean needs a height above nought.",
            RoomReadingKind.Lean => null,
            RoomReadingKind.Floor when value.IsNegative =>
                $"says the floor lies {Print(-value)} above its high point; measure all floor readings down from the highest place.",
            RoomReadingKind.Floor => null,
            _ when !value.IsPositive => $"says {Print(value)}; a distance is above nought. Look at the tape again.",
            _ when height.IsNegative =>
                $"is taken {Print(-height)} below the floor's high point; give its height above it.",
            _ => null,
        };

    private static PlaceInPlan[] Places(RoomReadingKind kind) =>
        kind switch
        {
            RoomReadingKind.Width => [PlaceInPlan.Front, PlaceInPlan.Middle, PlaceInPlan.Back],
            RoomReadingKind.Depth => [PlaceInPlan.Left, PlaceInPlan.Middle, PlaceInPlan.Right],
            RoomReadingKind.Diagonal => [PlaceInPlan.LeftFront, PlaceInPlan.RightFront],
            RoomReadingKind.Lean => [PlaceInPlan.Left, PlaceInPlan.Right, PlaceInPlan.Back],
            _ => Corners,
        };

    private static string Misplaced(RoomReading reading)
    {
        var places = Places(reading.Kind).Select(RoomWords.Of).ToList();
        var list = string.Join(", ", places[..^1]) + " or " + places[^1];
        return $"is a {RoomWords.Of(reading.Kind)} at {RoomWords.Of(reading.At)}; take it at {list}.";
    }

    /// <summary>A height nobody wrote is the floor's.</summary>
    private Length? Height(RoomReading reading) =>
        reading.Height is { } height ? Read(reading, height, "height") : Length.Zero;

    /// <summary>A sum is allowed, since an inside reading is often the tape's mark and the tape's own length.</summary>
    private Length? Read(RoomReading reading, SizeText written, string field)
    {
        var path = $"room/readings/{reading.Id}/{field}";
        var outcome = Formula.Read(written.Text, path).Then(sum => sum.EvaluateLength(NoNames, unit));
        if (outcome.Take(out var value, out var refusal))
            return value.Length;
        Refuse(reading, "room.reading-unclear", $"cannot be used: {refusal.Message}", field);
        return null;
    }

    private static Outcome<Traced> NoNames(string name) =>
        new Refusal($"a reading is what the tape said, and \"{name}\" is a name; write the number.");

    private void Refuse(RoomReading reading, string rule, string what, string field) =>
        Findings.Add(
            new(rule, Severity.MustMend, $"Reading {reading.Id} {what}", [reading.Id])
            {
                Field = $"room/readings/{reading.Id}/{field}",
                IsUnreadable = true,
            }
        );

    private void Note(RoomReading reading, string rule, string what) =>
        Findings.Add(new(rule, Severity.Note, $"Reading {reading.Id} {what}", [reading.Id]));

    private string Print(Length length) => LengthText.Write(length, unit);
}

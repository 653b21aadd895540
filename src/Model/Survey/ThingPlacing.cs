using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Survey;

/// <summary>Puts the things of a room on its walls, and their sides among the names formulas use.</summary>
/// <remarks>
/// <c>ID.left</c> and <c>ID.right</c> are x for a thing on the back wall, y for one on a side wall; left as seen facing the
/// wall, so that on the right wall the left side has the larger y. <c>ID.bottom</c> and <c>ID.top</c> are heights above
/// the floor's high point. A height nobody gave reaches to the ceiling; a stud is placed by its centre line.
/// </remarks>
internal sealed class ThingPlacing(
    LengthUnit unit,
    SurveyedReadings readings,
    RecessShape shape,
    Dictionary<string, Traced> sizes
)
{
    private const string Unclear = "room.thing-unclear";

    private readonly AlongWalls _walls = new(readings, shape);

    public List<PlacedThing> Placed { get; } = [];

    public List<Finding> Findings { get; } = [];

    public void Place(RoomThing thing)
    {
        var before = Findings.Count;
        var bottom = Read(thing, thing.Bottom, "bottom") ?? Rule("the floor's high point");
        var height = Read(thing, thing.Height, "height") ?? ToCeiling(bottom);
        var projection = Read(thing, thing.Projection, "projection") ?? Rule("flush with the wall");
        var span = Span(thing, bottom.Length);
        if (Findings.Count > before)
            return;
        var top = bottom + height;
        Name(thing, span, (bottom, top, height, projection));
        Check(thing, span, bottom.Length, top.Length);
        if (shape.HasWalls)
            Placed.Add(new(thing, Corners(thing.Wall, span, bottom.Length, top.Length), projection.Length));
    }

    /// <summary>Where along its wall a thing begins and how wide it is; end to end when it does not say.</summary>
    private (Traced From, Traced Width) Span(RoomThing thing, Length height)
    {
        var whole = _walls.LengthOf(thing.Wall, height);
        var along = Read(thing, thing.Along, "along");
        var width = Read(thing, thing.Width, "width");
        if (along is null)
            return (Rule("from the wall's left end"), width ?? whole);
        width ??= Rule("no width given");
        return (thing.Kind == RoomThingKind.Stud ? along - (width / 2) : along, width);
    }

    private Traced ToCeiling(Traced bottom) =>
        sizes.TryGetValue("room.height", out var ceiling) ? ceiling - bottom : Rule("no height given, no ceiling read");

    private void Name(
        RoomThing thing,
        (Traced From, Traced Width) span,
        (Traced Bottom, Traced Top, Traced Height, Traced Projection) rest
    )
    {
        if (shape.HasWalls)
        {
            Add(thing, "left", _walls.OnAxis(thing.Wall, span.From, rest.Bottom.Length));
            Add(thing, "right", _walls.OnAxis(thing.Wall, span.From + span.Width, rest.Bottom.Length));
        }
        Add(thing, "width", span.Width);
        Add(thing, "bottom", rest.Bottom);
        Add(thing, "top", rest.Top);
        Add(thing, "height", rest.Height);
        Add(thing, "projection", rest.Projection);
    }

    private void Add(RoomThing thing, string side, Traced value) =>
        sizes.TryAdd($"{thing.Id}.{side}", value.Called($"{thing.Id}.{side}"));

    private IReadOnlyList<Point3> Corners(Wall wall, (Traced From, Traced Width) span, Length bottom, Length top)
    {
        var (from, to) = (span.From.Length, (span.From + span.Width).Length);
        return
        [
            _walls.Point(wall, from, bottom),
            _walls.Point(wall, to, bottom),
            _walls.Point(wall, to, top),
            _walls.Point(wall, from, top),
        ];
    }

    private void Check(RoomThing thing, (Traced From, Traced Width) span, Length bottom, Length top)
    {
        if (!shape.HasWalls)
            return;
        var (from, to) = (span.From.Length, (span.From + span.Width).Length);
        var wall = _walls.LengthOf(thing.Wall, bottom).Length;
        if (from.IsNegative)
            Outside(thing, $"begins {Print(-from)} before the {RoomWords.Of(thing.Wall)}'s left end", "along");
        if (to > wall && thing.Along is not null)
            Outside(thing, $"ends {Print(to - wall)} beyond the {RoomWords.Of(thing.Wall)}'s right end", "along");
        if (top > shape.Top && shape.HasCeiling)
            Outside(thing, $"reaches {Print(top - shape.Top)} above the ceiling", "bottom");
    }

    private void Outside(RoomThing thing, string what, string field) =>
        Find(thing, "room.thing-outside-wall", $"{thing.Id} {what}; measure it again, or the wall.", field);

    private Traced? Read(RoomThing thing, SizeText? written, string field)
    {
        if (written is not { } text)
            return null;
        var path = $"room/things/{thing.Id}/{field}";
        var outcome = Formula.Read(text.Text, path).Then(sum => sum.EvaluateLength(Known, unit));
        if (!outcome.Take(out var value, out var refusal))
            Find(thing, Unclear, $"{thing.Id}'s {field} cannot be used: {refusal.Message}", field);
        else if (value.Length.IsNegative && field is not ("along" or "bottom"))
            Find(thing, Unclear, $"{thing.Id}'s {field} is {Print(value.Length)}; it cannot be below nought.", field);
        else if (value.Length.Abs() > ReadingIntake.Longest)
            Find(thing, Unclear, $"{thing.Id}'s {field} is longer than any recess; look at the number again.", field);
        else
            return value;
        return null;
    }

    private Outcome<Traced> Known(string name) =>
        sizes.TryGetValue(name, out var size)
            ? size
            : new Refusal($"there is no \"{name}\" among the room's readings; write the number.");

    private void Find(RoomThing thing, string rule, string message, string field) =>
        Findings.Add(
            new(rule, rule == Unclear ? Severity.MustMend : Severity.Warning, message, [thing.Id])
            {
                Field = $"room/things/{thing.Id}/{field}",
                IsUnreadable = rule == Unclear,
            }
        );

    private static Traced Rule(string rule) => Traced.ByRule(Length.Zero, rule);

    private string Print(Length length) => LengthText.Write(length, unit);
}

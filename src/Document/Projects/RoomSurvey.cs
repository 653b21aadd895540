using System.Text.Json.Serialization;
using Nookwright.Measure;
using Nookwright.Records;

namespace Nookwright.Projects;

/// <summary>Everything read of the recess, as taken, and the things in it.</summary>
public sealed record RoomSurvey : Kept
{
    /// <summary>The readings, in the order they were taken; repeats are kept.</summary>
    public IReadOnlyList<RoomReading> Readings { get; init; } = [];

    /// <summary>What is on or in the walls.</summary>
    public IReadOnlyList<RoomThing> Things { get; init; } = [];
}

/// <summary>One reading of the recess.</summary>
/// <remarks>
/// Width: between the side walls, <c>at</c> front, middle or back, at a height. Depth: from the opening line to the back
/// wall, at left, middle or right, at a height. Diagonal: between opposite corners in plan, at <c>left-front</c> (to the
/// right back corner) or <c>right-front</c> (to the left back corner). Lean: a plumb offset of the left, right or back
/// wall: how much further into the recess's space the wall stands at the top of the stated <c>height</c> than at the
/// floor; negative when it leans away. Floor: how far the floor lies below the level line through its high point, at a
/// corner (<c>left-front</c>, <c>right-front</c>, <c>left-back</c>, <c>right-back</c>) or <c>middle</c>. Ceiling: from the
/// floor's high-point level up to the ceiling at a corner or the middle.
/// </remarks>
public sealed record RoomReading : Kept
{
    /// <summary>The reading's id; formulas may use its value as <c>room.ID</c>.</summary>
    public required string Id { get; init; }

    /// <summary>What was measured.</summary>
    [JsonRequired]
    public RoomReadingKind Kind { get; init; }

    /// <summary>Where in plan.</summary>
    [JsonRequired]
    public PlaceInPlan At { get; init; }

    /// <summary>The height of the reading above the floor's high point; for a lean, the height it was taken over.</summary>
    public SizeText? Height { get; init; }

    /// <summary>What the tape said; null for "not measured".</summary>
    public SizeText? Value { get; init; }

    /// <summary>Which tape or level.</summary>
    public string? Tape { get; init; }

    /// <summary>The day.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>Anything worth remembering.</summary>
    public string? Note { get; init; }
}

/// <summary>What a reading of the recess measures; see <see cref="RoomReading"/>.</summary>
public enum RoomReadingKind
{
    /// <summary>Between the side walls.</summary>
    Width,

    /// <summary>From the opening line to the back wall.</summary>
    Depth,

    /// <summary>Between opposite corners in plan.</summary>
    Diagonal,

    /// <summary>Plumb offset of a wall over a height.</summary>
    Lean,

    /// <summary>Fall of the floor below its high point.</summary>
    Floor,

    /// <summary>Height of the ceiling.</summary>
    Ceiling,
}

/// <summary>A place in the recess's plan.</summary>
public enum PlaceInPlan
{
    /// <summary>On the opening line.</summary>
    Front,

    /// <summary>Half-way in, or the middle of the floor or ceiling.</summary>
    Middle,

    /// <summary>At the back wall.</summary>
    Back,

    /// <summary>At the left wall.</summary>
    Left,

    /// <summary>At the right wall.</summary>
    Right,

    /// <summary>The left corner of the opening.</summary>
    LeftFront,

    /// <summary>The right corner of the opening.</summary>
    RightFront,

    /// <summary>The left back corner.</summary>
    LeftBack,

    /// <summary>The right back corner.</summary>
    RightBack,
}

/// <summary>Something on or in a wall.</summary>
public sealed record RoomThing : Kept
{
    /// <summary>The thing's id; formulas may use <c>ID.left</c>, <c>ID.right</c>, <c>ID.bottom</c>, <c>ID.top</c>.</summary>
    public required string Id { get; init; }

    /// <summary>What it is.</summary>
    [JsonRequired]
    public RoomThingKind Kind { get; init; }

    /// <summary>Which wall it is on.</summary>
    [JsonRequired]
    public Wall Wall { get; init; }

    /// <summary>
    /// From the wall's left end, as seen facing it from inside the recess, to the thing's left edge: the left wall's left
    /// end is at the opening, the right wall's at the back. Null means from end to end.
    /// </summary>
    public SizeText? Along { get; init; }

    /// <summary>Its width along the wall; null with <see cref="Along"/> null for the whole wall.</summary>
    public SizeText? Width { get; init; }

    /// <summary>Its lower edge above the floor's high point; the floor when null.</summary>
    public SizeText? Bottom { get; init; }

    /// <summary>Its height.</summary>
    public SizeText? Height { get; init; }

    /// <summary>How far it stands out from the wall (a baseboard's thickness); none when null.</summary>
    public SizeText? Projection { get; init; }

    /// <summary>Anything worth remembering.</summary>
    public string? Note { get; init; }
}

/// <summary>Kinds of things in a room.</summary>
public enum RoomThingKind
{
    /// <summary>A receptacle.</summary>
    Outlet,

    /// <summary>A switch.</summary>
    Switch,

    /// <summary>A register or return.</summary>
    Vent,

    /// <summary>A pipe or cable.</summary>
    Pipe,

    /// <summary>A stud behind the wall's face, by its centre line and width.</summary>
    Stud,

    /// <summary>A baseboard.</summary>
    Baseboard,

    /// <summary>A window opening.</summary>
    Window,

    /// <summary>A door opening.</summary>
    Door,

    /// <summary>A casing round an opening.</summary>
    Casing,

    /// <summary>Anything else.</summary>
    Other,
}

/// <summary>A wall of the recess.</summary>
public enum Wall
{
    /// <summary>The back wall.</summary>
    Back,

    /// <summary>The left side wall.</summary>
    Left,

    /// <summary>The right side wall.</summary>
    Right,
}

using System.Text.Json.Serialization;
using Nookwright.Measure;
using Nookwright.Records;
using Nookwright.Shop;

namespace Nookwright.Projects;

/// <summary>The document: what a person said, measured or issued for one job; everything else is derived from it.</summary>
public sealed record Project : Kept
{
    /// <summary>What kind of file this is: always <c>nookwright-job</c>.</summary>
    [JsonRequired]
    public string Format { get; init; } = "nookwright-job";

    /// <summary>The version of the document's form, for upgrades.</summary>
    [JsonRequired]
    public int Version { get; init; } = 1;

    /// <summary>The job's name, as on the packet's cover.</summary>
    public string Name { get; init; } = "";

    /// <summary>What a bare number means, and what sizes are shown in.</summary>
    [JsonRequired]
    public LengthUnit Units { get; init; }

    /// <summary>The shop's smallest mark, to which finished sizes are rounded; null for 1/32 in or 0.5 mm.</summary>
    public SizeText? Mark { get; init; }

    /// <summary>The paper the packet is printed on.</summary>
    public PaperSize Paper { get; init; }

    /// <summary>Free notes.</summary>
    public string? Note { get; init; }

    /// <summary>What is in the shop.</summary>
    public Workshop Shop { get; init; } = new();

    /// <summary>The real place, as read.</summary>
    public RoomSurvey Room { get; init; } = new();

    /// <summary>Named sizes that formulas may use, in the maker's order.</summary>
    public IReadOnlyList<NamedSize> Sizes { get; init; } = [];

    /// <summary>Readings of things this job builds, taken or awaited.</summary>
    public IReadOnlyList<BuiltReading> Readings { get; init; } = [];

    /// <summary>What is built, in the maker's order.</summary>
    public IReadOnlyList<Piece> Pieces { get; init; } = [];

    /// <summary>Pieces that stand in a row or a stack, each placed against the one before.</summary>
    public IReadOnlyList<Row> Rows { get; init; } = [];

    /// <summary>Parts cut in order from one strip so that the figure runs across them.</summary>
    public IReadOnlyList<GrainRun> Runs { get; init; } = [];

    /// <summary>Match groups added by hand.</summary>
    public IReadOnlyList<HandMatch> Matches { get; init; } = [];

    /// <summary>What the maker wishes of the cutting plan.</summary>
    public CuttingWishes Cutting { get; init; } = new();

    /// <summary>The rounds of the cutting plan that are being cut or have been, the first one first.</summary>
    public IReadOnlyList<IssuedRound> Issued { get; init; } = [];
}

/// <summary>Paper for the packet.</summary>
public enum PaperSize
{
    /// <summary>8 1/2 × 11 in.</summary>
    Letter,

    /// <summary>210 × 297 mm (ISO 216).</summary>
    A4,
}

/// <summary>A size with a name, for formulas.</summary>
public sealed record NamedSize : Kept
{
    /// <summary>The name formulas use.</summary>
    public required string Name { get; init; }

    /// <summary>The size or formula.</summary>
    public required SizeText Size { get; init; }

    /// <summary>What it is for.</summary>
    public string? Note { get; init; }
}

/// <summary>A reading of something this job builds, planned now and taken later; sizes that use it are held until then.</summary>
public sealed record BuiltReading : Kept
{
    /// <summary>The name formulas use (<c>run.width</c>).</summary>
    public required string Name { get; init; }

    /// <summary>What to measure, as a sentence.</summary>
    public string What { get; init; } = "";

    /// <summary>What it should come to.</summary>
    public required SizeText Planned { get; init; }

    /// <summary>What the tape said; null while nobody has read it.</summary>
    public SizeText? Taken { get; init; }

    /// <summary>The day it was taken.</summary>
    public DateOnly? Date { get; init; }
}

/// <summary>Pieces set side by side or on top of each other; a piece that gives its own place in that direction keeps it.</summary>
public sealed record Row : Kept
{
    /// <summary>The row's id.</summary>
    public required string Id { get; init; }

    /// <summary>Which way the next piece goes.</summary>
    public RowDirection Direction { get; init; }

    /// <summary>Ids of the pieces in order: from the left, from the bottom, from the front.</summary>
    [RefersTo("pieces")]
    public IReadOnlyList<string> Pieces { get; init; } = [];

    /// <summary>The gap between neighbours; none when null.</summary>
    public SizeText? Gap { get; init; }
}

/// <summary>Which way a row goes.</summary>
public enum RowDirection
{
    /// <summary>Each to the right of the one before.</summary>
    Right,

    /// <summary>Each on top of the one before.</summary>
    Up,

    /// <summary>Each behind the one before, into the recess.</summary>
    Back,
}

/// <summary>Parts cut in order from one strip so that the figure runs across them.</summary>
public sealed record GrainRun : Kept
{
    /// <summary>The run's id.</summary>
    public required string Id { get; init; }

    /// <summary>Panel ids in the order they are seen, from the left or from the bottom.</summary>
    public IReadOnlyList<string> Panels { get; init; } = [];

    /// <summary>Panels of the run after which it may go on in another strip, where no sheet is long enough for all, or where it saves one.</summary>
    public IReadOnlyList<string> MaySplitAfter { get; init; } = [];
}

/// <summary>Parts whose sizes must come out the same because the maker says so.</summary>
public sealed record HandMatch : Kept
{
    /// <summary>The group's id.</summary>
    public required string Id { get; init; }

    /// <summary>Panel ids.</summary>
    public IReadOnlyList<string> Panels { get; init; } = [];

    /// <summary>Which of the parts' dimensions must match.</summary>
    public MatchedSide Side { get; init; }

    /// <summary>Why, as a sentence for the card.</summary>
    public string? Because { get; init; }
}

/// <summary>A dimension of a part.</summary>
public enum MatchedSide
{
    /// <summary>The part's length.</summary>
    Length,

    /// <summary>The part's width.</summary>
    Width,

    /// <summary>Both.</summary>
    Both,
}

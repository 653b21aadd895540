using System.ComponentModel.DataAnnotations;
using Nookwright.Measure;
using Nookwright.Records;

namespace Nookwright.Projects;

/// <summary>A box: sides, bottom, top or stretchers, partitions, shelves, back.</summary>
public sealed record Carcass : Piece
{
    /// <summary>Outside, left to right as seen from its front.</summary>
    public required SizeText Width { get; init; }

    /// <summary>Outside, bottom to top.</summary>
    public required SizeText Height { get; init; }

    /// <summary>Outside, front to back, with an applied back and without doors.</summary>
    public required SizeText Depth { get; init; }

    /// <summary>Which member runs through at the corners.</summary>
    public ThroughMember Through { get; init; }

    /// <summary>How bottom and top meet the sides.</summary>
    public Joint Joint { get; init; }

    /// <summary>How deep a dado or rabbet goes; half the measured thickness when null (common practice, no source).</summary>
    public SizeText? JointDepth { get; init; }

    /// <summary>What closes the box above.</summary>
    public BoxTop Top { get; init; }

    /// <summary>The width of the stretchers; 4 in or 100 mm when null (common practice, no source).</summary>
    public SizeText? StretcherWidth { get; init; }

    /// <summary>The back.</summary>
    public BoxBack Back { get; init; } = new();

    /// <summary>Upright members inside, from the left.</summary>
    public IReadOnlyList<Partition> Partitions { get; init; } = [];

    /// <summary>Shelves inside.</summary>
    public IReadOnlyList<BoxShelf> Shelves { get; init; } = [];

    /// <summary>The edging on all front edges; bare when null.</summary>
    [RefersTo("shop/edgings")]
    public string? FrontEdge { get; init; }
}

/// <summary>Which member runs through.</summary>
public enum ThroughMember
{
    /// <summary>The sides; bottom and top stand between them.</summary>
    Sides,

    /// <summary>Bottom and top; the sides stand between them.</summary>
    BottomAndTop,
}

/// <summary>How two members meet.</summary>
public enum Joint
{
    /// <summary>Butt, with pocket screws.</summary>
    PocketScrews,

    /// <summary>Butt, screwed through.</summary>
    Screws,

    /// <summary>Let into a dado.</summary>
    Dado,

    /// <summary>Let into a rabbet.</summary>
    Rabbet,
}

/// <summary>What closes a box above.</summary>
public enum BoxTop
{
    /// <summary>A full panel.</summary>
    Panel,

    /// <summary>Two stretchers, front and back, laid flat.</summary>
    Stretchers,

    /// <summary>Nothing.</summary>
    Open,
}

/// <summary>A box's back.</summary>
public sealed record BoxBack : Kept
{
    /// <summary>What it is.</summary>
    public BackKind Kind { get; init; }

    /// <summary>How a panel back is fixed.</summary>
    public BackFixing Fixing { get; init; }

    /// <summary>The sheet it is made of; the box's own when null.</summary>
    [RefersTo("shop/sheets")]
    public string? Material { get; init; }

    /// <summary>How many slats; 2 when null.</summary>
    [Range(1, 20)]
    public int? Slats { get; init; }

    /// <summary>The height of a slat; 4 in or 100 mm when null.</summary>
    public SizeText? SlatHeight { get; init; }
}

/// <summary>Kinds of back.</summary>
public enum BackKind
{
    /// <summary>One panel.</summary>
    Panel,

    /// <summary>Slats between the sides, flush with their back edges, the first at the bottom and the last at the top.</summary>
    Slats,

    /// <summary>None.</summary>
    Open,
}

/// <summary>How a back panel is fixed.</summary>
public enum BackFixing
{
    /// <summary>On the back edges; the box's depth includes it.</summary>
    Applied,

    /// <summary>In a rabbet of sides, bottom and top, flush with their back edges.</summary>
    Rabbet,
}

/// <summary>An upright member inside a box.</summary>
public sealed record Partition : Kept
{
    /// <summary>Its id within the box.</summary>
    public required string Id { get; init; }

    /// <summary>From the inside of the left side to its left face; null shares the inside width evenly among partitions.</summary>
    public SizeText? At { get; init; }
}

/// <summary>A shelf inside a box.</summary>
public sealed record BoxShelf : Kept
{
    /// <summary>Its id within the box.</summary>
    public required string Id { get; init; }

    /// <summary>Joined to the sides, or resting on pins.</summary>
    public ShelfKind Kind { get; init; }

    /// <summary>Which bay between partitions, counted from 1 at the left.</summary>
    [Range(1, 20)]
    public int Bay { get; init; } = 1;

    /// <summary>From the top of the bottom to the shelf's underside.</summary>
    public required SizeText At { get; init; }

    /// <summary>Back from the front edge; when null, behind inset doors if there are any, and 1/4 in or 6 mm more for a shelf on pins.</summary>
    public SizeText? SetBack { get; init; }

    /// <summary>Shorter than the bay in all; none for a fixed shelf, 1/8 in or 3 mm for one on pins (common practice, no source).</summary>
    public SizeText? Clearance { get; init; }
}

/// <summary>Kinds of shelf in a box.</summary>
public enum ShelfKind
{
    /// <summary>Joined to the sides: let into them in a box with dadoes, butted to them otherwise and to partitions always.</summary>
    Fixed,

    /// <summary>Resting on pins in rows of holes.</summary>
    Pins,
}

/// <summary>One door or a pair in front of a box.</summary>
public sealed record Doors : Piece
{
    /// <summary>The id of the box; the doors stand where its front is and look where it looks.</summary>
    [RefersTo("pieces")]
    public required string Box { get; init; }

    /// <summary>Which bay of the box, from 1 at the left; null for the whole width.</summary>
    [Range(1, 20)]
    public int? Bay { get; init; }

    /// <summary>Inside the box's edges or over them.</summary>
    public DoorStyle Style { get; init; }

    /// <summary>One door, or two meeting in the middle.</summary>
    [Range(1, 2)]
    public int Count { get; init; } = 1;

    /// <summary>Which side a single door is hung on.</summary>
    public HingeSide Hinge { get; init; }

    /// <summary>
    /// Inset: round each door and between two. Overlay: between two doors, and shared with a neighbour's.
    /// 1/16 in or 1.5 mm when null (common practice, no source).
    /// </summary>
    public SizeText? Gap { get; init; }

    /// <summary>Overlay: how far the doors lie over the box's edge on each side, top and bottom; the thickness less half the gap when null.</summary>
    public SizeText? Overlay { get; init; }

    /// <summary>The width of one door instead of what the opening gives; for those who know better, and checked against it.</summary>
    public SizeText? Width { get; init; }

    /// <summary>The height instead of what the opening gives.</summary>
    public SizeText? Height { get; init; }

    /// <summary>Which way the figure runs on a door.</summary>
    public FigureOnDoor Figure { get; init; }

    /// <summary>The edging on all four edges; bare when null.</summary>
    [RefersTo("shop/edgings")]
    public string? Edge { get; init; }
}

/// <summary>How doors meet the box.</summary>
public enum DoorStyle
{
    /// <summary>Between the box's members, flush with their edges.</summary>
    Inset,

    /// <summary>In front of them.</summary>
    Overlay,
}

/// <summary>The side a door is hung on, as seen from in front of it.</summary>
public enum HingeSide
{
    /// <summary>The left.</summary>
    Left,

    /// <summary>The right.</summary>
    Right,
}

/// <summary>Which way the figure runs.</summary>
public enum FigureOnDoor
{
    /// <summary>Upright.</summary>
    Upright,

    /// <summary>From side to side.</summary>
    Across,
}

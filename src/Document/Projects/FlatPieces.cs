using System.ComponentModel.DataAnnotations;
using Nookwright.Measure;

namespace Nookwright.Projects;

/// <summary>A flat board that lies level: straight or L-shaped in plan, one layer or doubled.</summary>
/// <remarks>
/// Straight: <see cref="Width"/> left to right, <see cref="Depth"/> front to back. L: a return at one end comes forward
/// from the main run by <see cref="ReturnLength"/> and is <see cref="ReturnDepth"/> wide; the lowest corner is that of the
/// whole L's bounding box.
/// </remarks>
public abstract record FlatPiece : Piece
{
    /// <summary>Left to right, over all.</summary>
    public required SizeText Width { get; init; }

    /// <summary>Front to back, of the main run.</summary>
    public required SizeText Depth { get; init; }

    /// <summary>Which end has a return; none for a straight board.</summary>
    public ReturnSide Return { get; init; }

    /// <summary>How far the return comes forward of the main run's front edge.</summary>
    public SizeText? ReturnLength { get; init; }

    /// <summary>How wide the return is, left to right.</summary>
    public SizeText? ReturnDepth { get; init; }

    /// <summary>How an L is made.</summary>
    public LMake Make { get; init; }

    /// <summary>1, or 2 for doubled.</summary>
    [Range(1, 2)]
    public int Layers { get; init; } = 1;

    /// <summary>Edging.</summary>
    public EdgedSides Edges { get; init; } = new();

    /// <summary>What stays long until fitted.</summary>
    public LongBy LongBy { get; init; } = new();

    /// <summary>Cable and other round holes.</summary>
    public IReadOnlyList<RoundHole> Holes { get; init; } = [];
}

/// <summary>A top.</summary>
public sealed record Slab : FlatPiece;

/// <summary>An open shelf.</summary>
public sealed record Shelf : FlatPiece;

/// <summary>Which end of a flat board has a return.</summary>
public enum ReturnSide
{
    /// <summary>None: straight.</summary>
    None,

    /// <summary>The left end.</summary>
    Left,

    /// <summary>The right end.</summary>
    Right,
}

/// <summary>How an L is made.</summary>
public enum LMake
{
    /// <summary>Two strips butted: the main run whole, the return's strip against its front edge.</summary>
    TwoStrips,

    /// <summary>Cut out of one panel.</summary>
    OnePanel,
}

/// <summary>A base that boxes stand on, set back under them.</summary>
public sealed record ToeBase : Piece
{
    /// <summary>Left to right.</summary>
    public required SizeText Width { get; init; }

    /// <summary>Front to back.</summary>
    public required SizeText Depth { get; init; }

    /// <summary>How high it stands.</summary>
    public required SizeText Height { get; init; }

    /// <summary>How many cross members stand between front and back, the two ends counted; 3 when null.</summary>
    [Range(2, 20)]
    public int? CrossMembers { get; init; }
}

/// <summary>A small closed box that carries a shelf: front, two sides, top and bottom between them, open behind.</summary>
public sealed record SupportBox : Piece
{
    /// <summary>Left to right, outside.</summary>
    public required SizeText Width { get; init; }

    /// <summary>Front to back, outside.</summary>
    public required SizeText Depth { get; init; }

    /// <summary>Outside.</summary>
    public required SizeText Height { get; init; }

    /// <summary>The tier it stands in; the heights of support boxes in one tier match.</summary>
    public string? Tier { get; init; }
}

/// <summary>A strip fixed to a wall that carries a shelf's edge.</summary>
public sealed record Runner : Piece
{
    /// <summary>Along the wall.</summary>
    public required SizeText Length { get; init; }

    /// <summary>Up the wall.</summary>
    public required SizeText Height { get; init; }

    /// <summary>Which wall it is fixed to; a runner lies along it with its back against it.</summary>
    public Wall Wall { get; init; }

    /// <summary>What stays long until fitted.</summary>
    public LongBy LongBy { get; init; } = new();
}

/// <summary>An upright strip that fills between a piece and a wall, facing the front.</summary>
public sealed record Filler : Piece
{
    /// <summary>Left to right.</summary>
    public required SizeText Width { get; init; }

    /// <summary>Bottom to top.</summary>
    public required SizeText Height { get; init; }

    /// <summary>What stays long until fitted.</summary>
    public LongBy LongBy { get; init; } = new();
}

/// <summary>A strip that covers a joint or an edge, cut from sheet.</summary>
public sealed record Trim : Piece
{
    /// <summary>Its length.</summary>
    public required SizeText Length { get; init; }

    /// <summary>Its width.</summary>
    public required SizeText Width { get; init; }

    /// <summary>Which way it lies.</summary>
    public PanelLie Lie { get; init; } = PanelLie.UprightAlongX;

    /// <summary>What stays long until fitted.</summary>
    public LongBy LongBy { get; init; } = new();
}

/// <summary>How a single panel lies in the room: which way its length and its width go.</summary>
public enum PanelLie
{
    /// <summary>Level: length to the right, width into the recess.</summary>
    Flat,

    /// <summary>Upright, facing front: length to the right, width up.</summary>
    UprightAlongX,

    /// <summary>Upright, facing front, standing on end: length up, width to the right.</summary>
    StandingAlongX,

    /// <summary>Upright, facing sideways: length into the recess, width up.</summary>
    UprightAlongY,

    /// <summary>Upright, facing sideways, standing on end: length up, width into the recess.</summary>
    StandingAlongY,
}

/// <summary>A panel for anything else.</summary>
public sealed record FreePanel : Piece
{
    /// <summary>Along its length.</summary>
    public required SizeText Length { get; init; }

    /// <summary>Across it.</summary>
    public required SizeText Width { get; init; }

    /// <summary>Which way it lies.</summary>
    public PanelLie Lie { get; init; }

    /// <summary>Which way the figure runs.</summary>
    public PanelFigure Figure { get; init; }

    /// <summary>Edging.</summary>
    public EdgedSides Edges { get; init; } = new();

    /// <summary>What stays long until fitted.</summary>
    public LongBy LongBy { get; init; } = new();

    /// <summary>Round holes.</summary>
    public IReadOnlyList<RoundHole> Holes { get; init; } = [];
}

/// <summary>Which way the figure runs on a panel.</summary>
public enum PanelFigure
{
    /// <summary>Along its length.</summary>
    Length,

    /// <summary>Across it, along its width.</summary>
    Width,

    /// <summary>Either way will do.</summary>
    Any,
}

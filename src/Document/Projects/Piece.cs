using System.Text.Json.Serialization;
using Nookwright.Measure;
using Nookwright.Records;

namespace Nookwright.Projects;

/// <summary>Something you carry in. Its kind says what its fields mean; every size may be a formula.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(Carcass), "carcass")]
[JsonDerivedType(typeof(Doors), "doors")]
[JsonDerivedType(typeof(ToeBase), "toe-base")]
[JsonDerivedType(typeof(Slab), "top")]
[JsonDerivedType(typeof(Shelf), "shelf")]
[JsonDerivedType(typeof(SupportBox), "support-box")]
[JsonDerivedType(typeof(Runner), "runner")]
[JsonDerivedType(typeof(Filler), "filler")]
[JsonDerivedType(typeof(Trim), "trim")]
[JsonDerivedType(typeof(FreePanel), "panel")]
public abstract record Piece : Kept
{
    /// <summary>Given, unique, never generated; panels are <c>ID.panel</c>, sides in formulas <c>ID.width</c>, <c>ID.right</c>, ….</summary>
    public required string Id { get; init; }

    /// <summary>What the maker calls it; the id when null.</summary>
    public string? Name { get; init; }

    /// <summary>The id of the sheet it is made of, where a member does not say otherwise.</summary>
    [RefersTo("shop/sheets")]
    public string? Material { get; init; }

    /// <summary>Where its left front lower corner stands in the room.</summary>
    public Place At { get; init; } = new();

    /// <summary>Where its front looks.</summary>
    public Facing Facing { get; init; }

    /// <summary>Anything worth remembering.</summary>
    public string? Note { get; init; }
}

/// <summary>A place in the room; a null coordinate comes from the piece's row, else it is zero.</summary>
/// <remarks>The corner meant is the lowest x, y and z of the piece as it stands in the room, however it is turned.</remarks>
public sealed record Place : Kept
{
    /// <summary>To the right.</summary>
    public SizeText? X { get; init; }

    /// <summary>Into the recess.</summary>
    public SizeText? Y { get; init; }

    /// <summary>Up.</summary>
    public SizeText? Z { get; init; }
}

/// <summary>Where the front of a piece looks, as seen from in front of the recess.</summary>
public enum Facing
{
    /// <summary>Out of the recess.</summary>
    Front,

    /// <summary>To the left: turned 90 degrees.</summary>
    Left,

    /// <summary>To the right: turned 90 degrees.</summary>
    Right,
}

/// <summary>A panel that stays long at some edges until it is fitted; null means cut to size.</summary>
public sealed record LongBy : Kept
{
    /// <summary>At its left end.</summary>
    public SizeText? Left { get; init; }

    /// <summary>At its right end.</summary>
    public SizeText? Right { get; init; }

    /// <summary>At its front (flat panels) or lower (upright ones) edge.</summary>
    public SizeText? Front { get; init; }

    /// <summary>At its back (flat panels) or upper (upright ones) edge.</summary>
    public SizeText? Back { get; init; }
}

/// <summary>Edging ids by edge; null is bare.</summary>
public sealed record EdgedSides : Kept
{
    /// <summary>The left end.</summary>
    [RefersTo("shop/edgings")]
    public string? Left { get; init; }

    /// <summary>The right end.</summary>
    [RefersTo("shop/edgings")]
    public string? Right { get; init; }

    /// <summary>The front edge (flat panels) or lower edge (upright ones).</summary>
    [RefersTo("shop/edgings")]
    public string? Front { get; init; }

    /// <summary>The back edge (flat panels) or upper edge (upright ones).</summary>
    [RefersTo("shop/edgings")]
    public string? Back { get; init; }
}

/// <summary>A round hole through a panel, by its centre from the panel's left front (flat) or left lower (upright) corner.</summary>
public sealed record RoundHole : Kept
{
    /// <summary>The hole's id.</summary>
    public required string Id { get; init; }

    /// <summary>From the left end.</summary>
    public required SizeText X { get; init; }

    /// <summary>From the front or lower edge.</summary>
    public required SizeText Y { get; init; }

    /// <summary>Across.</summary>
    public required SizeText Diameter { get; init; }
}

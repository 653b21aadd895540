using System.ComponentModel.DataAnnotations;
using Nookwright.Measure;
using Nookwright.Records;

namespace Nookwright.Shop;

/// <summary>What is in the shop: sheets, edging, saws and what they can do. Every size is as the maker wrote it; null takes the default named.</summary>
public sealed record Workshop : Kept
{
    /// <summary>Sheet goods and other stock, each a material.</summary>
    public IReadOnlyList<SheetGood> Sheets { get; init; } = [];

    /// <summary>Edge tapes and strips.</summary>
    public IReadOnlyList<Edging> Edgings { get; init; } = [];

    /// <summary>The table saw.</summary>
    public TableSaw TableSaw { get; init; } = new();

    /// <summary>The track saw.</summary>
    public TrackSaw TrackSaw { get; init; } = new();

    /// <summary>Cut off a factory or rough edge before it is measured from; 1/4 in or 6 mm (trade practice: rough cuts 1/4 in over).</summary>
    public SizeText? Dressing { get; init; }

    /// <summary>The longest chunk one person handles; 8 ft or 2440 mm (the maker's own).</summary>
    public SizeText? ChunkLength { get; init; }

    /// <summary>The widest chunk one person handles; 4 ft or 1220 mm (the maker's own).</summary>
    public SizeText? ChunkWidth { get; init; }

    /// <summary>How long beyond its planned size a held part is cut; 1 in or 25 mm (common practice, no source).</summary>
    public SizeText? Allowance { get; init; }

    /// <summary>True when the factory edges of sheets are measured from undressed; a stock size may say otherwise.</summary>
    public bool TrustsEdges { get; init; }

    /// <summary>The narrowest strip ripped against the fence without a caution; 6 in or 150 mm (common practice, no source: hands stay a hand's breadth and more from the blade).</summary>
    public SizeText? LeastRip { get; init; }

    /// <summary>The shortest edge that rides against the fence without a caution; 12 in or 300 mm (common practice, no source: a piece with a short edge at the fence turns).</summary>
    public SizeText? LeastEdge { get; init; }

    /// <summary>The heaviest chunk one person takes to the table saw, in kilograms, for materials whose mass is known; null for no limit.</summary>
    [Range(1.0, 200.0)]
    public decimal? ChunkKilograms { get; init; }
}

/// <summary>A material that comes in sheets.</summary>
public sealed record SheetGood : Kept
{
    /// <summary>The material's id; formulas may use <c>ID.thickness</c>.</summary>
    public required string Id { get; init; }

    /// <summary>What it is called.</summary>
    public string Name { get; init; } = "";

    /// <summary>The thickness it is sold as; never used for sizes once it is measured.</summary>
    public required SizeText Nominal { get; init; }

    /// <summary>The thickness as measured; null until somebody has, and then sizes use the nominal one and a finding says so.</summary>
    public SizeText? Measured { get; init; }

    /// <summary>False for material without figure (MDF), whose parts may be turned freely.</summary>
    public bool HasFigure { get; init; } = true;

    /// <summary>Sheet sizes sold or in stock; the figure runs along the length.</summary>
    public IReadOnlyList<StockSize> Stock { get; init; } = [];

    /// <summary>Mass per area of sheet in kg/m², or null when unknown.</summary>
    [Range(0.1, 200.0)]
    public decimal? KilogramsPerSquareMetre { get; init; }

    /// <summary>Where the numbers come from.</summary>
    public string? Source { get; init; }
}

/// <summary>A size of sheet that can be used.</summary>
public sealed record StockSize : Kept
{
    /// <summary>What is written on it, for pins; null for a size nobody needs to name.</summary>
    public string? Id { get; init; }

    /// <summary>Along the figure.</summary>
    public required SizeText Length { get; init; }

    /// <summary>Across the figure.</summary>
    public required SizeText Width { get; init; }

    /// <summary>How many there are; null when as many as wanted can be bought.</summary>
    [Range(0, 1000)]
    public int? Quantity { get; init; }

    /// <summary>The price of one in the maker's currency; null when unknown, zero for an offcut already paid for.</summary>
    [Range(0.0, 1_000_000.0)]
    public decimal? Price { get; init; }

    /// <summary>True for an offcut on the rack, used before any sheet is bought.</summary>
    public bool Offcut { get; init; }

    /// <summary>How far its ends are out of square, over its whole width, as measured; zero when null.</summary>
    public SizeText? OutOfSquare { get; init; }

    /// <summary>Whether its factory edges are measured from undressed; null for what the shop does.</summary>
    public bool? TrustsEdges { get; init; }

    /// <summary>Places nothing may be cut from, on every sheet of this entry; a sheet that has some of its own is an entry of its own.</summary>
    public IReadOnlyList<BadPlace> Bad { get; init; } = [];
}

/// <summary>A place on a sheet that nothing may be cut from: a knot, a dent, a delaminated corner.</summary>
public sealed record BadPlace : Kept
{
    /// <summary>Where it begins along the sheet's length, from the marked corner.</summary>
    public required SizeText X { get; init; }

    /// <summary>Where it begins across, from the marked corner.</summary>
    public required SizeText Y { get; init; }

    /// <summary>How far it goes along the sheet's length.</summary>
    public required SizeText Length { get; init; }

    /// <summary>How far it goes across.</summary>
    public required SizeText Width { get; init; }

    /// <summary>What is wrong there.</summary>
    public string? Why { get; init; }
}

/// <summary>Something put on an edge.</summary>
public sealed record Edging : Kept
{
    /// <summary>The edging's id.</summary>
    public required string Id { get; init; }

    /// <summary>What it is called.</summary>
    public string Name { get; init; } = "";

    /// <summary>Tape glued or ironed on, or a hardwood strip.</summary>
    public EdgingKind Kind { get; init; }

    /// <summary>Its thickness.</summary>
    public required SizeText Thickness { get; init; }

    /// <summary>True when the panel is cut smaller by the thickness, so that the finished size includes it. Strips always count.</summary>
    public bool Counted { get; init; }
}

/// <summary>Kinds of edging.</summary>
public enum EdgingKind
{
    /// <summary>Thin tape.</summary>
    Tape,

    /// <summary>A strip of solid wood.</summary>
    Strip,
}

/// <summary>The table saw: a fence for rips, a stop for crosscuts.</summary>
public sealed record TableSaw : Kept
{
    /// <summary>What the blade takes away; 1/8 in or 3.2 mm. Zero for a list that has kerf in its sizes, or none.</summary>
    public SizeText? Kerf { get; init; }

    /// <summary>The widest setting of the fence; 30 in or 760 mm (the maker's own).</summary>
    public SizeText? RipReach { get; init; }

    /// <summary>The longest setting of the crosscut stop; 8 ft or 2440 mm (the maker's own).</summary>
    public SizeText? CrosscutReach { get; init; }

    /// <summary>How wide a piece the crosscut guide takes; as wide as a chunk may be when null.</summary>
    public SizeText? CrosscutWidth { get; init; }
}

/// <summary>The track saw.</summary>
public sealed record TrackSaw : Kept
{
    /// <summary>What the blade takes away; 3/32 in or 2.2 mm. Zero for a list that has kerf in its sizes, or none.</summary>
    public SizeText? Kerf { get; init; }

    /// <summary>The longest cut the track makes; 9 ft or 2750 mm (the maker's own).</summary>
    public SizeText? TrackLength { get; init; }
}

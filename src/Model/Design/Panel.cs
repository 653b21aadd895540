using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>One flat member of a piece, placed in the room.</summary>
/// <remarks>
/// Its own frame: x along its length, y across it, z through its thickness from its under or back face to its show face;
/// origin at the low corner of its outline's bounding rectangle. Sizes are finished ones: edging included, nothing long.
/// </remarks>
/// <param name="Id">Given: the piece's id, a dot, the member (<c>box-2.left-side</c>); the same on drawing, label and finding.</param>
/// <param name="Piece">The id of its piece.</param>
/// <param name="Name">What a maker calls it: "left side of box 2".</param>
/// <param name="Role">What it does in its piece.</param>
/// <param name="Material">The id of its sheet.</param>
/// <param name="Thickness">The sheet's measured thickness.</param>
/// <param name="Length">The finished size along x, rounded to the shop's mark.</param>
/// <param name="Width">The finished size along y, rounded to the shop's mark.</param>
/// <param name="Outline">The finished outline in the panel's frame.</param>
/// <param name="Figure">Which way the figure runs on it.</param>
/// <param name="Place">Where its frame stands in the room (panel to room).</param>
public sealed record Panel(
    string Id,
    string Piece,
    string Name,
    PanelRole Role,
    string Material,
    Traced Thickness,
    Traced Length,
    Traced Width,
    Outline Outline,
    PanelFigure Figure,
    Placement Place
)
{
    /// <summary>Its four edges: what is on them and what stays long.</summary>
    public PanelEdges Edges { get; init; } = new();

    /// <summary>Holes and grooves, in the panel's frame.</summary>
    public IReadOnlyList<Machining> Machining { get; init; } = [];

    /// <summary>Exact sizes before rounding, where rounding changed them: along x, along y.</summary>
    public (Traced? Length, Traced? Width) BeforeRounding { get; init; }
}

/// <summary>What a panel does in its piece.</summary>
public enum PanelRole
{
    /// <summary>An upright side of a box.</summary>
    Side,

    /// <summary>The bottom of a box.</summary>
    Bottom,

    /// <summary>The top of a box.</summary>
    Top,

    /// <summary>A stretcher that closes a box above.</summary>
    Stretcher,

    /// <summary>An upright member inside a box.</summary>
    Partition,

    /// <summary>A shelf inside a box.</summary>
    BoxShelf,

    /// <summary>A back.</summary>
    Back,

    /// <summary>A slat of a back.</summary>
    BackSlat,

    /// <summary>A door.</summary>
    Door,

    /// <summary>A long member of a toe base.</summary>
    BaseRail,

    /// <summary>A cross member of a toe base.</summary>
    BaseCross,

    /// <summary>A layer of a top.</summary>
    Slab,

    /// <summary>A layer of an open shelf.</summary>
    Shelf,

    /// <summary>The front of a support box.</summary>
    Front,

    /// <summary>A wall runner.</summary>
    Runner,

    /// <summary>A filler.</summary>
    Filler,

    /// <summary>A trim strip.</summary>
    Trim,

    /// <summary>Anything else.</summary>
    Free,
}

/// <summary>The four edges of a panel, in its own frame.</summary>
/// <param name="Start">At x = 0.</param>
/// <param name="End">At x = its length.</param>
/// <param name="Low">At y = 0.</param>
/// <param name="High">At y = its width.</param>
public sealed record PanelEdges(PanelEdge? Start, PanelEdge? End, PanelEdge? Low, PanelEdge? High)
{
    /// <summary>Four bare edges, cut to size.</summary>
    public PanelEdges()
        : this(null, null, null, null) { }

    /// <summary>On the edges inside the bounding rectangle, as an L's inside corner has them; null when bare or when there are none.</summary>
    public PanelEdge? Inner { get; init; }
}

/// <summary>An edge that is not simply bare and cut to size.</summary>
/// <param name="Edging">The edging's id, or null when bare.</param>
/// <param name="Counted">The edging's thickness where the panel is cut smaller for it; zero when bare or not counted.</param>
/// <param name="LongBy">How much it stays long until fitted, or null.</param>
public sealed record PanelEdge(string? Edging, Length Counted, Traced? LongBy);

/// <summary>A face of a panel.</summary>
public enum PanelFace
{
    /// <summary>The show face, at z = thickness.</summary>
    Show,

    /// <summary>The other face, at z = 0.</summary>
    Hidden,
}

/// <summary>Something machined into a panel, in its frame.</summary>
public abstract record Machining
{
    /// <summary>A round hole through it.</summary>
    /// <param name="Id">Given.</param>
    /// <param name="Centre">Its centre.</param>
    /// <param name="Diameter">Across.</param>
    public sealed record Through(string Id, Point2 Centre, Length Diameter) : Machining;

    /// <summary>A column of pin holes.</summary>
    /// <param name="Face">The face they are drilled from.</param>
    /// <param name="First">The lowest hole's centre.</param>
    /// <param name="Pitch">From hole to hole along x.</param>
    /// <param name="Count">How many.</param>
    /// <param name="Diameter">Across.</param>
    /// <param name="Depth">How deep.</param>
    public sealed record Pins(PanelFace Face, Point2 First, Length Pitch, int Count, Length Diameter, Length Depth)
        : Machining;

    /// <summary>A dado or a rabbet: a rectangle taken out of a face.</summary>
    /// <param name="Face">The face it is cut in.</param>
    /// <param name="From">Its low corner.</param>
    /// <param name="To">Its high corner.</param>
    /// <param name="Depth">How deep.</param>
    public sealed record Groove(PanelFace Face, Point2 From, Point2 To, Length Depth) : Machining;
}

using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Puts edging and what stays long on the right edges of a board, however it lies.</summary>
/// <remarks>
/// Left, right, front and back are those of someone who looks at the board's show face: front is the lower edge of an upright
/// board and the near edge of a level one.
/// </remarks>
internal sealed class BoardEdges(Job job, string piece)
{
    /// <summary>One edging on one edge or on all alike.</summary>
    public PanelEdge? Edge(Wanted sizes, string? edging, string step) => Edge(sizes, new(edging, step, null, ""));

    /// <summary>A board's four edges from its left, right, front and back.</summary>
    public PanelEdges Of(Wanted sizes, Attitude attitude, EdgedSides edges, LongBy longBy)
    {
        var left = Edge(sizes, new(edges.Left, "edges/left", longBy.Left, "longBy/left"));
        var right = Edge(sizes, new(edges.Right, "edges/right", longBy.Right, "longBy/right"));
        var front = Edge(sizes, new(edges.Front, "edges/front", longBy.Front, "longBy/front"));
        var back = Edge(sizes, new(edges.Back, "edges/back", longBy.Back, "longBy/back"));
        return Turned(attitude, new(left, right, front, back));
    }

    /// <summary>Edges given as left, right, front, back, as the board's own start, end, low, high.</summary>
    public static PanelEdges Turned(Attitude attitude, PanelEdges asSeen)
    {
        var (left, right, front, back) = asSeen;
        return new(
            Towards(Opposite(attitude.X)),
            Towards(attitude.X),
            Towards(Opposite(attitude.Y)),
            Towards(attitude.Y)
        );

        PanelEdge? Towards(Direction way) =>
            way == attitude.RightHand ? right
            : way == Opposite(attitude.RightHand) ? left
            : way == attitude.Up ? back
            : front;
    }

    /// <summary>One edge: the one that looks in a direction of the piece.</summary>
    public static PanelEdges On(Attitude attitude, Direction way, PanelEdge edge) =>
        new(
            way == Opposite(attitude.X) ? edge : null,
            way == attitude.X ? edge : null,
            way == Opposite(attitude.Y) ? edge : null,
            way == attitude.Y ? edge : null
        );

    private PanelEdge? Edge(Wanted sizes, EdgeWish wish)
    {
        var edging = wish.Edging is null ? null : Known(wish.Edging, $"pieces/{piece}/{wish.EdgingStep}");
        var longBy = wish.LongBy is { } text ? sizes.Size($"pieces/{piece}/{wish.LongStep}", text) : null;
        return edging is null && longBy is null ? null : new(edging?.Id, Counted(sizes, edging), longBy);
    }

    private Edging? Known(string id, string field)
    {
        if (job.Edging(id) is { } edging)
            return edging;
        var isTold = job.Findings.Any(finding => finding.Rule == "edging.missing" && finding.Field == field);
        if (!isTold)
            job.Findings.Add(
                new(
                    "edging.missing",
                    Severity.MustMend,
                    $"The shop has no edging \"{id}\" for {piece}; name one it has, or add it to the shop.",
                    [piece]
                )
                {
                    Field = field,
                }
            );
        return null;
    }

    private static Length Counted(Wanted sizes, Edging? edging) =>
        edging is { Kind: EdgingKind.Strip } or { Counted: true }
            ? sizes.Size($"shop/edgings/{edging.Id}/thickness", edging.Thickness).Length
            : Length.Zero;

    private static Direction Opposite(Direction direction) => (Direction)((int)direction ^ 1);

    private sealed record EdgeWish(string? Edging, string EdgingStep, SizeText? LongBy, string LongStep);
}

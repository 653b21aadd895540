using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Drawing;

/// <summary>Which sizes of a built-in are drawn on which side of a view.</summary>
internal static class ViewSizes
{
    /// <summary>In a view from the front or a side: widths of the boxes in each tier, heights, and both over all.</summary>
    /// <param name="pieces">The pieces in the view.</param>
    /// <param name="level">What is level in the view: x from the front, y from a side.</param>
    public static IReadOnlyList<DimensionChain> Upright(IReadOnlyList<PlacedPiece> pieces, Func<Point3, Length> level)
    {
        if (pieces.Count == 0)
            return [];
        var tiers = Tiers(pieces).ToArray();
        var overall = DimensionChain.Through(ChainSide.Below, Ends(pieces, level));
        var below = tiers.Take(1).SelectMany(t => DimensionChain.Through(ChainSide.Below, Both(t, level)));
        var above = tiers.Skip(1).SelectMany(t => DimensionChain.Through(ChainSide.Above, Both(t, level)));
        var heights = DimensionChain.Through(ChainSide.Right, pieces.SelectMany(Heights).Append(Length.Zero));
        var height = DimensionChain.Through(ChainSide.Right, [Length.Zero, pieces.Max(p => p.High.Z)]);
        return WithoutRepeats([.. below, .. overall, .. above, .. heights, .. height]);
    }

    /// <summary>In plan: widths of the lowest boxes, depths of boxes and tops, and both over all.</summary>
    public static IReadOnlyList<DimensionChain> Plan(IReadOnlyList<PlacedPiece> pieces)
    {
        if (pieces.Count == 0)
            return [];
        var boxes = Tiers(pieces).FirstOrDefault() ?? [];
        var middle = (pieces.Min(p => p.Low.X) + pieces.Max(p => p.High.X)).Millimetres / 2;
        var left = boxes.Where(b => (b.Low.X + b.High.X).Millimetres / 2 < middle);
        var right = boxes.Where(b => (b.Low.X + b.High.X).Millimetres / 2 >= middle);
        var tops = pieces.Where(p => p.Piece is Slab).SelectMany(p => p.Panels).SelectMany(Corners).ToArray();
        return WithoutRepeats([
            .. DimensionChain.Through(ChainSide.Below, Both(boxes, p => p.X)),
            .. DimensionChain.Through(ChainSide.Below, Ends(pieces, p => p.X)),
            .. DimensionChain.Through(ChainSide.Above, tops.Select(c => c.X)),
            .. DimensionChain.Through(ChainSide.Right, Both(right, p => p.Y)),
            .. DimensionChain.Through(ChainSide.Right, tops.Select(c => c.Y)),
            .. DimensionChain.Through(ChainSide.Right, Ends(pieces, p => p.Y)),
            .. DimensionChain.Through(ChainSide.Left, Both(left, p => p.Y)),
        ]);
    }

    /// <summary>Boxes by the height they stand at, the lowest first.</summary>
    private static IEnumerable<IReadOnlyList<PlacedPiece>> Tiers(IEnumerable<PlacedPiece> pieces) =>
        pieces
            .Where(p => p.Piece is Carcass or SupportBox)
            .GroupBy(p => p.Low.Z)
            .OrderBy(g => g.Key)
            .Select(g => g.ToArray());

    private static IEnumerable<Length> Both(IEnumerable<PlacedPiece> pieces, Func<Point3, Length> along) =>
        pieces.SelectMany(p => new[] { along(p.Low), along(p.High) });

    private static IEnumerable<Length> Ends(IReadOnlyList<PlacedPiece> pieces, Func<Point3, Length> along) =>
        [pieces.Min(p => along(p.Low)), pieces.Max(p => along(p.High))];

    /// <summary>The heights someone measures: of boxes and bases both, of tops and shelves the upper face.</summary>
    private static IEnumerable<Length> Heights(PlacedPiece piece) =>
        piece.Piece switch
        {
            Carcass or SupportBox or ToeBase => [piece.Low.Z, piece.High.Z],
            Slab or Shelf => [piece.High.Z],
            _ => [],
        };

    private static IEnumerable<Point3> Corners(Panel panel) =>
        panel.Outline.Corners.Select(c => panel.Place.Map(new(c.X, c.Y, Length.Zero)));

    /// <summary>Chains that say something no chain before them says.</summary>
    private static List<DimensionChain> WithoutRepeats(IEnumerable<DimensionChain> chains)
    {
        var kept = new List<DimensionChain>();
        foreach (var chain in chains)
            if (!kept.Any(k => Runs(k.Side) == Runs(chain.Side) && SaysAll(k, chain)))
                kept.Add(chain);
        return kept;
    }

    /// <summary>True when one chain has all stations of another, or both are one size whose ends no reader could tell apart.</summary>
    private static bool SaysAll(DimensionChain one, DimensionChain other) =>
        one.Stations.SequenceEqual(other.Stations)
        || (one.Stations.Count == 2 && other.Stations.Count == 2 && AreNear(one, other));

    private static bool AreNear(DimensionChain one, DimensionChain other) =>
        one.Stations.Zip(other.Stations).All(s => (s.First - s.Second).Abs() < Length.Millimetre);

    private static bool Runs(ChainSide side) => side is ChainSide.Below or ChainSide.Above;
}

using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Pieces that would have to be in the same place.</summary>
internal static class PieceOverlaps
{
    /// <summary>One finding for each two pieces with panels that overlap by more than nothing.</summary>
    public static IEnumerable<Finding> Findings(IReadOnlyList<PlacedPiece> pieces, Job job) =>
        from pair in Shared(pieces).GroupBy(shared => (shared.A.Piece, shared.B.Piece))
        let worst = pair.MaxBy(shared => shared.By)
        select new Finding(
            "pieces.overlap",
            job.Finished.Gravity(worst.By),
            $"{worst.A.Id} and {worst.B.Id} overlap by {job.Print(worst.By)}; move or shrink {pair.Key.Item1} or {pair.Key.Item2}.",
            [pair.Key.Item1, pair.Key.Item2]
        );

    private static IEnumerable<(Panel A, Panel B, Length By)> Shared(IReadOnlyList<PlacedPiece> pieces)
    {
        // In order of their left ends, so that a box only meets those that start before it ends.
        var solids = pieces.SelectMany(Solids).OrderBy(solid => solid.Box.Low.X).ToList();
        for (var i = 0; i < solids.Count; i++)
        for (var j = i + 1; j < solids.Count && solids[j].Box.Low.X < solids[i].Box.High.X; j++)
            if (solids[i].Panel.Piece != solids[j].Panel.Piece && solids[i].Box.SharedWith(solids[j].Box) is { } shared)
                yield return InOrder(solids[i].Panel, solids[j].Panel, shared.Least);
    }

    private static (Panel, Panel, Length) InOrder(Panel a, Panel b, Length by) =>
        string.CompareOrdinal(a.Piece, b.Piece) < 0 ? (a, b, by) : (b, a, by);

    private static IEnumerable<(Panel Panel, SolidBox Box)> Solids(PlacedPiece piece) =>
        from panel in piece.Panels
        from box in SolidBox.InRoom(panel)
        select (panel, box);
}

using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Edging that leaves nothing of the panel it is put on.</summary>
internal static class EdgingFit
{
    public static IEnumerable<Finding> Findings(IReadOnlyList<PlacedPiece> pieces, Job job) =>
        pieces.SelectMany(piece => piece.Panels).Where(LeavesNothing).Select(panel => Finding(panel, job));

    private static bool LeavesNothing(Panel panel)
    {
        var edges = panel.Edges;
        return Both(edges.Start, edges.End) >= panel.Length.Length || Both(edges.Low, edges.High) >= panel.Width.Length;
    }

    private static Length Both(PanelEdge? one, PanelEdge? other) =>
        (one?.Counted ?? Length.Zero) + (other?.Counted ?? Length.Zero);

    private static Finding Finding(Panel panel, Job job) =>
        new(
            "edging.wider-than-panel",
            Severity.MustMend,
            $"The edging of {panel.Id} leaves nothing of the panel, which is {job.Print(panel.Length.Length)} by {job.Print(panel.Width.Length)}; "
                + "use thinner edging or a larger panel.",
            [panel.Piece, panel.Id]
        )
        {
            Field = $"pieces/{panel.Piece}",
        };
}

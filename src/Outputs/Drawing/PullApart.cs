using Nookwright.Design;

namespace Nookwright.Drawing;

/// <summary>Where each panel goes when the built-in is pulled apart so that every joint shows.</summary>
/// <remarks>
/// Pieces move away from the middle of the built-in; within a piece each panel moves square to its own face, away from the
/// middle of the piece: sides sideways, tops up, backs back. A door comes towards whoever stands in front of it.
/// </remarks>
internal static class PullApart
{
    /// <summary>How far pieces move, over their distance from the middle. Chosen by eye.</summary>
    private const double PiecesMove = 0.35;

    /// <summary>How far a panel moves from its place in its piece, in millimetres. Chosen by eye.</summary>
    private const double PanelsMove = 160;

    /// <summary>The vectors by panel id.</summary>
    public static IReadOnlyDictionary<string, Vertex> Of(IReadOnlyList<Solid> solids)
    {
        var middle = Extent.Of(solids).Centre;
        var middles = solids.GroupBy(s => s.Panel.Piece).ToDictionary(g => g.Key, g => Extent.Of(g).Centre);
        return solids.ToDictionary(
            s => s.Panel.Id,
            s => ((middles[s.Panel.Piece] - middle) * PiecesMove) + (Outwards(s, middles[s.Panel.Piece]) * PanelsMove)
        );
    }

    private static Vertex Outwards(Solid solid, Vertex middleOfPiece)
    {
        var show = solid.Faces.First(f => f.Kind == SolidFaceKind.Show).Normal;
        if (solid.Panel.Role == PanelRole.Door)
            return show;
        var away = (solid.Centre - middleOfPiece).Dot(show);
        var halfThickness = solid.Panel.Thickness.Length.Millimetres / 2;
        return Math.Abs(away) <= halfThickness ? default : show * Math.Sign(away);
    }
}

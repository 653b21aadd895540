using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>Which kind of piece is worked out how.</summary>
internal static class Pieces
{
    public static PieceDesign DesignOf(Piece piece, Job job) =>
        piece switch
        {
            Carcass box => new CarcassDesign(box, job),
            Doors doors => new DoorDesign(doors, job),
            ToeBase toe => new ToeBaseDesign(toe, job),
            FlatPiece flat => new FlatDesign(flat, job),
            SupportBox box => new SupportBoxDesign(box, job),
            Runner runner => new SinglePanelDesign(runner, SinglePanel.Of(runner), job),
            Filler filler => new SinglePanelDesign(filler, SinglePanel.Of(filler), job),
            Trim trim => new SinglePanelDesign(trim, SinglePanel.Of(trim), job),
            FreePanel panel => new SinglePanelDesign(panel, SinglePanel.Of(panel), job),
            _ => throw new ArgumentOutOfRangeException(
                nameof(piece),
                piece.GetType(),
                "A kind of piece nobody designs."
            ),
        };
}

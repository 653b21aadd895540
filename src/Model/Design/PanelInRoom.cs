using Nookwright.Geometry;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>A board of a piece as a panel standing in the room.</summary>
internal static class PanelInRoom
{
    public static Panel Of(Board board, PieceDesign design, Placement toRoom, Job job)
    {
        var id = $"{design.Id}.{board.Member}";
        var (length, width) = (board.Size.Length, board.Size.Width);
        return new(
            id,
            design.Id,
            Called(board, design.Called),
            board.Role,
            board.Material,
            board.Size.Thickness,
            length,
            width,
            board.Outline ?? Outline.Rectangle(length.Length, width.Length),
            board.Figure,
            toRoom.Of(board.Place)
        )
        {
            Edges = board.Edges,
            Machining = board.Machining,
            BeforeRounding = (job.Finished.Exact(id, MatchedSide.Length), job.Finished.Exact(id, MatchedSide.Width)),
        };
    }

    /// <summary>"left side of box 1"; a piece of one panel goes by its own name.</summary>
    private static string Called(Board board, string piece) =>
        board.Called.Length == 0 ? piece : $"{board.Called} of {piece}";
}

using Nookwright.Geometry;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>A board of a piece as a panel standing in the room.</summary>
internal static class PanelInRoom
{
    public static Panel Of(Board board, Piece piece, Placement toRoom, Job job)
    {
        var id = $"{piece.Id}.{board.Member}";
        var (length, width) = (board.Size.Length, board.Size.Width);
        return new(
            id,
            piece.Id,
            Called(board, piece),
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
    private static string Called(Board board, Piece piece)
    {
        var name = piece.Name ?? piece.Id;
        return board.Called.Length == 0 ? name : $"{board.Called} of {name}";
    }
}

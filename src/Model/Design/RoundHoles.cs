using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>A round hole as read: its centre from the left and from the front or lower edge, and how wide it is.</summary>
internal readonly record struct HoleAt(Length X, Length Y, Length Diameter);

/// <summary>Round holes: from the document's left and front to a board's own frame.</summary>
internal static class RoundHoles
{
    /// <summary>What the document says of a hole.</summary>
    public static HoleAt Read(Wanted sizes, string piece, RoundHole hole)
    {
        var field = $"pieces/{piece}/holes/{hole.Id}";
        return new(
            sizes.Written($"{field}/x", hole.X).Length,
            sizes.Written($"{field}/y", hole.Y).Length,
            sizes.Size($"{field}/diameter", hole.Diameter).Length
        );
    }

    /// <summary>A hole measured from the left and front or lower edge as seen by someone looking at the board's show face.</summary>
    public static Machining.Through InBoard(Board board, string id, HoleAt hole)
    {
        var (length, width) = (board.Size.Length.Length, board.Size.Width.Length);
        return new(id, new(Along(board.Attitude.X, length), Along(board.Attitude.Y, width)), hole.Diameter);

        Length Along(Direction own, Length size) =>
            own == board.Attitude.RightHand ? hole.X
            : own == board.Attitude.Up ? hole.Y
            : IsSideways(board, own) ? size - hole.X
            : size - hole.Y;
    }

    private static bool IsSideways(Board board, Direction own) => (int)own / 2 == (int)board.Attitude.RightHand / 2;
}

using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>An outside size of a piece, with the words for more and less of it.</summary>
internal sealed record PieceSide(string More, string Less)
{
    public static readonly PieceSide Width = new("wider", "narrower");
    public static readonly PieceSide Height = new("higher", "lower");
    public static readonly PieceSide Depth = new("deeper", "shallower");

    /// <summary>Where a rest goes: "box-1 comes out 0.2 mm wider; the next piece in its row moves with it".</summary>
    public string Says(Length amount, PieceDesign piece, Job job)
    {
        var more = amount.IsPositive ? More : Less;
        var then = job.Rows.IsFollowed(piece.Id, Way(piece.Facing))
            ? "the next piece in its row moves with it"
            : "what stands against it takes it up";
        return $"{piece.Id} comes out {job.PrintRest(amount)} {more}; {then}";
    }

    private RowDirection Way(Facing facing)
    {
        var isTurned = facing != Facing.Front;
        return this == Height ? RowDirection.Up
            : (this == Width) == isTurned ? RowDirection.Back
            : RowDirection.Right;
    }
}

using Nookwright.Measure;
using Nookwright.Survey;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Pieces that stand into a wall, the floor or the ceiling.</summary>
internal static class RoomFit
{
    public static IEnumerable<Finding> Findings(IReadOnlyList<PlacedPiece> pieces, Room room, Job job) =>
        pieces.SelectMany(piece =>
            Outside(piece, room).Where(side => side.By.IsPositive).Select(side => Finding(piece, side, job))
        );

    private static IEnumerable<(string What, Length By)> Outside(PlacedPiece piece, Room room)
    {
        yield return ("into the floor", -piece.Low.Z);
        if (room.Ceiling.Count > 0)
            yield return ("into the ceiling", piece.High.Z - room.Ceiling.Min(corner => corner.Z));
        if (room.Walls.Count == 0)
            yield break;
        var envelope = room.Envelope(Length.Max(piece.Low.Z, Length.Zero), Length.Max(piece.High.Z, Length.Zero));
        yield return ("into the left wall", envelope.Left - piece.Low.X);
        yield return ("into the right wall", piece.High.X - envelope.Right);
        yield return ("into the back wall", piece.High.Y - envelope.Back);
    }

    private static Finding Finding(PlacedPiece piece, (string What, Length By) side, Job job) =>
        new(
            "room.piece-outside",
            job.Finished.Gravity(side.By),
            $"{piece.Piece.Id} goes {job.Print(side.By)} {side.What} at the narrowest place of its height; "
                + "move it, make it smaller, or leave it long there and cut it to the wall.",
            [piece.Piece.Id]
        );
}

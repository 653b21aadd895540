using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>Where a piece stands: at its own place, else as its row says, else at the room's origin.</summary>
internal static class PiecePlace
{
    /// <summary>Names the six sides of a piece in the room.</summary>
    public static void Name(PieceDesign piece, Job job)
    {
        var (alongX, alongY) = Turning.Sizes(piece.Facing);
        var at = piece.Piece.At;
        NameSpan(new("x", "left", "right", RowDirection.Right), at.X, alongX);
        NameSpan(new("y", "front", "back", RowDirection.Back), at.Y, alongY);
        NameSpan(new("z", "bottom", "top", RowDirection.Up), at.Z, "height");

        void NameSpan(RoomAxis axis, SizeText? given, string size)
        {
            job.Names.Define($"{piece.Id}.{axis.Low}", sizes => Low(sizes, axis, given, piece.Id, job));
            job.Names.Define(
                $"{piece.Id}.{axis.High}",
                sizes => sizes[$"{piece.Id}.{axis.Low}"] + sizes[$"{piece.Id}.{size}"]
            );
        }
    }

    private static Traced Low(Wanted sizes, RoomAxis axis, SizeText? given, string piece, Job job)
    {
        if (given is { } written)
            return sizes.Written($"pieces/{piece}/at/{axis.Name}", written);
        if (job.Rows.Setting(piece, axis.Along) is not var (row, before))
            return Traced.ByRule(
                Length.Zero,
                $"no place is given along {axis.Name}, so it stands at the room's origin"
            );
        if (!job.Designs.ContainsKey(before))
            return sizes.Fail(
                new($"{row.Id} names \"{before}\", and there is no such piece.", $"rows/{row.Id}/pieces")
                {
                    Rule = "rows.no-such-piece",
                }
            );
        return row.Direction == axis.Along ? After(sizes, axis, row, before) : sizes[$"{before}.{axis.Low}"];
    }

    private static Traced After(Wanted sizes, RoomAxis axis, Row row, string before)
    {
        var end = sizes[$"{before}.{axis.High}"];
        return row.Gap is { } gap ? end + sizes.Written($"rows/{row.Id}/gap", gap) : end;
    }

    private sealed record RoomAxis(string Name, string Low, string High, RowDirection Along);
}

using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Rounds;

/// <summary>Whether parts whose sizes are known now come out of the blank that was kept for them.</summary>
/// <param name="Short">How much the blank lacks, the worse way; zero or less when they come out of it.</param>
internal readonly record struct BlankFit(Length Short)
{
    /// <summary>One part, or a run, in its blank, each rough edge of which is dressed first.</summary>
    public static BlankFit Of(List<CutPart> parts, KeptBlank blank, CutRequest now, IssuedPlan issued)
    {
        Length Margin(SheetAxis axis) => now.Saws.Dressing * (issued.IsTrueLow(blank.Piece.Id, axis) ? 1 : 2);
        var room = (X: blank.Piece.Length - Margin(SheetAxis.Length), Y: blank.Piece.Width - Margin(SheetAxis.Width));
        var ways =
            from side in (MatchedSide[])[MatchedSide.Length, MatchedSide.Width]
            where parts.All(p => p.Figure.Allows(side) || parts.Count == 0)
            from isAlongX in parts.Count == 1 ? (bool[])[true] : [true, false]
            let need = Need(parts, side, isAlongX, now.Saws.TableKerf)
            select Length.Max(need.X - room.X, need.Y - room.Y);
        return new(ways.DefaultIfEmpty(Length.Zero).Min());
    }

    /// <summary>What parts side by side need along the sheet and across, with this side of each along the sheet.</summary>
    private static (Length X, Length Y) Need(List<CutPart> parts, MatchedSide alongSheet, bool followAlong, Length kerf)
    {
        var sizes = parts
            .Select(p => alongSheet == MatchedSide.Length ? (X: p.Length, Y: p.Width) : (X: p.Width, Y: p.Length))
            .ToList();
        var kerfs = kerf * (parts.Count - 1);
        Length Sum(IEnumerable<Length> lengths) => lengths.Aggregate(kerfs, (sum, length) => sum + length);
        return followAlong
            ? (Sum(sizes.Select(s => s.X)), sizes.Max(s => s.Y))
            : (sizes.Max(s => s.X), Sum(sizes.Select(s => s.Y)));
    }
}

namespace Nookwright.Cutting;

/// <summary>What a new plan moves: parts that both plans cut at one size, and not at one place.</summary>
public static class MovedParts
{
    /// <summary>Ids of the parts that lie elsewhere, in the order of the plan before.</summary>
    /// <remarks>A sheet is the one that most of its parts are still on: its number may have changed.</remarks>
    public static IReadOnlyList<string> Of(Plan before, Plan after)
    {
        var now = Pieces(after).ToDictionary(p => p.Part!);
        var both = Pieces(before).Where(p => now.ContainsKey(p.Part!)).Select(p => (Was: p, Is: now[p.Part!])).ToList();
        var sheets = both.Where(p => Place(p.Was) == Place(p.Is))
            .GroupBy(p => p.Was.Sheet)
            .ToDictionary(g => g.Key, g => g.GroupBy(p => p.Is.Sheet).MaxBy(s => s.Count())!.Key);
        bool Stays(Workpiece was, Workpiece isNow) =>
            Place(was) == Place(isNow) && sheets.TryGetValue(was.Sheet, out var sheet) && sheet == isNow.Sheet;
        return [.. both.Where(p => Size(p.Was) == Size(p.Is) && !Stays(p.Was, p.Is)).Select(p => p.Was.Part!)];
    }

    private static IEnumerable<Workpiece> Pieces(Plan plan) =>
        plan.Workpieces.Where(p => p is { Part: not null, Use: WorkpieceUse.Part or WorkpieceUse.Held });

    private static (Measure.Length, Measure.Length, Measure.Length, Measure.Length) Place(Workpiece piece) =>
        (piece.X, piece.Y, piece.Length, piece.Width);

    private static (Measure.Length, Measure.Length) Size(Workpiece piece) =>
        (Measure.Length.Min(piece.Length, piece.Width), Measure.Length.Max(piece.Length, piece.Width));
}

using Nookwright.Cutting;

namespace Nookwright.Paper;

/// <summary>A piece that an earlier round left, and what the track saw does to it in a later one.</summary>
/// <param name="Piece">Its id.</param>
/// <param name="Cuts">The cuts on it and on what comes of it, in order.</param>
public sealed record LeftBefore(string Piece, IReadOnlyList<SawCut> Cuts)
{
    /// <summary>Those of a round, in the order of their first cuts; none for a round that takes new sheets only.</summary>
    /// <param name="round">The plan of one round with the workpieces before it; null for none.</param>
    public static IReadOnlyList<LeftBefore> Of(Plan? round)
    {
        if (round is null)
            return [];
        var sheets = round.Sheets.Select(s => s.Number).ToHashSet();
        var sheetOf = round.Workpieces.ToDictionary(p => p.Id, p => p.Sheet);
        var byPiece = new Dictionary<string, List<SawCut>>();
        foreach (var cut in round.Breakdown.Where(c => !sheets.Contains(sheetOf[c.On])))
        {
            if (!byPiece.TryGetValue(cut.On, out var cuts))
                byPiece[cut.On] = cuts = [];
            cuts.Add(cut);
            foreach (var made in new[] { cut.Gives, cut.Leaves }.OfType<string>())
                byPiece[made] = cuts;
        }
        return [.. byPiece.Values.Distinct().Select(cuts => new LeftBefore(cuts[0].On, cuts))];
    }
}

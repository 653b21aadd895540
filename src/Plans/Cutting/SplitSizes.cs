using Nookwright.Measure;

namespace Nookwright.Cutting;

/// <summary>Which dimensions of a plan come from more than one visit: read off its cuts.</summary>
internal static class SplitSizes
{
    /// <summary>The dimensions in the order of their first visits; a later round's visit is another matter and splits nothing.</summary>
    public static IReadOnlyList<SplitSize> Of(Plan plan) =>
        [
            .. Sized(plan)
                .GroupBy(s => (s.Size, s.Visit.Round))
                .Select(g => new SplitSize(g.Key.Size, Visits(g)))
                .Where(s => s.Visits.Count > 1)
                .OrderBy(s => s.Visits[0].Visit),
        ];

    private static List<SplitVisit> Visits(IEnumerable<(string Part, Length Size, Visit Visit)> sized) =>
        [
            .. sized
                .GroupBy(s => s.Visit.Number)
                .OrderBy(g => g.Key)
                .Select(g => new SplitVisit(g.Key, [.. g.Select(s => s.Part).Distinct()])),
        ];

    private static IEnumerable<(string Part, Length Size, Visit Visit)> Sized(Plan plan)
    {
        var given = Given(plan);
        foreach (var piece in plan.Workpieces.Where(p => p is { Use: WorkpieceUse.Part, Part: not null }))
        {
            var (x, y) = given.GetValueOrDefault(piece.Id);
            if (x is not null)
                yield return (piece.Part!, piece.Length, x);
            if (y is not null)
                yield return (piece.Part!, piece.Width, y);
        }
    }

    /// <summary>For each piece the visits that gave it its size along the sheet and across: its own, or those of what it was cut from.</summary>
    private static Dictionary<string, (Visit? X, Visit? Y)> Given(Plan plan)
    {
        var given = new Dictionary<string, (Visit? X, Visit? Y)>();
        foreach (var visit in plan.Visits)
        foreach (var cut in visit.Cuts)
        {
            var (x, y) = given.GetValueOrDefault(cut.On);
            (Visit? X, Visit? Y) With(Visit? along) => cut.Along == SheetAxis.Length ? (along, y) : (x, along);
            if (cut.Gives is { } gives)
                given[gives] = With(cut.Kind == CutKind.Sizing ? visit : null);
            if (cut.Leaves is { } leaves)
                given[leaves] = With(null);
        }
        return given;
    }
}

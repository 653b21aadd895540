namespace Nookwright.Bounds;

/// <summary>What whole sheets can cost together: half a sheet is not for sale.</summary>
internal static class WholeSheets
{
    // More ways to share than this are not tried; the cost then stays as it is, which is true too.
    private const long MostTries = 200_000;

    /// <summary>The least sum of prices of whole sheets that is not below a cost.</summary>
    /// <param name="atLeast">The cost.</param>
    /// <param name="sheets">The kinds, as far as they run out.</param>
    /// <param name="costs">What one of each kind costs: zero or more.</param>
    public static long Cover(long atLeast, IReadOnlyList<SheetKind> sheets, IReadOnlyList<long> costs)
    {
        var kinds = Enumerable
            .Range(0, sheets.Count)
            .Where(s => costs[s] > 0)
            .GroupBy(s => costs[s])
            .OrderByDescending(g => g.Key)
            .Select(g => (Cost: g.Key, Most: Most(g.Select(s => sheets[s].Quantity), Ceiling(atLeast, g.Key))))
            .ToList();
        var tries = kinds.SkipLast(1).Aggregate(1.0, (product, k) => product * (k.Most + 1));
        var isCovered = kinds.Aggregate((Int128)0, (sum, k) => sum + ((Int128)k.Cost * k.Most)) >= atLeast;
        return atLeast <= 0 || !isCovered || tries > MostTries ? Math.Max(0, atLeast) : Least(atLeast, kinds.ToArray());
    }

    private static long Least(long left, ReadOnlySpan<(long Cost, long Most)> kinds)
    {
        if (left <= 0)
            return 0;
        if (kinds.Length == 0)
            return long.MaxValue / 4; // What is left cannot be bought this way.
        var (cost, most) = kinds[0];
        var least = long.MaxValue;
        for (var count = Math.Min(most, Ceiling(left, cost)); count >= 0; count--)
            least = Math.Min(least, (count * cost) + Least(left - (count * cost), kinds[1..]));
        return least;
    }

    private static long Most(IEnumerable<int?> quantities, long enough) =>
        quantities.Aggregate(0L, (sum, q) => Math.Min(enough, sum + (q ?? enough)));

    private static long Ceiling(long number, long by) => (number + by - 1) / by;
}

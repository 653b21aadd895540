namespace Nookwright.Bounds;

/// <summary>What whole sheets can cost together: half a sheet is not for sale.</summary>
internal static class WholeSheets
{
    // More ways to share than this are not tried; the cost then stays as it is, which is true too.
    private const long MostTries = 200_000;
    private const int MostNeeds = 60;
    private const long Never = long.MaxValue / 4;

    /// <summary>The least sum of prices of whole sheets that is not below a cost.</summary>
    /// <param name="atLeast">The cost.</param>
    /// <param name="sheets">The kinds, as far as they run out.</param>
    /// <param name="costs">What one of each kind costs: zero or more.</param>
    /// <param name="needs">
    /// Sets of kinds, by their places among the sheets: of each set one sheet at least is taken, since something fits on no
    /// other. Null for none.
    /// </param>
    public static long Cover(
        long atLeast,
        IReadOnlyList<SheetKind> sheets,
        IReadOnlyList<long> costs,
        IReadOnlyList<IReadOnlySet<int>>? needs = null
    )
    {
        // What costs nothing may be taken at will. A need is a bit of a number, so that more than these are left out.
        var paid = (needs ?? []).Where(n => n.All(s => costs[s] > 0)).Take(MostNeeds).ToList();
        var kinds = Enumerable
            .Range(0, sheets.Count)
            .Where(s => costs[s] > 0)
            .GroupBy(s => costs[s])
            .OrderByDescending(g => g.Key)
            .Select(g => new Price(
                g.Key,
                Most(g.Select(s => sheets[s].Quantity), Math.Max(1, Ceiling(atLeast, g.Key))),
                paid.Index().Where(n => g.Any(n.Item.Contains)).Aggregate(0L, (bits, n) => bits | (1L << n.Index))
            ))
            .ToList();
        var tries = kinds.SkipLast(1).Aggregate(1.0, (product, k) => product * (k.Most + 1));
        var isCovered = kinds.Aggregate((Int128)0, (sum, k) => sum + ((Int128)k.Cost * k.Most)) >= atLeast;
        if ((atLeast <= 0 && paid.Count == 0) || !isCovered || tries > MostTries)
            return Math.Max(0, atLeast);
        var least = Least(atLeast, kinds.ToArray(), (1L << paid.Count) - 1);
        return least < Never ? least : Math.Max(0, atLeast);
    }

    private static long Least(long left, ReadOnlySpan<Price> kinds, long unmet)
    {
        if (left <= 0 && unmet == 0)
            return 0;
        if (kinds.Length == 0)
            return Never; // What is left cannot be bought this way.
        var (cost, most, meets) = kinds[0];
        var enough = Math.Max(Ceiling(Math.Max(0, left), cost), (meets & unmet) != 0 ? 1 : 0);
        var least = Never;
        for (var count = Math.Min(most, enough); count >= 0; count--)
        {
            var still = count > 0 ? unmet & ~meets : unmet;
            least = Math.Min(least, (count * cost) + Least(left - (count * cost), kinds[1..], still));
        }
        return least;
    }

    private static long Most(IEnumerable<int?> quantities, long enough) =>
        quantities.Aggregate(0L, (sum, q) => Math.Min(enough, sum + (q ?? enough)));

    private static long Ceiling(long number, long by) => (number + by - 1) / by;

    /// <summary>All kinds of one price.</summary>
    /// <param name="Cost">Of one sheet.</param>
    /// <param name="Most">How many there are, or would be enough.</param>
    /// <param name="Meets">The needs that one of them meets, a bit each.</param>
    private readonly record struct Price(long Cost, long Most, long Meets);
}

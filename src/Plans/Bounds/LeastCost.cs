namespace Nookwright.Bounds;

/// <summary>What wanted things are worth in some currency of our own, and the most any one sheet can yield in it.</summary>
/// <remarks>
/// Any worths whatever give a true bound, as long as the capacities are: a sheet of a kind yields at most its capacity. Whole
/// numbers throughout, so that nothing is lost or won by rounding.
/// </remarks>
/// <param name="Worth">Of all that is wanted together.</param>
/// <param name="Capacity">Of one sheet of each kind, in the order of the question.</param>
internal sealed record Worths(long Worth, IReadOnlyList<long> Capacity);

/// <summary>The least money, area or number of sheets that buys a worth.</summary>
/// <remarks>
/// By linear duality. With one kind of sheet and no end of them it is worth over capacity, rounded up to whole sheets; that is
/// Farley's bound (A. A. Farley, "A note on bounding a class of linear programming problems, including cutting stock
/// problems", Operations Research 38, 1990). Kinds that run out, such as offcuts, give at most their quantity times what
/// they yield beyond their own cost; the best exchange rate between worth and cost lies where some kind just pays.
/// </remarks>
internal static class LeastCost
{
    /// <summary>No set of sheets with this worth costs less.</summary>
    /// <param name="worths">Worths and capacities.</param>
    /// <param name="sheets">The kinds, as far as they run out.</param>
    /// <param name="costs">What one of each kind costs: zero or more.</param>
    public static long Of(Worths worths, IReadOnlyList<SheetKind> sheets, IReadOnlyList<long> costs)
    {
        var (cost, per) = Fraction(worths, sheets, costs);
        return (long)((cost + per - 1) / per);
    }

    /// <summary>The same before it is rounded up to a whole number.</summary>
    public static double Unrounded(Worths worths, IReadOnlyList<SheetKind> sheets, IReadOnlyList<long> costs)
    {
        var (cost, per) = Fraction(worths, sheets, costs);
        return (double)cost / (double)per;
    }

    private static (Int128 Cost, Int128 Per) Fraction(
        Worths worths,
        IReadOnlyList<SheetKind> sheets,
        IReadOnlyList<long> costs
    )
    {
        var kinds = Enumerable.Range(0, sheets.Count).Where(s => worths.Capacity[s] > 0).ToList();
        var best = (Cost: (Int128)0, Per: (Int128)1);
        kinds.Sort((a, b) => ((Int128)costs[a] * worths.Capacity[b]).CompareTo((Int128)costs[b] * worths.Capacity[a]));
        foreach (var rate in kinds)
        {
            var at = (Cost: At(rate), Per: (Int128)worths.Capacity[rate]);
            if ((double)at.Cost / (double)at.Per > (double)best.Cost / (double)best.Per)
                best = at;
            if (sheets[rate].Quantity is null)
                break; // A better rate would make one more of these a gain.
        }
        return best;

        Int128 At(int rate)
        {
            var (cost, capacity) = ((Int128)costs[rate], (Int128)worths.Capacity[rate]);
            var sum = cost * worths.Worth;
            foreach (var s in kinds)
                if (sheets[s].Quantity is { } quantity)
                    sum -= quantity * Int128.Max(0, (cost * worths.Capacity[s]) - (costs[s] * capacity));
            return sum;
        }
    }
}

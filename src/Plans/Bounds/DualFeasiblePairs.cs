namespace Nookwright.Bounds;

/// <summary>Alike things, with the ways they may lie.</summary>
/// <param name="Count">How many.</param>
/// <param name="Turns">Sizes along the sheet and across.</param>
internal sealed record WantedTurns(int Count, IReadOnlyList<(long X, long Y)> Turns);

/// <summary>Chooses the pair of functions, one for each way of the sheet, that asks for the most sheets.</summary>
internal static class DualFeasiblePairs
{
    /// <summary>The worth of all and the capacity of a sheet, by the best pair.</summary>
    public static (long Worth, long Capacity) Best(
        IReadOnlyList<WantedTurns> wants,
        IReadOnlyList<DualFeasible> alongX,
        IReadOnlyList<DualFeasible> alongY
    )
    {
        var turns = wants.SelectMany(w => w.Turns).ToList();
        var xs = alongX.Select(f => turns.Select(t => f.Of(t.X)).ToArray()).ToList();
        var ys = alongY.Select(f => turns.Select(t => f.Of(t.Y)).ToArray()).ToList();
        var (best, most) = ((Worth: 0L, Capacity: 1L), 0.0);
        for (var i = 0; i < xs.Count; i++)
        for (var j = 0; j < ys.Count; j++)
        {
            var pair = (Worth: Sum(wants, xs[i], ys[j]), Capacity: alongX[i].Capacity * alongY[j].Capacity);
            var sheets = (double)pair.Worth / pair.Capacity;
            if (sheets > most)
                (best, most) = (pair, sheets);
        }
        return best;
    }

    private static long Sum(IReadOnlyList<WantedTurns> wants, long[] xs, long[] ys)
    {
        var (sum, turn) = (0L, 0);
        foreach (var want in wants)
        {
            var least = long.MaxValue;
            for (var end = turn + want.Turns.Count; turn < end; turn++)
                least = Math.Min(least, xs[turn] * ys[turn]);
            sum += least == long.MaxValue ? 0 : least * want.Count;
        }
        return sum;
    }
}

namespace Nookwright.Bounds;

/// <summary>Bounds that are there at once: by area, and by dual feasible functions.</summary>
internal static class QuickBounds
{
    private const long Micrometre = 1000;

    // How many products are a matter of a few milliseconds.
    private const double MostProducts = 1_500_000;

    /// <summary>Worths by area: what a sheet yields is at most its own.</summary>
    public static Worths ByArea(WoodQuestion question)
    {
        var unit = Unit(question);
        return new(
            question.Wants.Sum(w => w.Count * (w.Length / unit) * (w.Width / unit)),
            [.. question.Sheets.Select(s => (s.X / unit) * (s.Y / unit))]
        );
    }

    /// <summary>
    /// The best pair of dual feasible functions, one for each way of a sheet as long as the longest and as wide as the widest:
    /// after Fekete and Schepers, "A general framework for bounds for higher-dimensional orthogonal packing problems",
    /// Mathematical Methods of Operations Research 60, 2004. What may be turned counts the way it is worth less.
    /// </summary>
    public static Worths ByDualFeasible(WoodQuestion question)
    {
        var unit = Unit(question);
        var (x, y) = (question.Sheets.Max(s => s.X) / unit, question.Sheets.Max(s => s.Y) / unit);
        var isFree = question.Sheets.Any(s => !s.HasFigure);
        var wants = question.Wants.Select(w => new WantedTurns(w.Count, [.. Turns(w)])).ToList();
        var most = (int)Math.Sqrt(MostProducts / wants.Sum(w => w.Turns.Count));
        var alongX = DualFeasible.For(x, wants.SelectMany(w => w.Turns).Select(t => t.X), most);
        var alongY = DualFeasible.For(y, wants.SelectMany(w => w.Turns).Select(t => t.Y), most);
        var (worth, capacity) = DualFeasiblePairs.Best(wants, alongX, alongY);
        return new(worth, [.. question.Sheets.Select(_ => capacity)]);

        IEnumerable<(long X, long Y)> Turns(Want want)
        {
            var (length, width) = (want.Length / unit, want.Width / unit);
            if ((want.Lengthways || isFree) && length <= x && width <= y)
                yield return (length, width);
            if ((want.Crossways || isFree) && width <= x && length <= y)
                yield return (width, length);
        }
    }

    /// <summary>What sizes are counted in: their greatest common measure, or whole micrometres, rounded down, where that is finer.</summary>
    private static long Unit(WoodQuestion question)
    {
        var sizes = question.Wants.SelectMany(w => new[] { w.Length, w.Width });
        return Math.Max(Micrometre, sizes.Aggregate(0L, Gcd));
    }

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}

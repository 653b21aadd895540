namespace Nookwright.Tests.Planning;

/// <summary>The fewest sheets for a handful of parts that may not be turned, by trying every guillotine cut: an answer from outside.</summary>
internal static class TryingEverything
{
    public static int FewestSheets(int sheetX, int sheetY, int kerf, (int X, int Y)[] parts)
    {
        var all = (1 << parts.Length) - 1;
        var fits = Enumerable.Range(0, all + 1).Select(set => Fits(sheetX, sheetY, set, kerf, parts, [])).ToArray();
        var fewest = new int[all + 1];
        for (var set = 1; set <= all; set++)
        {
            fewest[set] = int.MaxValue;
            for (var part = set; part > 0; part = (part - 1) & set)
                if (fits[part])
                    fewest[set] = Math.Min(fewest[set], fewest[set & ~part] + 1);
        }
        return fewest[all];
    }

    /// <summary>True when some guillotine cutting of a rectangle yields all parts of a set.</summary>
    private static bool Fits(
        int x,
        int y,
        int set,
        int kerf,
        (int X, int Y)[] parts,
        Dictionary<(int, int, int), bool> known
    )
    {
        if (set == 0)
            return true;
        if (x <= 0 || y <= 0)
            return false;
        if (int.IsPow2(set))
            return parts[int.Log2(set)] is var one && one.X <= x && one.Y <= y;
        if (known.TryGetValue((x, y, set), out var fits))
            return fits;
        fits = false;
        for (var first = (set - 1) & set; first > 0 && !fits; first = (first - 1) & set)
        {
            var rest = set & ~first;
            for (var at = 1; at < x && !fits; at++)
                fits = Fits(at, y, first, kerf, parts, known) && Fits(x - at - kerf, y, rest, kerf, parts, known);
            for (var at = 1; at < y && !fits; at++)
                fits = Fits(x, at, first, kerf, parts, known) && Fits(x, y - at - kerf, rest, kerf, parts, known);
        }
        return known[(x, y, set)] = fits;
    }
}

using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Tests.Planning;

/// <summary>The fewest sheets for a handful of parts in whole millimetres, without kerf: every cut, every way to share, every turn.</summary>
internal sealed class GuillotineByTrying(CutPart[] parts)
{
    private readonly Dictionary<(int Set, int X, int Y), bool> _known = [];
    private readonly int[] _areas = [.. Enumerable.Range(0, 1 << parts.Length).Select(set => AreaOf(parts, set))];

    /// <summary>The fewest sheets of a size.</summary>
    public int FewestSheets(int x, int y)
    {
        var all = (1 << parts.Length) - 1;
        var fewest = Enumerable.Repeat(int.MaxValue / 2, all + 1).ToArray();
        fewest[0] = 0;
        for (var set = 1; set <= all; set++)
            foreach (var one in Subsets(set).Where(s => Fits(s, x, y)))
                fewest[set] = Math.Min(fewest[set], fewest[set & ~one] + 1);
        return fewest[all];
    }

    private bool Fits(int set, int x, int y)
    {
        if (int.IsPow2(set))
            return FitsAlone(parts[int.Log2(set)], x, y);
        if (_areas[set] > x * y)
            return false;
        if (!_known.TryGetValue((set, x, y), out var fits))
            _known[(set, x, y)] = fits = Halves(set).Any(first => FitsCut(first, set & ~first, x, y));
        return fits;
    }

    private bool FitsCut(int first, int second, int x, int y) =>
        Enumerable.Range(1, Math.Max(0, x - 1)).Any(at => Fits(first, at, y) && Fits(second, x - at, y))
        || Enumerable.Range(1, Math.Max(0, y - 1)).Any(at => Fits(first, x, at) && Fits(second, x, y - at));

    private static int AreaOf(CutPart[] parts, int set) =>
        parts.Where((_, i) => (set & (1 << i)) != 0).Sum(p => (int)(p.Length.Millimetres * p.Width.Millimetres));

    private static bool FitsAlone(CutPart part, int x, int y)
    {
        var (length, width) = ((int)part.Length.Millimetres, (int)part.Width.Millimetres);
        return (length <= x && width <= y) || (part.Figure == PanelFigure.Any && width <= x && length <= y);
    }

    private static IEnumerable<int> Subsets(int set)
    {
        for (var part = set; part > 0; part = (part - 1) & set)
            yield return part;
    }

    private static IEnumerable<int> Halves(int set) => Subsets(set).Where(s => s != set);
}

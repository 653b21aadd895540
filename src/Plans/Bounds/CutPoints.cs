using System.Numerics;

namespace Nookwright.Bounds;

/// <summary>The distances from an edge at which a cut can matter, in whole steps.</summary>
/// <remarks>
/// In a guillotine pattern everything can be pushed to the low edges; then every cut lies at a sum of sizes (J. C. Herz,
/// "Recursive computational procedure for two-dimensional stock cutting", IBM Journal of Research and Development 16, 1972;
/// Christofides and Whitlock, "An algorithm for two-dimensional cutting problems", Operations Research 25, 1977, who take no
/// size more often than it is wanted).
/// </remarks>
internal sealed class CutPoints
{
    private readonly int[] _below;

    private CutPoints(List<int> at, int extent)
    {
        At = [.. at];
        _below = new int[extent + 1];
        for (int step = 0, index = 0; step <= extent; step++)
        {
            if (index + 1 < At.Length && At[index + 1] == step)
                index++;
            _below[step] = index;
        }
    }

    /// <summary>The points in rising order, nought first.</summary>
    public int[] At { get; }

    /// <summary>The index of the last point not beyond a distance; nought for a distance below nought.</summary>
    public int Below(int distance) => distance <= 0 ? 0 : _below[Math.Min(distance, _below.Length - 1)];

    /// <summary>All sums of sizes, each thing taken in one of its ways and not more often than it is wanted.</summary>
    public static CutPoints Sums(int extent, IEnumerable<(IReadOnlyList<int> Sizes, int Count)> things)
    {
        var reached = BigInteger.One;
        var all = (BigInteger.One << (extent + 1)) - 1;
        foreach (var (sizes, count) in things)
            for (var i = 0; i < count; i++)
            {
                var before = reached;
                foreach (var size in sizes)
                    reached |= before << size;
                reached &= all;
                if (reached == before)
                    break;
            }
        return new(Bits(reached, extent), extent);
    }

    /// <summary>All sums of pieces with a gap between neighbours.</summary>
    public static CutPoints Chains(int extent, IEnumerable<int> pieces, int gap)
    {
        var reached = new bool[extent + 1];
        reached[0] = true;
        var sizes = pieces.Where(p => p > 0 && p <= extent).Distinct().Order().ToList();
        for (var from = 0; from <= extent; from++)
        {
            if (!reached[from])
                continue;
            var start = from == 0 ? 0 : from + gap;
            foreach (var size in sizes.TakeWhile(s => start + s <= extent))
                reached[start + size] = true;
        }
        return new([.. Enumerable.Range(0, extent + 1).Where(i => reached[i])], extent);
    }

    private static List<int> Bits(BigInteger reached, int extent)
    {
        var bytes = reached.ToByteArray();
        return
        [
            .. Enumerable.Range(0, extent + 1).Where(i => i / 8 < bytes.Length && (bytes[i / 8] >> (i % 8) & 1) != 0),
        ];
    }
}

namespace Nookwright.Bounds;

/// <summary>
/// A dual feasible function of sizes up to an extent: whatever sizes fit into the extent together, their values fit into its
/// capacity together.
/// </summary>
/// <remarks>
/// The three families of Fekete and Schepers, "New classes of fast lower bounds for bin packing problems", Mathematical
/// Programming 91, 2001, in whole numbers: each value is theirs times the capacity.
/// </remarks>
/// <param name="Capacity">The value of the whole extent.</param>
/// <param name="Of">The value of a size.</param>
internal sealed record DualFeasible(long Capacity, Func<long, long> Of)
{
    private const int MostParts = 12;

    /// <summary>Functions whose steps lie at the sizes that occur, the plain size first; not more than asked.</summary>
    public static IReadOnlyList<DualFeasible> For(long extent, IEnumerable<long> sizes, int most)
    {
        var distinct = sizes.Distinct().Order().ToList();
        var small = distinct.Where(s => 2 * s <= extent).ToList();
        var large = distinct.Where(s => 2 * s > extent && s < extent).ToList();
        List<long> cuts = [.. small.Concat(large.Select(s => extent - s)).Concat(large.Select(s => extent - s + 1))];
        var rising = cuts.Where(c => c > 0 && 2 * c <= extent).Distinct().Order().ToList();
        List<DualFeasible> all =
        [
            new(extent, size => size),
            .. Enumerable.Range(1, MostParts).Select(k => Rounded(extent, k)),
            .. rising.Select(c => LargeAsWhole(extent, c)),
            .. rising.Select(c => InSteps(extent, c)),
        ];
        return Thinned(all, Math.Max(1, most));
    }

    /// <summary>Their u(k): sizes rounded down to whole k-ths, but those of an exact (k+1)-th.</summary>
    private static DualFeasible Rounded(long extent, long k) =>
        new(k * extent, size => (k + 1) * size % extent == 0 ? k * size : (k + 1) * size / extent * extent);

    /// <summary>Their U(ε): what leaves less than ε beside it counts as all, what is less than ε as nothing.</summary>
    private static DualFeasible LargeAsWhole(long extent, long least) =>
        new(
            extent,
            size =>
                size < least ? 0
                : size > extent - least ? extent
                : size
        );

    /// <summary>Their φ(ε): small sizes count one, large ones what they leave no room for.</summary>
    private static DualFeasible InSteps(long extent, long least) =>
        new(
            extent / least,
            size =>
                size < least ? 0
                : 2 * size <= extent ? 1
                : (extent / least) - ((extent - size) / least)
        );

    private static List<DualFeasible> Thinned(List<DualFeasible> all, int most) =>
        all.Count <= most ? all : [.. Enumerable.Range(0, most).Select(i => all[(int)((long)i * all.Count / most)])];
}

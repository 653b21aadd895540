namespace Nookwright.Bounds;

/// <summary>Sizes along one way of a sheet, in nanometres.</summary>
/// <param name="Extent">Of the largest sheet.</param>
/// <param name="Region">The most that goes to the table saw in one piece.</param>
/// <param name="Gap">What is lost between two chunks.</param>
/// <param name="Fine">Sizes of things cut at the table saw, with how many there are of each.</param>
/// <param name="Rough">The same of blanks.</param>
internal sealed record AxisSizes(
    long Extent,
    long Region,
    long Gap,
    IReadOnlyList<(IReadOnlyList<long> Sizes, int Count)> Fine,
    IReadOnlyList<(IReadOnlyList<long> Sizes, int Count)> Rough
);

/// <summary>The cut points of one way of a sheet, on a grid that is fine enough to be exact or coarse enough to be quick.</summary>
/// <remarks>
/// All sizes, of things and sheets alike, are rounded down to whole steps. Things that fit side by side still do: the sum of
/// what is rounded down is at most the sum rounded down. So a coarse grid gives a weaker bound, and never a false one.
/// </remarks>
internal sealed class AxisGrid
{
    private const int FinestSteps = 40_000;
    private const double Coarser = 1.15;
    private const int StepsTried = 16;

    private AxisGrid(AxisSizes sizes, long step)
    {
        Step = step;
        Gap = Steps(sizes.Gap);
        Fine = CutPoints.Sums(Steps(sizes.Region), InSteps(sizes.Fine));
        var isWhole = sizes.Region >= sizes.Extent && sizes.Rough.Count == 0;
        var chunks = Fine.At.Concat(sizes.Rough.SelectMany(r => r.Sizes).Select(Steps));
        Rough = isWhole ? Fine : CutPoints.Chains(Steps(sizes.Extent), chunks, Gap);
    }

    /// <summary>In nanometres.</summary>
    public long Step { get; }

    /// <summary>True when nothing but the sheet was rounded.</summary>
    public bool IsExact { get; private init; }

    /// <summary>Between two chunks, in steps.</summary>
    public int Gap { get; }

    /// <summary>Where the table saw can cut.</summary>
    public CutPoints Fine { get; }

    /// <summary>Where the track saw can.</summary>
    public CutPoints Rough { get; }

    /// <summary>A length in whole steps.</summary>
    public int Steps(long length) => (int)(length / Step);

    /// <summary>The grid with not more points than asked that loses the least.</summary>
    public static AxisGrid Of(AxisSizes sizes, int most)
    {
        var exact = sizes.Fine.Concat(sizes.Rough).SelectMany(s => s.Sizes).Append(sizes.Gap).Aggregate(0L, Gcd);
        var finest = Math.Max(Math.Max(1, exact), sizes.Extent / FinestSteps);
        for (var step = finest; ; step = (long)(step * Coarser) + 1)
        {
            var grid = new AxisGrid(sizes, step) { IsExact = step == exact };
            if (Math.Max(grid.Fine.At.Length, grid.Rough.At.Length) <= most)
                return grid.IsExact ? grid : Best(sizes, step);
        }
    }

    private static AxisGrid Best(AxisSizes sizes, long from)
    {
        var steps = Enumerable.Range(0, StepsTried).Select(i => from + (from * i / (2 * StepsTried)));
        return new(sizes, steps.MaxBy(step => Kept(sizes, step)));
    }

    /// <summary>How much of the sizes is left after rounding, against what is left of the sheet.</summary>
    private static double Kept(AxisSizes sizes, long step) =>
        sizes.Fine.Concat(sizes.Rough).Sum(s => s.Count * s.Sizes.Average(size => (double)(size / step)))
        / Math.Max(1, sizes.Extent / step);

    private IEnumerable<(IReadOnlyList<int>, int)> InSteps(
        IEnumerable<(IReadOnlyList<long> Sizes, int Count)> things
    ) => things.Select(t => ((IReadOnlyList<int>)[.. t.Sizes.Select(Steps)], t.Count));

    private static long Gcd(long a, long b) => b == 0 ? a : Gcd(b, a % b);
}

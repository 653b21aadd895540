using CsCheck;
using Nookwright.Bounds;

namespace Nookwright.Tests.Bounds;

/// <summary>What makes a function dual feasible.</summary>
public class DualFeasibleFunctions
{
    [Fact]
    public void Values_of_sizes_that_fit_together_fit_together_too() =>
        Gen.Select(Gen.Long[1, 200], Gen.Long[1, 200].Array[1, 8], Gen.Long[1, 200].Array[0, 8])
            .Sample(
                (extent, sizes, steps) =>
                {
                    var fitting = Fitting(sizes, extent).ToList();
                    foreach (
                        var function in DualFeasible.For(extent, [.. steps.Where(s => s <= extent), .. fitting], 1000)
                    )
                        Assert.True(fitting.Sum(function.Of) <= function.Capacity);
                },
                iter: 2000
            );

    /// <summary>Of 100: 2/3 rounds down to a half at k = 2, and an exact third stays one; 60 counts as all where 40 is the least that counts.</summary>
    [Fact]
    public void The_three_families_by_hand()
    {
        var functions = DualFeasible.For(99, [41, 60], 1000);
        var half = functions.First(f => f.Capacity == 2 * 99);
        Assert.Equal([0, 66, 99], new long[] { 32, 33, 65 }.Select(half.Of));
        Assert.Contains(functions, f => f.Capacity == 99 && f.Of(60) == 99 && f.Of(39) == 0 && f.Of(45) == 45);
        Assert.Contains(functions, f => f.Capacity == 2 && f.Of(60) == 2 && f.Of(41) == 1 && f.Of(40) == 0);
    }

    private static IEnumerable<long> Fitting(long[] sizes, long extent)
    {
        foreach (var size in sizes)
            if (size <= extent)
            {
                extent -= size;
                yield return size;
            }
    }
}

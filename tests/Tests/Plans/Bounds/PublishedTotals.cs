using Nookwright.Tests.Planning;

namespace Nookwright.Tests.Bounds;

/// <summary>
/// Ten instances of 20 parts of each class of Berkey and Wang, and Martello and Vigo: bounds together are at most the best
/// published number of bins of guillotine cutting without turning (Gardeyn and Wauters 2022, table 1).
/// </summary>
public class PublishedTotals
{
    public static TheoryData<int> Classes => [.. Enumerable.Range(1, 10)];

    [Theory]
    [MemberData(nameof(Classes))]
    public void Bounds_are_at_most_the_best_published_totals_and_not_far_below(int kind)
    {
        var bounds = PublicInstances
            .Bins("class500.txt")
            .Where(i => i.Name.StartsWith($"cl{kind:00}_020", StringComparison.Ordinal))
            .Sum(i => Given.Sharpest(i.Request, i.Request.Stock[0].Material).Sheets);
        var best = PublicInstances.BestKnown()[$"{kind}_020"].Values.Min();
        TestContext.Current.TestOutputHelper?.WriteLine($"class {kind}: bounds {bounds}, best published {best}");
        Assert.InRange(bounds, best * 9 / 10, best);
    }
}

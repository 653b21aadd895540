using Nookwright.Cutting;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Planning;

/// <summary>
/// The instances of Berkey and Wang (classes 1 to 6) and Martello and Vigo (7 to 10), ten of 20 parts a class, against the
/// bins that six published methods for oriented guillotine cutting need (Gardeyn and Wauters 2022, table 1). No kerf, no
/// dressing, no visits: the same planner, sheets alone.
/// </summary>
public class PublishedBins
{
    public static TheoryData<int> Classes => [.. Enumerable.Range(1, 10)];

    [Theory]
    [MemberData(nameof(Classes))]
    public void Twenty_parts_need_at_most_one_sheet_more_in_ten_instances_than_the_best_published_method(int kind)
    {
        var plans = PublicInstances
            .Bins("class500.txt")
            .Where(i => i.Name.StartsWith($"cl{kind:00}_020", StringComparison.Ordinal))
            .Select(i => (i.Name, Request: i.Request with { Rules = new(VisitsFirst: false, Effort: 60) }))
            .Select(i => (i.Name, i.Request, Plan: Jobs.PlanOf(i.Request)))
            .ToList();
        Assert.All(plans, p => Assert.True(VirtualSaw.Run(p.Plan, p.Request).Accepted, p.Name));
        Assert.All(plans, p => Assert.True(p.Plan.Sheets.Count >= AreaBound(p.Request), p.Name));
        var known = PublicInstances.BestKnown()[$"{kind}_020"];
        var sum = plans.Sum(p => p.Plan.Sheets.Count);
        TestContext.Current.TestOutputHelper?.WriteLine($"class {kind}: {sum}, published {known["GDRR2022"]}");
        Assert.InRange(sum, 1, known.Values.Min() + 1);
    }

    private static int AreaBound(CutRequest request)
    {
        var sheet = request.Stock[0].Length.Millimetres * request.Stock[0].Width.Millimetres;
        return (int)Math.Ceiling(request.Parts.Sum(p => p.Length.Millimetres * p.Width.Millimetres) / sheet);
    }
}

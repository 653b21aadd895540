using Nookwright.Cutting;
using Nookwright.Planning;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Planning;

/// <summary>The exact finish puts a plan together from sheets that were laid out at different times.</summary>
public class FinishingFromAPool
{
    private static readonly ExactChooser Chooser = new(most: 5);

    /// <summary>A pool with all sheets of a better plan, among those of worse ones, gives a plan as good.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_better_plan_that_lies_in_the_pool_is_found(bool isVisitsFirst)
    {
        var better = 0;
        for (var seed = 0; seed < 12; seed++)
        {
            var request = Plain(seed) with { Rules = new(isVisitsFirst, seed) };
            var job = JobReader.Read(request);
            var layouts = Enumerable
                .Range(0, 4)
                .Select(way => Constructed(job, way))
                .OrderBy(l => Cost(job, l))
                .ToList();
            var (best, worst) = (layouts[0], layouts[^1]);
            if (Cost(job, best) == Cost(job, worst))
                continue;
            var found = Finished(job, worst, layouts);
            Assert.NotNull(found);
            Assert.True(Cost(job, found) <= Cost(job, best));
            Assert.Empty(Candidate.Of(job, found).Layout.Waiting);
            better++;
        }
        Assert.True(better > 2);
    }

    [Fact]
    public void From_the_sheets_of_one_plan_nothing_better_comes()
    {
        var job = JobReader.Read(Plain(3));
        var layout = Constructed(job, 0);
        Assert.Null(Finished(job, layout, [layout]));
    }

    private static CutRequest Plain(int seed)
    {
        var request = RandomJobs.Of(seed, 30);
        var parts = request.Parts.Where(p => p.Material == "birch").Select(p => p with { Awaits = [] });
        return request with { Parts = [.. parts], Matches = [], Runs = [], Stock = [Jobs.Sheet()] };
    }

    private static Layout Constructed(Job job, int way)
    {
        var search = new Search(job, way);
        search.Construct(way, isRackFirst: false, TestContext.Current.CancellationToken);
        return search.Layout;
    }

    private static Layout? Finished(Job job, Layout from, List<Layout> layouts)
    {
        var pool = new SheetPool(job, "birch", from.Sheets.Count);
        foreach (var sheet in layouts.SelectMany(l => l.Sheets))
            pool.Keep(sheet);
        var stop = TestContext.Current.CancellationToken;
        if (new ExactFinish(job, Chooser).Better(from.Copy(), [pool], "birch", stop) is not { } picture)
            return null;
        var layout = new Layout(job);
        layout.Restore(picture);
        return layout;
    }

    private static long Cost(Job job, Layout layout) => layout.Sheets.Sum(s => job.CostOf(s.Stock));
}

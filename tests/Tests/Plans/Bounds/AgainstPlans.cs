using Nookwright.Bounds;
using Nookwright.Cutting;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Bounds;

/// <summary>No bound is above what a plan needs that the virtual saw has executed: jobs and shops drawn by lot.</summary>
public class AgainstPlans
{
    public static TheoryData<int> Tens => [.. Enumerable.Range(0, 20).Select(i => i * 10)];

    [Theory]
    [MemberData(nameof(Tens))]
    public void Ten_jobs_with_kerf_dressing_runs_held_parts_and_offcuts(int first)
    {
        for (var seed = first; seed < first + 10; seed++)
        {
            var request = Drawn(seed);
            var plan = PlanOf(request);
            if (plan.Proof!.Missing == 0)
                Assert.All(
                    plan.Sheets.Select(s => s.Material).Distinct(),
                    material => AssertBelow(request, plan, material)
                );
        }
    }

    private static void AssertBelow(CutRequest request, Plan plan, string material)
    {
        var stock = request.Stock.ToDictionary(s => s.Id);
        var used = plan.Sheets.Where(s => s.Material == material).Select(s => stock[s.Stock]).ToList();
        var finder = new BoundFinder(request, material);
        foreach (var _ in finder.Sharpen().TakeWhile((_, step) => step < 25))
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
        Assert.InRange(finder.Bound.Cost, 0, used.Sum(s => StockCost.Of(s, request.Stock)));
        Assert.InRange(finder.Bound.Sheets, 0, used.Count(s => !s.IsOffcut));
    }

    private static CutRequest Drawn(int seed)
    {
        var random = new Random(seed);
        var job = RandomJobs.Of(seed, 3 + random.Next(18));
        T One<T>(params T[] of) => of[random.Next(of.Length)];
        var saws = Jobs.Shop with
        {
            TableKerf = Mm(One(3m, 3.2m, 2m, 0m)),
            TrackKerf = Mm(One(2m, 1.6m, 3m, 0m)),
            Dressing = Mm(One(6m, 0m, 1m, 10m)),
            ChunkLength = Mm(One(2440m, 1500m, 900m)),
            ChunkWidth = Mm(One(1220m, 800m)),
        };
        List<StockPiece> stock = [.. job.Stock];
        if (random.Next(2) == 0)
            stock.Add(Sheet(1220, 1220));
        if (random.Next(3) == 0)
            stock = [.. stock.Select(s => s with { Price = (decimal)s.Width.Millimetres / One(20, 25) })];
        for (var i = random.Next(3); i > 0; i--)
            stock.Add(
                Sheet(400 + random.Next(1000), 300 + random.Next(700), 1) with
                {
                    Id = $"rack{i}",
                    IsOffcut = true,
                }
            );
        return job with { Saws = saws, Stock = stock, Matches = [], Rules = new(Seed: seed, Effort: 3) };
    }
}

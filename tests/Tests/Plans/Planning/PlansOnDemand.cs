using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Planning;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Planning;

/// <summary>The search as those who wait for it see it: it repeats itself, tells of better plans, and can be stopped.</summary>
public class PlansOnDemand
{
    [Theory]
    [InlineData(2)]
    [InlineData(23)]
    [InlineData(101)]
    public void The_same_request_and_seed_give_the_same_plan_to_the_letter(int seed)
    {
        var again = RandomJobs.Of(seed);
        Assert.Equal(Written(RandomJobs.Of(seed)), Written(again));
    }

    [Fact]
    public void Every_plan_shown_can_be_cut_and_is_better_than_the_one_before()
    {
        var shown = new Shown();
        var job = RandomJobs.Of(12, 60) with { Rules = new(Seed: 3) };
        Planner.Plan(job, shown, TestContext.Current.CancellationToken);
        Assert.All(shown.Plans, plan => Assert.Null(VirtualSaw.Run(plan, job).Why));
        var scores = shown.Plans.Select(p => PlanScore.Of(p, job)).ToList();
        Assert.All(scores.Zip(scores.Skip(1)), pair => Assert.True(pair.Second.CompareTo(pair.First) < 0));
    }

    [Fact]
    public void Stopped_after_the_first_plan_it_keeps_the_best_so_far_and_shows_no_other()
    {
        using var stop = new CancellationTokenSource();
        var shown = new Shown { AfterEach = stop.Cancel };
        var job = RandomJobs.Of(12, 60);
        var kept = Planner.Plan(job, shown, stop.Token);
        Assert.Same(Assert.Single(shown.Plans).Visits, kept.Visits);
        Assert.Null(VirtualSaw.Run(kept, job).Why);
    }

    private static string Written(CutRequest request) => PlanJson.Write(Jobs.PlanOf(request), request);

    private sealed class Shown : IProgress<Plan>
    {
        public List<Plan> Plans { get; } = [];

        public Action AfterEach { get; init; } = () => { };

        public void Report(Plan value)
        {
            Plans.Add(value);
            AfterEach();
        }
    }
}

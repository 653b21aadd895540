using CsCheck;
using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Planning;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Planning;

public class RandomPlans
{
    [Fact]
    public void Every_plan_of_a_job_drawn_by_lot_can_be_cut() =>
        RandomJobs.Any.Sample(job => Assert.Null(VirtualSaw.Run(Jobs.PlanOf(job), job).Why), iter: 100, threads: 1);

    [Fact]
    public void Every_dimension_is_visited_once_and_all_parts_are_made() =>
        RandomJobs.Any.Sample(
            job =>
            {
                var plan = Jobs.PlanOf(job);
                Assert.Equal(plan.DimensionsNow, plan.Visits.Count);
                var named = plan.Findings.SelectMany(f => f.About).ToHashSet();
                var inRun = job.Runs.SelectMany(r => r.Parts).ToHashSet();
                var made = plan.Workpieces.Select(p => p.Part).ToHashSet();
                Assert.All(
                    job.Parts,
                    p => Assert.True(made.Contains(p.Id) || named.Contains(p.Id) || inRun.Contains(p.Id))
                );
            },
            iter: 60,
            threads: 1
        );

    [Fact]
    public void The_same_seed_gives_the_same_plan()
    {
        var job = RandomJobs.Of(17, 40);
        Assert.Equal(PlanJson.Write(Jobs.PlanOf(job), job), PlanJson.Write(Jobs.PlanOf(job), job));
    }

    [Fact]
    public void Searching_never_makes_a_plan_worse() =>
        RandomJobs.Any.Sample(
            job =>
            {
                var quick = PlanScore.Of(Jobs.PlanOf(job with { Rules = new(Effort: 0) }), job);
                var long_ = PlanScore.Of(Jobs.PlanOf(job with { Rules = new(Effort: 20) }), job);
                Assert.True(long_.CompareTo(quick) <= 0);
            },
            iter: 15,
            threads: 1
        );

    [Fact]
    public void A_first_plan_is_shown_before_the_search_and_better_ones_after()
    {
        var shown = new List<Plan>();
        var job = RandomJobs.Of(4, 60) with { Rules = new() };
        var last = Planner.Plan(job, new Shown(shown), TestContext.Current.CancellationToken);
        Assert.NotEmpty(shown);
        Assert.Same(last.Visits, shown[^1].Visits);
        Assert.All(shown, plan => Assert.True(VirtualSaw.Run(plan, job).Accepted));
    }

    [Fact]
    public void A_search_that_is_stopped_before_its_first_plan_throws() =>
        Assert.Throws<OperationCanceledException>(() =>
            Planner.Plan(RandomJobs.Of(4, 60), null, new CancellationToken(canceled: true))
        );

    [Fact]
    public void Thousands_of_parts_are_planned()
    {
        var job = RandomJobs.Of(3, 3000) with { Rules = new(Effort: 1) };
        Assert.True(VirtualSaw.Run(Jobs.PlanOf(job), job).Accepted);
    }

    /// <summary>
    /// Up to five parts on sheets of 12 × 9 with a kerf of 1: no plan uses fewer sheets than the best two-stage-and-deeper
    /// guillotine packing found by trying everything.
    /// </summary>
    [Fact]
    public void On_tiny_jobs_it_is_within_a_sheet_of_trying_everything_and_never_below() =>
        Gen.Select(Gen.Int[1, 11], Gen.Int[1, 8])
            .List[1, 5]
            .Sample(
                sizes =>
                {
                    var parts = sizes
                        .Select((s, i) => Jobs.Part($"p{i}", s.Item1, s.Item2, Nookwright.Projects.PanelFigure.Length))
                        .ToArray();
                    var request = Jobs.Request(parts) with
                    {
                        Stock = [Jobs.Sheet(12, 9)],
                        Saws = Jobs.Ideal with { TableKerf = Jobs.Mm(1) },
                        Rules = new(VisitsFirst: false),
                    };
                    var fewest = TryingEverything.FewestSheets(12, 9, 1, [.. sizes]);
                    Assert.InRange(Jobs.PlanOf(request).Sheets.Count, fewest, fewest + 1);
                },
                iter: 60,
                threads: 1
            );

    [Fact]
    public void One_visit_fewer_is_worth_any_number_of_sheets() =>
        Assert.True(new PlanScore(0, 0, 4, 900m, 9, 0, 99, 99).CompareTo(new PlanScore(0, 0, 5, 1m, 1, 0, 1, 1)) < 0);

    private sealed class Shown(List<Plan> plans) : IProgress<Plan>
    {
        public void Report(Plan value) => plans.Add(value);
    }
}

using CsCheck;
using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Planning;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

/// <summary>The plans between the fewest visits and the least wood.</summary>
public class FrontsOfPlans
{
    /// <summary>
    /// Sheets of 1000 × 700 after dressing, no kerf, nothing may be turned. The six parts have the area of two sheets. 1000 × 400
    /// leaves 1000 × 300, which only one 550 × 300 and the 450 × 300 fill; so the other sheet has 550 × 300, 550 × 400 and
    /// 450 × 700. The first sheet is ripped right across before anything else, hence 300 before 450 and 550, or 400 before 450
    /// and 550. The second is crosscut right across first, hence 550 before 300 and 400, or 450 before 300 and 400. Each of the
    /// four pairs runs in a circle: no two sheets with one visit for each of the six dimensions. With 300 visited again after
    /// 550 there are: 300 and 400 on the first sheet, 1000, 450, 700, 550 on both, 400 and 300 on the second, where 400 was
    /// left on the first until now.
    /// </summary>
    internal static CutRequest OneMoreVisitSavesASheet { get; } =
        Request(
            Part("a", 550, 300, PanelFigure.Length),
            Part("b", 450, 300, PanelFigure.Length),
            Part("c", 1000, 400, PanelFigure.Length),
            Part("d", 550, 300, PanelFigure.Length),
            Part("e", 550, 400, PanelFigure.Length),
            Part("f", 450, 700, PanelFigure.Length)
        ) with
        {
            Stock = [Sheet(1002, 702)],
            Saws = Ideal with { Dressing = Mm(1) },
        };

    /// <summary>Tight jobs: parts of few sizes, so that a sheet can hang on the order of visits.</summary>
    private static readonly Gen<CutRequest> Tight = Gen.Int[0, 10_000]
        .Select(seed => RandomJobs.Of(seed, 12) with { Rules = new(Effort: 10) });

    [Fact]
    public void One_more_visit_saves_one_sheet()
    {
        var front = FrontOf(OneMoreVisitSavesASheet);
        Assert.Equal([(6, 3), (7, 2)], front.Plans.Select(p => (p.Visits, p.Sheets)));
        Assert.StartsWith("One sheet fewer for 1 more visit; ", front.First.Next);
        Assert.Empty(front.First.Splits);
        Assert.Single(front.Plans[1].Splits);
        Assert.Null(front.Plans[1].Next);
    }

    [Fact]
    public void What_must_match_is_not_split_for_a_sheet()
    {
        string[] heights = ["a", "b", "d"];
        string[] lengths = ["a", "d", "e"];
        var front = FrontOf(
            OneMoreVisitSavesASheet with
            {
                Matches = [Match("heights", MatchedSide.Width, heights), Match("lengths", MatchedSide.Length, lengths)],
            }
        );
        Assert.All(front.Plans, p => Assert.DoesNotContain(p.Splits, s => s.Size == Mm(300) || s.Size == Mm(550)));
    }

    [Fact]
    public void The_maker_chooses_by_the_visits_that_are_accepted()
    {
        var front = FrontOf(OneMoreVisitSavesASheet);
        Assert.Same(front.First, front.Chosen(0));
        Assert.Same(front.Plans[1], front.Chosen(1));
        Assert.Same(front.Plans[1], front.Chosen(100));
    }

    [Fact]
    public void Every_step_makes_more_visits_buys_less_and_can_be_cut() =>
        Tight.Sample(
            job =>
            {
                var plan = PlanOf(job);
                var front = Planner.Front(job, plan, null, TestContext.Current.CancellationToken);
                Assert.True(front.First.Score.CompareTo(PlanScore.Of(plan, job)) <= 0);
                Assert.All(front.Plans, p => Assert.Null(VirtualSaw.Run(p.Plan, job).Why));
                Assert.All(
                    front.Plans.Zip(front.Plans.Skip(1)),
                    step =>
                    {
                        Assert.True(step.First.Visits < step.Second.Visits);
                        Assert.True(
                            (step.Second.Score.Missing, step.Second.Score.Bought).CompareTo(
                                (step.First.Score.Missing, step.First.Score.Bought)
                            ) < 0
                        );
                    }
                );
            },
            iter: 40,
            threads: 1
        );

    [Fact]
    public void The_same_request_gives_the_same_front()
    {
        var job = RandomJobs.Of(17, 14) with { Rules = new(Effort: 20) };
        Assert.Equal(FrontJson.Write(FrontOf(job), 0), FrontJson.Write(FrontOf(job), 0));
    }

    [Fact]
    public void Fronts_that_are_told_on_the_way_only_get_better_and_a_stop_keeps_the_best()
    {
        using var stop = new CancellationTokenSource();
        var told = new Told(stop, after: 2);
        var front = Planner.Front(OneMoreVisitSavesASheet, null, told, stop.Token);
        Assert.Equal(2, told.Fronts.Count);
        Assert.Single(told.Fronts[0].Plans);
        Assert.Equal(told.Fronts[1].Plans.Select(p => p.Plan), front.Plans.Select(p => p.Plan));
    }

    [Fact]
    public void Where_the_first_plan_is_the_least_wood_there_is_nothing_to_trade()
    {
        var front = FrontOf(Request(Part("a", 600, 400)));
        Assert.True(front.IsNothingToTrade);
        Assert.Equal(NoTrade.Proven, front.WhyNone);
        Assert.Equal(
            "Nothing to trade: no plan buys less wood, however many visits it makes. That is proven.",
            front.Sentence
        );
    }

    [Fact]
    public void Where_less_was_looked_for_in_vain_it_says_what_is_bought_and_what_is_the_least_for_all_that_is_known()
    {
        var proof = new PlanProof(
            0,
            [new(1, 25, 25)],
            [new("birch", 5, 4, WoodMeasure.Money, 480, 384, "area", "common practice")]
        );
        var plan = FrontOf(Request(Part("a", 600, 400))).First;
        var front = new PlanFront([plan with { Plan = plan.Plan with { Proof = proof } }])
        {
            WhyNone = NoTrade.NotFound,
        };
        Assert.EndsWith(
            "Birch ply: 5 sheets, and it is proven that none does with fewer than 4.",
            front.Say(_ => "Birch ply")
        );
    }

    [Fact]
    public void Box_by_box_there_is_one_plan_and_the_front_says_why()
    {
        var job = OneMoreVisitSavesASheet with { Rules = new(Effort: 10, BoxByBox: true) };
        Assert.Contains("wood comes before visits already", FrontOf(job).Sentence);
    }

    [Fact]
    public void Every_plan_of_a_front_can_be_planned_on_from_and_says_how_far_from_the_best_it_is() =>
        Assert.All(
            FrontOf(OneMoreVisitSavesASheet).Plans,
            p =>
            {
                Assert.NotNull(p.Plan.Origin);
                Assert.NotNull(p.Plan.Proof);
            }
        );

    [Fact]
    public void The_end_of_a_front_that_is_the_least_wood_there_can_be_says_so() =>
        Assert.EndsWith("No plan buys less than the last: that is proven.", FrontOf(OneMoreVisitSavesASheet).Sentence);

    private static PlanFront FrontOf(CutRequest request) =>
        Planner.Front(request, null, null, TestContext.Current.CancellationToken);

    private sealed class Told(CancellationTokenSource stop, int after) : IProgress<PlanFront>
    {
        public List<PlanFront> Fronts { get; } = [];

        public void Report(PlanFront value)
        {
            Fronts.Add(value);
            if (Fronts.Count == after)
                stop.Cancel();
        }
    }
}

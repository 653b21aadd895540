using CsCheck;
using Nookwright.Cutting;
using Nookwright.Planning;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

public class PlansAfterEdits
{
    /// <summary>Sheets of 2440 × 1220 with two panels of 1160 × 1180 each, so that every pair has a sheet of its own.</summary>
    private static readonly CutRequest Pairs = Request([
        .. Enumerable.Range(1, 8).Select(i => Part($"panel-{i}", 1160 - i, 1180)),
    ]);

    [Fact]
    public void A_plan_made_again_for_the_same_job_moves_nothing()
    {
        var before = PlanOf(Pairs);
        Assert.Empty(MovedParts.Of(before, After(Pairs, before)));
    }

    [Fact]
    public void Where_one_part_changes_the_sheets_without_it_stay_as_they_were()
    {
        var before = PlanOf(Pairs);
        var after = After(Changed(Pairs, "panel-5", 1100), before);
        var touched = before.Workpieces.Single(p => p.Part == "panel-5").Sheet;
        var beside = before.Workpieces.Where(p => p.Sheet == touched).Select(p => p.Part);
        Assert.Equal(before.Sheets.Count, after.Sheets.Count);
        Assert.Empty(MovedParts.Of(before, after).Except(beside));
    }

    [Fact]
    public void An_edit_made_while_the_plan_is_still_looked_for_keeps_what_it_does_not_touch()
    {
        var shown = new List<Plan>();
        Planner.Plan(Pairs, new Seen(shown), TestContext.Current.CancellationToken);
        Assert.All(
            shown,
            before =>
            {
                var touched = before.Workpieces.Single(p => p.Part == "panel-5").Sheet;
                var beside = before.Workpieces.Where(p => p.Sheet == touched).Select(p => p.Part);
                var after = After(Changed(Pairs, "panel-5", 1100), before);
                Assert.Empty(MovedParts.Of(before, after).Except(beside));
            }
        );
    }

    [Fact]
    public void A_part_taken_away_and_a_small_one_added_move_no_other()
    {
        var before = PlanOf(Pairs);
        var edited = Pairs with { Parts = [.. Pairs.Parts.Where(p => p.Id != "panel-2"), Part("rail", 400, 60)] };
        var after = After(edited, before);
        Assert.Empty(MovedParts.Of(before, after));
        Assert.Contains(after.Workpieces, p => p.Part == "rail");
        Assert.DoesNotContain(after.Workpieces, p => p.Part == "panel-2");
    }

    [Fact]
    public void Everything_may_move_where_that_saves_a_sheet()
    {
        // Four of 1160 × 600 lie on one sheet; two of them, as pairs with 1180 wide panels, would keep two sheets open.
        var before = PlanOf(Request(Part("a", 1160, 1180), Part("b", 1160, 1180), Part("c", 1160, 1180)));
        var edited = Request(Part("a", 1160, 590), Part("b", 1160, 590), Part("c", 1160, 590));
        Assert.Equal(2, before.Sheets.Count);
        Assert.Single(After(edited, before).Sheets);
    }

    [Fact]
    public void A_held_blank_that_stays_keeps_its_place_and_a_changed_one_finds_another()
    {
        var job = Pairs with { Parts = [.. Pairs.Parts, Held("top", 1500, 300), Held("shelf", 900, 300)] };
        var before = PlanOf(job);
        var after = After(
            job with
            {
                Parts = [.. job.Parts.Select(p => p.Id == "shelf" ? p with { Length = Mm(950) } : p)],
            },
            before
        );
        var kept = after.Workpieces.Single(p => p.Part == "shelf");
        Assert.Equal(Mm(950 + 12), Nookwright.Measure.Length.Max(kept.Length, kept.Width));
    }

    [Fact]
    public void A_shop_with_another_saw_is_planned_from_the_beginning()
    {
        var before = PlanOf(Pairs);
        var other = Pairs with { Saws = Jobs.Shop with { TableKerf = Mm(2) } };
        Assert.Equal(Written(PlanOf(other), other), Written(After(other, before), other));
    }

    /// <summary>Parts change size, go, and come: the virtual saw executes every plan, and none is worse than one made from the beginning.</summary>
    [Fact]
    public void After_any_edit_the_plan_is_valid_and_no_more_visits_or_sheets_than_one_from_the_beginning() =>
        Gen.Select(RandomJobs.Any, Gen.Int[0, 1000])
            .Sample(
                (request, seed) =>
                {
                    var quick = request with { Rules = request.Rules with { Effort = 0 } };
                    var edited = Edited(quick, new Random(seed));
                    var after = After(edited, PlanOf(quick));
                    var fresh = PlanScore.Of(PlanOf(edited), edited);
                    var score = PlanScore.Of(after, edited);
                    Assert.True(
                        (score.Missing, score.Splits, score.Visits, score.Bought).CompareTo(
                            (fresh.Missing, fresh.Splits, fresh.Visits, fresh.Bought)
                        ) <= 0,
                        $"{score} against {fresh}"
                    );
                },
                iter: 40
            );

    [Fact]
    public void The_same_edit_of_the_same_plan_gives_the_same_plan()
    {
        var request = RandomJobs.Of(11);
        var edited = Edited(request, new Random(3));
        var before = PlanOf(request);
        Assert.Equal(Written(After(edited, before), edited), Written(After(edited, before), edited));
    }

    private static CutRequest Edited(CutRequest request, Random random) =>
        request with
        {
            Parts =
            [
                .. request
                    .Parts.Where(p => p.Id.StartsWith("door", StringComparison.Ordinal) || random.Next(12) > 0)
                    .Select(p => random.Next(8) == 0 && !p.IsHeld ? p with { Length = p.Length + Mm(1.5m) } : p),
                Part("new", 333, 222),
            ],
            Matches = [],
        };

    private static CutRequest Changed(CutRequest request, string part, decimal length) =>
        request with
        {
            Parts = [.. request.Parts.Select(p => p.Id == part ? p with { Length = Mm(length) } : p)],
        };

    private static Plan After(CutRequest request, Plan before) =>
        Planner.Plan(request, null, TestContext.Current.CancellationToken, before);

    private static string Written(Plan plan, CutRequest request) => Nookwright.Lists.PlanJson.Write(plan, request);

    private sealed class Seen(List<Plan> plans) : IProgress<Plan>
    {
        public void Report(Plan value) => plans.Add(value);
    }
}

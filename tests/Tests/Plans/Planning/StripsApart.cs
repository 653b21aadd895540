using CsCheck;
using Nookwright.Cutting;
using Nookwright.Planning;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Planning;

/// <summary>Parts that must not share a strip, and runs that may go on in another one.</summary>
public class StripsApart
{
    /// <summary>Four shelves of one width would come off one strip; two wished apart take two.</summary>
    [Fact]
    public void Two_parts_wished_apart_come_from_two_strips()
    {
        var shelves = Enumerable.Range(1, 4).Select(i => Jobs.Part($"shelf-{i}", 500, 300)).ToArray();
        var request = Jobs.Request(shelves) with { Apart = [new("figure", ["shelf-1", "shelf-2"])] };
        var plan = Jobs.PlanOf(request);
        Assert.True(VirtualSaw.Run(plan, request).Accepted);
        Assert.DoesNotContain(plan.Findings, f => f.Rule == "cutting.stock-too-few");
    }

    [Fact]
    public void Whatever_is_wished_apart_the_virtual_saw_can_cut_the_plan() =>
        Gen.Select(Gen.Int[0, 100_000], Gen.Int[2, 6], Gen.Bool)
            .Sample(
                (seed, count, isVisitsFirst) =>
                {
                    var job = RandomJobs.Of(seed, 20);
                    var free = job.Parts.Where(p => !job.Runs.Any(r => r.Parts.Contains(p.Id)));
                    var request = job with
                    {
                        Apart = [new("apart", [.. free.Take(count).Select(p => p.Id)])],
                        Rules = job.Rules with { VisitsFirst = isVisitsFirst },
                    };
                    return VirtualSaw.Run(Jobs.PlanOf(request), request).Accepted;
                },
                iter: 60
            );

    [Fact]
    public void Parts_of_one_run_cannot_be_apart_and_the_finding_says_so()
    {
        var request = Doors(2) with { Apart = [new("unlike", ["door-1", "door-2"])] };
        var finding = Assert.Single(Jobs.PlanOf(request).Findings, f => f.Rule == "cutting.apart-in-one-run");
        Assert.Contains("door-1 and door-2", finding.Message, StringComparison.Ordinal);
    }

    /// <summary>Six doors of 600 mm need 3.6 m of strip; a sheet gives 2428 mm after dressing, that is four of them.</summary>
    [Fact]
    public void A_run_longer_than_any_sheet_goes_on_where_the_maker_allows_it()
    {
        var doors = Doors(6);
        Assert.Contains(Jobs.PlanOf(doors).Findings, f => f.Rule == "cutting.run-longer-than-sheet");
        var request = doors with { Runs = [doors.Runs[0] with { MaySplitAfter = ["door-2", "door-3"] }] };
        var plan = Jobs.PlanOf(request);
        Assert.True(VirtualSaw.Run(plan, request).Accepted);
        Assert.Equal(6, plan.Workpieces.Count(p => p.Use == WorkpieceUse.Part));
        var note = Assert.Single(plan.Findings, f => f.Rule == "cutting.run-split");
        Assert.Contains("door-4", note.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_that_a_sheet_gives_whole_is_not_split_though_it_may_be()
    {
        var doors = Doors(3);
        var request = doors with { Runs = [doors.Runs[0] with { MaySplitAfter = ["door-1"] }] };
        Assert.DoesNotContain(Jobs.PlanOf(request).Findings, f => f.Rule == "cutting.run-split");
    }

    /// <summary>
    /// By hand: a run of 2409 mm leaves no room beside it for a panel of 1200 × 1190, and two such panels fill a sheet: three
    /// sheets. In two strips of 1203 mm it lies beside the third panel: two sheets.
    /// </summary>
    [Fact]
    public void A_run_is_split_where_that_saves_a_whole_sheet_and_the_maker_allows_it()
    {
        var whole = DoorsAndPanels();
        Assert.Equal(3, Jobs.PlanOf(whole).Sheets.Count);
        var request = whole with { Runs = [whole.Runs[0] with { MaySplitAfter = ["door-1", "door-2"] }] };
        var plan = Jobs.PlanOf(request);
        Assert.True(VirtualSaw.Run(plan, request).Accepted);
        Assert.Equal(2, plan.Sheets.Count);
        var note = Assert.Single(plan.Findings, f => f.Rule == "cutting.run-split");
        Assert.Contains("whole it would take more sheets, so it comes from 2 strips", note.Message);
        Assert.Equal("door-2", Assert.Single(RunJoint.Of(plan, request), j => j.IsSplit).Before);
    }

    [Fact]
    public void An_edit_keeps_a_run_split_that_was_split_for_a_sheet()
    {
        var whole = DoorsAndPanels();
        var request = whole with { Runs = [whole.Runs[0] with { MaySplitAfter = ["door-2"] }] };
        var before = Jobs.PlanOf(request);
        var edited = request with { Parts = [.. request.Parts, Jobs.Part("slat", 200, 50)] };
        var after = Planner.Plan(edited, null, TestContext.Current.CancellationToken, before);
        Assert.Equal(2, after.Sheets.Count);
        Assert.Equal("door-2", Assert.Single(RunJoint.Of(after, edited), j => j.IsSplit).Before);
    }

    [Fact]
    public void The_front_goes_on_from_a_run_that_is_split()
    {
        var whole = DoorsAndPanels();
        var request = whole with { Runs = [whole.Runs[0] with { MaySplitAfter = ["door-2"] }] };
        var front = Planner.Front(request, null, null, TestContext.Current.CancellationToken);
        Assert.All(front.Plans, step => Assert.True(VirtualSaw.Run(step.Plan, request).Accepted));
        Assert.Equal(2, front.First.Plan.Sheets.Count);
    }

    private static CutRequest DoorsAndPanels()
    {
        var doors = Enumerable.Range(1, 4).Select(i => Jobs.Part($"door-{i}", 500, 600, PanelFigure.Width));
        var panels = Enumerable.Range(1, 3).Select(i => Jobs.Part($"panel-{i}", 1200, 1190, PanelFigure.Length));
        return Jobs.Request([.. doors, .. panels]) with
        {
            Runs = [new("fronts", ["door-1", "door-2", "door-3", "door-4"])],
            Rules = new(Effort: 50),
        };
    }

    /// <summary>A plan that splits a run is refused where the maker has not allowed it there.</summary>
    [Fact]
    public void The_virtual_saw_refuses_a_split_that_nobody_allowed()
    {
        var doors = Doors(6);
        var plan = Jobs.PlanOf(doors with { Runs = [doors.Runs[0] with { MaySplitAfter = ["door-3"] }] });
        var elsewhere = doors with { Runs = [doors.Runs[0] with { MaySplitAfter = ["door-2"] }] };
        Assert.Contains("do not lie in order", VirtualSaw.Run(plan, elsewhere).Why, StringComparison.Ordinal);
    }

    private static CutRequest Doors(int count)
    {
        var doors = Enumerable.Range(1, count).Select(i => Jobs.Part($"door-{i}", 700, 600, PanelFigure.Width));
        var request = Jobs.Request([.. doors]);
        return request with { Runs = [new("fronts", [.. request.Parts.Select(p => p.Id)])] };
    }
}

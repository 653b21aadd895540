using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Sawing;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

public class RunningGrain
{
    [Theory]
    [InlineData("300 300 300")]
    [InlineData("300 300 280 280")]
    [InlineData("280 300 280")]
    [InlineData("280 300 280 300")]
    [InlineData("180 220 200 220 180")]
    public void A_run_comes_off_one_strip_in_order_with_one_visit_for_each_width(string widths)
    {
        var request = Doors([.. widths.Split(' ').Select(decimal.Parse)]);
        var plan = PlanOf(request);
        Assert.Equal(plan.DimensionsNow, plan.Visits.Count);
        var doors = request
            .Runs[0]
            .Parts.Select(d => plan.Workpieces.Single(p => p.Use == WorkpieceUse.Part && p.Part == d))
            .ToList();
        Assert.Single(doors.Select(d => (d.Sheet, d.X, d.Length)).Distinct());
        Assert.All(
            doors.Zip(doors.Skip(1)),
            pair => Assert.InRange((pair.Second.Y - (pair.First.Y + pair.First.Width)).Millimetres, 3, 6)
        );
    }

    [Fact]
    public void Its_height_is_visited_before_its_widths()
    {
        var plan = PlanOf(Doors(300, 280));
        Assert.Equal(Mm(700), plan.Visits[0].Setting);
    }

    /// <summary>One run is ripped to 300 and crosscut to 200, the other the other way round: one dimension must be visited twice.</summary>
    [Fact]
    public void Two_runs_that_ask_for_opposite_orders_cost_one_visit_more()
    {
        var request = Request(
            Part("a1", 300, 200, PanelFigure.Length),
            Part("a2", 300, 200, PanelFigure.Length),
            Part("b1", 200, 300, PanelFigure.Length),
            Part("b2", 200, 300, PanelFigure.Length)
        ) with
        {
            Runs = [Run("a", "a1", "a2"), Run("b", "b1", "b2")],
        };
        var plan = PlanOf(request);
        Assert.Equal((2, 3), (plan.DimensionsNow, plan.Visits.Count));
        Assert.Single(VirtualSaw.Run(plan, request).Repeats);
    }

    [Fact]
    public void A_run_across_the_figure_fits_a_sheets_width_and_no_more()
    {
        // 1220 less twice 6 of dressing is 1208; four doors of 299.75 and three kerfs of 3 are 1199 + 9 = 1208.
        Assert.DoesNotContain(
            PlanOf(Doors(299.75m, 299.75m, 299.75m, 299.75m)).Findings,
            f => f.Rule.StartsWith("cutting.run", StringComparison.Ordinal)
        );
        var longer = PlanOf(Doors(300, 300, 300, 300));
        var finding = longer.Findings.Single(f => f.Rule == "cutting.run-longer-than-sheet");
        Assert.Contains("door0", finding.About);
    }

    [Fact]
    public void A_run_with_a_member_that_waits_is_kept_whole_in_one_piece()
    {
        var request = Doors(300, 280);
        request = request with { Parts = [request.Parts[0] with { Awaits = ["boxes.width"] }, request.Parts[1]] };
        var plan = PlanOf(request);
        var kept = plan.Workpieces.Single(p => p.Use == WorkpieceUse.Held);
        Assert.Equal("doors", kept.Part);
        // 300 + 3 + 280, and 6 to dress at either edge.
        Assert.True(kept.Width >= Mm(595) && kept.Length >= Mm(712));
        Assert.Empty(plan.Visits);
    }

    [Fact]
    public void Parts_that_share_no_side_are_no_run()
    {
        var request = Doors(300, 280);
        request = request with { Parts = [request.Parts[0] with { Length = Mm(701) }, request.Parts[1]] };
        Assert.Contains(PlanOf(request).Findings, f => f.Rule == "cutting.run-heights-differ");
    }

    private static CutRequest Doors(params decimal[] widths)
    {
        var doors = widths.Select((w, i) => Part($"door{i}", 700, w, PanelFigure.Length)).ToArray();
        return Request(doors) with { Runs = [Run("doors", [.. doors.Select(d => d.Id)])] };
    }

    private static CutRun Run(string id, params string[] parts) => new(id, parts) { Height = MatchedSide.Length };
}

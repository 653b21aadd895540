using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

public class PlansByHand
{
    /// <summary>
    /// By hand: kerf 3, dressing 6. A sheet of 1215 loses 6 at either edge; 4 strips of 298.5 and 3 kerfs are
    /// 1194 + 9 = 1203 = 1215 - 12: they just go. A millimetre less of sheet, and only three do.
    /// </summary>
    [Theory]
    [InlineData(1215, 1)]
    [InlineData(1214, 2)]
    public void Kerf_and_dressing_are_counted_to_the_last_millimetre(int sheetWidth, int sheets)
    {
        var parts = Enumerable.Range(0, 4).Select(i => Part($"p{i}", 2400, 298.5m, PanelFigure.Length)).ToArray();
        var request = Request(parts) with { Stock = [Sheet(2440, sheetWidth)] };
        Assert.Equal(sheets, PlanOf(request).Sheets.Count);
    }

    /// <summary>By hand: 2 × 720 × 560, 2 × 560 × 800: three dimensions, so three visits, whatever the number of parts.</summary>
    [Fact]
    public void A_box_is_cut_with_one_visit_for_each_of_its_dimensions()
    {
        var plan = PlanOf(
            Request(Part("left", 720, 560), Part("right", 720, 560), Part("bottom", 800, 560), Part("top", 800, 560))
        );
        Assert.Equal(3, plan.DimensionsNow);
        Assert.Equal([560m, 720m, 800m], plan.Visits.Select(v => (decimal)v.Setting.Millimetres).Order());
    }

    [Fact]
    public void A_dimension_past_the_fences_reach_is_cut_at_the_stop()
    {
        var plan = PlanOf(Request(Part("a", 761, 760)));
        Assert.Equal(Saw.Stop, plan.Visits.Single(v => v.Setting == Mm(761)).Saw);
        Assert.Equal(Saw.Fence, plan.Visits.Single(v => v.Setting == Mm(760)).Saw);
    }

    [Fact]
    public void Figure_along_the_length_puts_the_length_along_the_sheet()
    {
        var plan = PlanOf(Request(Part("a", 300, 900, PanelFigure.Length), Part("b", 300, 900, PanelFigure.Width)));
        Assert.Equal(Mm(300), Made(plan, "a").Length);
        Assert.Equal(Mm(900), Made(plan, "b").Length);
    }

    [Fact]
    public void A_sheet_without_figure_lets_every_part_be_turned()
    {
        // 1500 along the figure goes on no sheet of 1000 × 2000, unless the sheet has none.
        var request = Request(Part("a", 1500, 300, PanelFigure.Length)) with
        {
            Stock = [Sheet(1000, 2000)],
        };
        Assert.Contains(PlanOf(request).Findings, f => f.Rule == "cutting.part-larger-than-sheet");
        var plain = request with { Stock = [Sheet(1000, 2000) with { HasFigure = false }], Saws = Ideal };
        Assert.Equal(Mm(1500), Made(PlanOf(plain), "a").Width);
    }

    [Fact]
    public void Offcuts_are_used_before_a_sheet_is_bought()
    {
        var offcut = Sheet(700, 500, 1) with { Id = "offcut", IsOffcut = true };
        var plan = PlanOf(Request(Part("a", 600, 400)) with { Stock = [Sheet(), offcut] });
        Assert.Equal("offcut", plan.Sheets.Single().Stock);
    }

    [Fact]
    public void A_sheet_too_large_to_handle_is_broken_down_first()
    {
        var request = Request(Part("a", 1100, 700), Part("b", 1100, 700)) with
        {
            Saws = Jobs.Shop with { ChunkLength = Mm(1250), ChunkWidth = Mm(800) },
        };
        var plan = PlanOf(request);
        Assert.Contains(plan.Breakdown, c => c.Kind == CutKind.Breakdown);
        Assert.True(VirtualSaw.Run(plan, request).Accepted);
    }

    [Fact]
    public void Matching_sides_are_cut_in_one_visit_that_says_so()
    {
        var request = Request(Part("a", 700, 300), Part("b", 700, 410), Part("c", 410, 700)) with
        {
            Matches = [Match("sides", MatchedSide.Length, "a", "b")],
        };
        Assert.Equal(Mm(700), PlanOf(request).Visits.Single(v => v.Matches.Contains("sides")).Setting);
    }

    private static Workpiece Made(Plan plan, string part) =>
        plan.Workpieces.Single(p => p.Use == WorkpieceUse.Part && p.Part == part);
}

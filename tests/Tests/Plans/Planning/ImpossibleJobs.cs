using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Planning;
using Nookwright.Projects;
using Nookwright.Tests.Cutting;
using Nookwright.Trouble;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

public class ImpossibleJobs
{
    [Fact]
    public void One_missing_sheet_is_one_trouble_however_many_parts_are_of_it()
    {
        var plan = PlanOf(
            Request(Part("a", 100, 100, material: "oak"), Part("b", 200, 100, material: "oak"), Part("c", 300, 100))
        );
        var finding = Found(plan, "cutting.no-sheet-of-material");
        Assert.Equal(["a", "b"], finding.About);
        Assert.StartsWith("2 parts are of oak", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_larger_than_every_sheet_is_named_and_the_rest_is_planned()
    {
        var plan = PlanOf(Request(Part("top", 2600, 600), Part("side", 700, 500)));
        Assert.Equal(["top"], Found(plan, "cutting.part-larger-than-sheet").About);
        Assert.Contains(plan.Workpieces, p => p.Part == "side" && p.Use == WorkpieceUse.Part);
    }

    [Fact]
    public void A_part_that_fits_only_against_its_figure_is_too_large() =>
        Found(PlanOf(Request(Part("side", 1300, 500, PanelFigure.Width))), "cutting.part-larger-than-sheet");

    [Fact]
    public void A_material_without_sheets_is_named() =>
        Assert.Contains(
            "oak",
            Found(PlanOf(Request(Part("a", 100, 100, material: "oak"))), "cutting.no-sheet-of-material").Message
        );

    [Fact]
    public void When_stock_runs_out_what_is_left_over_is_named()
    {
        var request = Request(Part("a", 2000, 1000), Part("b", 2000, 1000)) with { Stock = [Sheet(quantity: 1)] };
        var plan = PlanOf(request);
        Assert.Single(plan.Sheets);
        Assert.Single(Found(plan, "cutting.stock-too-few").About);
    }

    [Fact]
    public void When_stock_runs_out_it_is_said_how_many_more_sheets_of_which_size_take_the_rest()
    {
        CutPart[] parts = [.. Enumerable.Range(0, 5).Select(i => Part($"p{i}", 2000, 1000))];
        var request = Request(parts) with { Stock = [Sheet(quantity: 2)] };
        Assert.Contains("add 3 more of 2440 mm by 1220 mm", Found(PlanOf(request), "cutting.stock-too-few").Message);
        Assert.Empty(PlanOf(request with { Stock = [Sheet(quantity: 5)] }).Findings);
    }

    [Fact]
    public void An_offcut_that_is_used_up_asks_for_sheets_where_there_are_any()
    {
        var rack = Sheet(900, 700, quantity: 1) with { Id = "rack", IsOffcut = true };
        var request = Request(Part("a", 800, 600), Part("b", 800, 600)) with { Stock = [rack, Sheet(quantity: 0)] };
        Assert.Contains("add 1 more of 2440 mm by 1220 mm", Found(PlanOf(request), "cutting.stock-too-few").Message);
    }

    [Fact]
    public void A_side_past_fence_and_stop_is_beyond_the_saws() =>
        Found(
            PlanOf(Request(Part("a", 2300, 500)) with { Saws = Jobs.Shop with { CrosscutReach = Mm(2000) } }),
            "cutting.part-beyond-saws"
        );

    [Fact]
    public void A_part_of_no_size_is_named() => Found(PlanOf(Request(Part("a", 0, 500))), "cutting.no-size");

    [Fact]
    public void More_parts_than_a_plan_takes_are_refused()
    {
        var parts = Enumerable.Range(0, Planner.MostParts + 1).Select(i => Part($"p{i}", 100, 100)).ToArray();
        Assert.Contains("20000", Found(PlanOf(Request(parts)), "cutting.too-many-parts").Message);
    }

    [Fact]
    public void Matching_sides_of_two_sizes_are_named()
    {
        var request = Request(Part("a", 700, 300), Part("b", 701, 300)) with
        {
            Matches = [Match("sides", MatchedSide.Length, "a", "b")],
        };
        Assert.Contains("b 701 mm", Found(PlanOf(request), "cutting.match-sizes-differ").Message);
    }

    [Fact]
    public void A_held_part_among_final_ones_of_a_match_is_named()
    {
        var request = Request(Part("a", 700, 300), Held("b", 725, 325)) with
        {
            Matches = [Match("sides", MatchedSide.Length, "a", "b")],
        };
        Found(PlanOf(request), "cutting.match-partly-held");
    }

    [Fact]
    public void Held_parts_keep_room_for_dressing_and_see_no_visit()
    {
        var request = Request(Held("top", 1000, 600), Part("side", 700, 500));
        var plan = PlanOf(request);
        var kept = plan.Workpieces.Single(p => p.Use == WorkpieceUse.Held);
        Assert.True(Length.Max(kept.Length, kept.Width) >= Mm(1006) && Length.Min(kept.Length, kept.Width) >= Mm(606));
        Assert.DoesNotContain(plan.Visits.SelectMany(v => v.Cuts), c => c.Gives == kept.Id || c.On == kept.Id);
    }

    private static Finding Found(Plan plan, string rule) => Assert.Single(plan.Findings, f => f.Rule == rule);
}

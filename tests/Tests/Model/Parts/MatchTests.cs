using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Parts;
using Nookwright.Projects;
using static Nookwright.Tests.Measure.Given;
using static Nookwright.Tests.Parts.PartsGiven;

namespace Nookwright.Tests.Parts;

public class MatchTests
{
    [Fact]
    public void The_two_sides_of_a_box_match_both_ways_and_say_why()
    {
        var list = PartsOf(JobWith(Box("b1")), BoxPanels("b1", height: 700, width: 800, depth: 560));
        Assert.Equal("b1.left b1.right", Members(list, "b1.sides.height"));
        Assert.Equal("b1.left b1.right", Members(list, "b1.sides.depth"));
        Assert.Equal("b1.bottom b1.top", Members(list, "b1.between.length"));
        var group = list.Matches.Single(g => g.Id == "b1.sides.height");
        Assert.Equal((Mm(700), false), (group.Size, group.ByHand));
        Assert.Equal("The two sides of b1 must be equally high, or it stands skew.", group.Because);
    }

    [Fact]
    public void Sides_the_design_made_different_make_no_group()
    {
        var panels = new[] { Panel("b1.left", 700, 560, PanelRole.Side), Panel("b1.right", 650, 560, PanelRole.Side) };
        var list = PartsOf(JobWith(Box("b1")), panels);
        Assert.DoesNotContain(list.Matches, group => group.Id == "b1.sides.height");
        Assert.Empty(list.Findings);
    }

    [Fact]
    public void Boxes_in_line_match_in_depth_and_those_of_another_depth_stay_out()
    {
        var job = JobWith(Box("b1"), Box("b2"), Box("b3")) with { Rows = [Line("row", "b1", "b2", "b3")] };
        var list = PartsOf(
            job,
            [.. BoxPanels("b1", 700, 800, 560), .. BoxPanels("b2", 700, 600, 560), .. BoxPanels("b3", 650, 800, 320)]
        );
        Assert.Equal("b1.bottom b1.left b1.right b1.top b2.bottom b2.left b2.right b2.top", Members(list, "row.depth"));
        Assert.Equal("b1.left b1.right b2.left b2.right", Members(list, "row.height"));
    }

    [Fact]
    public void A_turned_box_has_its_front_elsewhere_and_does_not_match_in_depth()
    {
        var turned = Box("b2") with { Facing = Facing.Left };
        var job = JobWith(Box("b1"), turned) with { Rows = [Line("row", "b1", "b2")] };
        var list = PartsOf(job, [.. BoxPanels("b1", 700, 800, 560), .. BoxPanels("b2", 700, 800, 560)]);
        Assert.DoesNotContain(list.Matches, group => group.Id == "row.depth");
    }

    [Fact]
    public void Doors_in_one_line_match_in_height()
    {
        var job = JobWith(Box("b1"), Box("b2"), DoorsOn("d1", "b1"), DoorsOn("d2", "b2")) with
        {
            Rows = [Line("row", "b1", "b2")],
        };
        var list = PartsOf(
            job,
            Panel("d1.left", 690, 396, PanelRole.Door),
            Panel("d1.right", 690, 396, PanelRole.Door),
            Panel("d2.door", 690, 594, PanelRole.Door)
        );
        Assert.Equal("d1.left d1.right d2.door", Members(list, "row.doors.height"));
        Assert.Equal("d1.left d1.right", Members(list, "d1.width"));
    }

    [Fact]
    public void Support_boxes_of_one_tier_match_in_height_and_tiers_do_not_mix()
    {
        var job = JobWith(Support("s1", "low"), Support("s2", "low"), Support("s3", "high"), Support("s4", null));
        var panels = new[] { "s1", "s2", "s3", "s4" }.SelectMany(id =>
            new[] { Panel($"{id}.left", 200, 250, PanelRole.Side), Panel($"{id}.front", 90, 200, PanelRole.Front) }
        );
        var list = PartsOf(job, [.. panels]);
        Assert.Equal("s1.front s1.left s2.front s2.left", Members(list, "low.height"));
        Assert.DoesNotContain(list.Matches, group => group.Id == "high.height");
    }

    [Fact]
    public void The_layers_of_a_doubled_top_match_and_those_of_its_return_apart()
    {
        var top = new Slab
        {
            Id = "top",
            Width = "1",
            Depth = "1",
            Layers = 2,
        };
        var list = PartsOf(
            JobWith(top),
            Panel("top.main-1", 2400, 600, PanelRole.Slab),
            Panel("top.main-2", 2400, 600, PanelRole.Slab),
            Panel("top.return-1", 900, 600, PanelRole.Slab),
            Panel("top.return-2", 900, 600, PanelRole.Slab)
        );
        Assert.Equal("top.main-1 top.main-2", Members(list, "top.layers.length"));
        Assert.Equal("top.return-1 top.return-2", Members(list, "top.layers-2.width"));
    }

    [Fact]
    public void Back_slats_and_the_members_of_a_base_match()
    {
        var toeBase = new ToeBase
        {
            Id = "base",
            Width = "1",
            Depth = "1",
            Height = "1",
        };
        var cross = new Placement(Point3.Origin, Direction.PlusY, Direction.PlusZ);
        var list = PartsOf(
            JobWith(Box("b1"), toeBase),
            Panel("b1.slat-1", 764, 100, PanelRole.BackSlat),
            Panel("b1.slat-2", 764, 100, PanelRole.BackSlat),
            Panel("base.front", 2000, 90, PanelRole.BaseRail),
            Panel("base.back", 2000, 90, PanelRole.BaseRail),
            Panel("base.cross-1", 450, 90, PanelRole.BaseCross) with
            {
                Place = cross,
            },
            Panel("base.cross-2", 450, 90, PanelRole.BaseCross) with
            {
                Place = cross,
            }
        );
        Assert.Equal("b1.slat-1 b1.slat-2", Members(list, "b1.slats.length"));
        Assert.Equal("base.back base.cross-1 base.cross-2 base.front", Members(list, "base.height"));
        Assert.Equal("base.cross-1 base.cross-2", Members(list, "base.crosses.length"));
    }

    [Fact]
    public void A_match_by_hand_over_equal_sizes_is_a_group_with_its_reason()
    {
        var match = new HandMatch
        {
            Id = "mine",
            Panels = ["a.x", "b.x"],
            Side = MatchedSide.Width,
            Because = "They show side by side.",
        };
        var group = Assert.Single(
            PartsOf(Job with { Matches = [match] }, Panel("a.x", 600, 300), Panel("b.x", 500, 300)).Matches
        );
        Assert.Equal(
            ("mine", Mm(300), true, "They show side by side."),
            (group.Id, group.Size, group.ByHand, group.Because)
        );
    }

    [Fact]
    public void A_match_by_hand_over_different_sizes_is_a_finding_with_the_amounts()
    {
        var match = new HandMatch
        {
            Id = "mine",
            Panels = ["a.x", "b.x"],
            Side = MatchedSide.Both,
        };
        var list = PartsOf(Job with { Matches = [match] }, Panel("a.x", 600, 300), Panel("b.x", 500, 300));
        Assert.Equal("mine.width", Assert.Single(list.Matches).Id);
        var finding = Assert.Single(list.Findings);
        Assert.Equal("match.sizes-differ", finding.Rule);
        Assert.Equal("Match group mine wants one length, and they differ: a.x 600 mm, b.x 500 mm.", finding.Message);
    }

    [Fact]
    public void A_match_by_hand_that_names_no_panel_says_which_is_meant()
    {
        var match = new HandMatch { Id = "mine", Panels = ["a.x", "c.left-sid"] };
        var list = PartsOf(Job with { Matches = [match] }, Panel("a.x", 600, 300), Panel("c.left-side", 600, 300));
        Assert.Contains(
            list.Findings,
            f => f.Rule == "match.unknown-panel" && f.Message.Contains("is c.left-side meant?")
        );
    }

    [Fact]
    public void What_waits_for_a_reading_is_not_in_one_group_with_what_does_not()
    {
        var match = new HandMatch
        {
            Id = "mine",
            Panels = ["a.x", "b.x", "c.x"],
            Side = MatchedSide.Width,
        };
        var list = PartsOf(
            Job with
            {
                Matches = [match],
            },
            Panel("a.x", 600, 300),
            Panel("b.x", 600, 300),
            Panel("c.x", Awaited("r", 600), Written(300))
        );
        Assert.Equal("a.x b.x", Members(list, "mine"));
        Assert.Contains(list.Findings, f => f.Rule == "match.waits-differ");
    }

    [Fact]
    public void No_dimension_is_in_a_group_of_another_size()
    {
        var job = JobWith(Box("b1"), Box("b2")) with { Rows = [Line("row", "b1", "b2")] };
        var list = PartsOf(job, [.. BoxPanels("b1", 700, 800, 560), .. BoxPanels("b2", 650, 800, 560)]);
        var parts = list.Parts.ToDictionary(part => part.Id);
        Assert.All(
            list.Matches.SelectMany(group => group.Sides.Select(side => (group.Size, side))),
            pair =>
            {
                var part = parts[pair.side.Part];
                var size = pair.side.Side == MatchedSide.Length ? part.CutLength : part.CutWidth;
                Assert.Equal(pair.Size, size.Length);
            }
        );
        Assert.Equal(list.Matches.Count, list.Matches.Select(group => group.Id).Distinct().Count());
    }

    private static string Members(PartList list, string group) =>
        string.Join(' ', list.Matches.Single(g => g.Id == group).Sides.Select(side => side.Part).Order());

    private static Project JobWith(params Piece[] pieces) => Job with { Pieces = pieces };

    private static Carcass Box(string id) =>
        new()
        {
            Id = id,
            Width = "1",
            Height = "1",
            Depth = "1",
        };

    private static Doors DoorsOn(string id, string box) => new() { Id = id, Box = box };

    private static SupportBox Support(string id, string? tier) =>
        new()
        {
            Id = id,
            Width = "1",
            Height = "1",
            Depth = "1",
            Tier = tier,
        };

    private static Row Line(string id, params string[] pieces) => new() { Id = id, Pieces = pieces };

    private static Panel[] BoxPanels(string id, decimal height, decimal width, decimal depth) =>
        [
            Panel($"{id}.left", height, depth, PanelRole.Side),
            Panel($"{id}.right", height, depth, PanelRole.Side),
            Panel($"{id}.bottom", width - 36, depth, PanelRole.Bottom),
            Panel($"{id}.top", width - 36, depth, PanelRole.Top),
        ];
}

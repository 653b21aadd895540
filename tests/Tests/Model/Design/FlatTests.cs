using CsCheck;
using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Projects;
using static Nookwright.Tests.Design.DesignGiven;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

public class FlatTests
{
    private static readonly Slab Straight = new()
    {
        Id = "top",
        Name = "long top",
        Material = "ply",
        Width = "2000",
        Depth = "600",
    };

    private static readonly Slab L = Straight with
    {
        Return = ReturnSide.Right,
        ReturnLength = "700",
        ReturnDepth = "450",
    };

    [Fact]
    public void A_straight_top_is_one_panel_under_its_own_name()
    {
        var panel = Assert.Single(Built(Metric(Straight)).Panels);
        Assert.Equal(("top.main", "long top", PanelRole.Slab), (panel.Id, panel.Name, panel.Role));
        Assert.Equal((Mm(2000), Mm(600)), (panel.Length.Length, panel.Width.Length));
    }

    [Fact]
    public void Doubled_layers_are_the_same_size_and_lie_on_each_other()
    {
        var built = Built(
            Metric(
                new Shelf
                {
                    Id = "s",
                    Material = "ply",
                    Width = "900",
                    Depth = "280",
                    Layers = 2,
                }
            )
        );
        var (lower, upper) = (PanelOf(built, "s.lower"), PanelOf(built, "s.upper"));
        Assert.Equal(lower.Outline, upper.Outline);
        Assert.Equal(Solid(lower).High.Z, Solid(upper).Low.Z);
        Assert.Equal(Mm(35.2m), Size(built, "s.height"));
    }

    [Theory]
    [InlineData(ReturnSide.Left)]
    [InlineData(ReturnSide.Right)]
    public void Two_strips_butt_the_return_against_the_front_of_the_main_run(ReturnSide side)
    {
        var built = Built(Metric(L with { Return = side }));
        var (main, back) = (Solid(PanelOf(built, "top.main")), Solid(PanelOf(built, "top.return")));
        Assert.Equal((Mm(700), Mm(1300)), (main.Low.Y, main.High.Y));
        Assert.Equal((Length.Zero, Mm(700)), (back.Low.Y, back.High.Y));
        Assert.Equal(
            side == ReturnSide.Left ? (Length.Zero, Mm(450)) : (Mm(1550), Mm(2000)),
            (back.Low.X, back.High.X)
        );
        Assert.Equal(Mm(1300), Size(built, "top.depth"));
    }

    /// <summary>By hand: 2000 × 600 and 450 × 700 are 1.515 m².</summary>
    [Theory]
    [InlineData(ReturnSide.Left)]
    [InlineData(ReturnSide.Right)]
    public void One_panel_has_the_same_area_as_two_strips_and_comes_forward_at_the_same_end(ReturnSide side)
    {
        var built = Built(Metric(L with { Return = side, Make = LMake.OnePanel }));
        var panel = PanelOf(built, "top.main");
        Assert.Equal(1_515_000, panel.Outline.AreaSquareMillimetres, 0.001);
        Assert.Equal((Mm(2000), Mm(1300)), (panel.Length.Length, panel.Width.Length));
        var front = panel.Outline.Corners.Where(c => c.Y == Length.Zero).Select(c => c.X).Order();
        Assert.Equal(side == ReturnSide.Left ? [Length.Zero, Mm(450)] : [Mm(1550), Mm(2000)], front);
    }

    [Fact]
    public void Edging_follows_the_L_round_and_leaves_the_joint_bare()
    {
        var built = Built(
            Metric(
                L with
                {
                    Edges = new() { Front = "thick-tape", Right = "tape" },
                }
            )
        );
        var (main, back) = (PanelOf(built, "top.main").Edges, PanelOf(built, "top.return").Edges);
        Assert.Equal(
            (null, "tape", "thick-tape", null),
            (main.Start?.Edging, main.End?.Edging, main.Low?.Edging, main.High?.Edging)
        );
        // The return's length runs from the front back; its right side is its own low edge.
        Assert.Equal(
            ("thick-tape", null, "tape", "thick-tape"),
            (back.Start?.Edging, back.End?.Edging, back.Low?.Edging, back.High?.Edging)
        );
        Assert.Equal((Mm(2), Length.Zero), (back.Start!.Counted, back.Low!.Counted));
    }

    [Fact]
    public void What_stays_long_stays_at_its_own_end()
    {
        var longBy = new LongBy
        {
            Left = "10",
            Right = "20",
            Front = "30",
            Back = "40",
        };
        var main = PanelOf(Built(Metric(Straight with { LongBy = longBy })), "top.main");
        Assert.Equal(
            [Mm(10), Mm(20), Mm(30), Mm(40)],
            new[] { main.Edges.Start, main.Edges.End, main.Edges.Low, main.Edges.High }.Select(e => e!.LongBy!.Length)
        );
        Assert.Equal(Mm(2000), main.Length.Length); // finished, nothing long
    }

    [Fact]
    public void A_hole_falls_on_the_strip_it_lies_over()
    {
        var holes = new RoundHole[]
        {
            new()
            {
                Id = "behind",
                X = "300",
                Y = "1200",
                Diameter = "60",
            },
            new()
            {
                Id = "before",
                X = "1700",
                Y = "100",
                Diameter = "60",
            },
        };
        var built = Built(Metric(L with { Holes = holes }));
        Assert.Equal(new(Mm(300), Mm(500)), Hole(built, "top.main").Centre);
        var before = PanelOf(built, "top.return");
        Assert.Equal(
            new(Mm(1700), Mm(100), default),
            before.Place.Map(new(Hole(built, "top.return").Centre.X, Hole(built, "top.return").Centre.Y, default))
        );
        Assert.DoesNotContain(Rules(built), rule => rule.StartsWith("flat.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("1700", "700", "flat.hole-across-joint")]
    [InlineData("300", "300", "flat.hole-outside")]
    [InlineData("10", "900", "flat.hole-outside")]
    public void A_hole_that_cannot_be_bored_is_said(string x, string y, string rule)
    {
        var hole = new RoundHole
        {
            Id = "cable",
            X = x,
            Y = y,
            Diameter = "60",
        };
        Assert.StartsWith("pieces/top/holes/cable", Only(Built(Metric(L with { Holes = [hole] })), rule).Field);
    }

    [Fact]
    public void A_return_without_its_sizes_is_asked_for_them() =>
        Assert.Equal(
            "pieces/top/returnDepth",
            Only(Built(Metric(L with { ReturnDepth = null })), "flat.return-without-size").Field
        );

    [Fact]
    public void Strips_of_any_L_fill_its_outline_and_do_not_overlap() =>
        Gen.Select(
                Gen.Int[8000, 24000],
                Gen.Int[2000, 9000],
                Gen.Int[1000, 9000],
                Gen.Int[1000, 7000],
                Gen.Enum<ReturnSide>(),
                Gen.Enum<Facing>()
            )
            .Sample(
                (width, depth, reach, deep, side, facing) =>
                {
                    var top = L with
                    {
                        Width = Tenths(width),
                        Depth = Tenths(depth),
                        ReturnLength = Tenths(reach),
                        ReturnDepth = Tenths(deep),
                        Return = side,
                        Facing = facing,
                    };
                    var strips = Built(Metric(top));
                    var piece = strips.Pieces[0];
                    Assert.Equal((piece.Low, piece.High), Corners(piece.Panels));
                    if (side != ReturnSide.None)
                        Assert.False(Overlap(piece.Panels[0], piece.Panels[1]));
                    var whole = Built(Metric(top with { Make = LMake.OnePanel })).Panels.Single();
                    Assert.Equal(
                        whole.Outline.AreaSquareMillimetres,
                        piece.Panels.Sum(p => p.Outline.AreaSquareMillimetres),
                        2000.0
                    );
                }
            );

    private static Machining.Through Hole(BuiltIn built, string id) =>
        Assert.IsType<Machining.Through>(Assert.Single(PanelOf(built, id).Machining));
}

using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using static Nookwright.Tests.Design.DesignGiven;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

public class SimplePieceTests
{
    [Fact]
    public void A_base_has_rails_that_run_through_and_cross_members_between_them()
    {
        var built = Built(
            Metric(
                new ToeBase
                {
                    Id = "base",
                    Material = "ply",
                    Width = "1200",
                    Depth = "430",
                    Height = "90",
                    CrossMembers = 4,
                }
            )
        );
        Assert.Equal(6, built.Panels.Count());
        Assert.Equal(Mm(395), Size(built, "base.cross-1.length")); // 430 - 35.2 = 394.8
        Assert.Equal(Mm(430.2m), Size(built, "base.depth"));
        var crosses = Enumerable.Range(1, 4).Select(i => Solid(PanelOf(built, $"base.cross-{i}"))).ToList();
        Assert.Equal((Length.Zero, Mm(1200)), (crosses[0].Low.X, crosses[3].High.X)); // the two ends counted
        Assert.Equal((built.Pieces[0].Low, built.Pieces[0].High), Corners(built.Panels));
        Assert.All(built.Panels, a => Assert.All(built.Panels.Where(b => b != a), b => Assert.False(Overlap(a, b))));
    }

    [Fact]
    public void A_support_box_shows_only_its_front()
    {
        var built = Built(
            Metric(
                new SupportBox
                {
                    Id = "s",
                    Material = "ply",
                    Width = "240",
                    Depth = "220",
                    Height = "300",
                }
            )
        );
        Assert.Equal(["s.front", "s.left-side", "s.right-side", "s.bottom", "s.top"], built.Panels.Select(p => p.Id));
        var front = Solid(PanelOf(built, "s.front"));
        Assert.Equal((Length.Zero, Mm(240), Mm(300)), (front.Low.X, front.High.X, front.High.Z));
        Assert.All(built.Panels.Skip(1), p => Assert.Equal(Mm(17.6m), Solid(p).Low.Y));
        Assert.All(built.Panels, a => Assert.All(built.Panels.Where(b => b != a), b => Assert.False(Overlap(a, b))));
    }

    /// <summary>Common practice: the spacer under a runner is the tier's height less the runner's.</summary>
    [Fact]
    public void A_spacer_is_the_tier_less_the_runner()
    {
        var tier = new SupportBox
        {
            Id = "s",
            Material = "ply",
            Width = "240",
            Depth = "220",
            Height = "300",
        };
        var runner = new Runner
        {
            Id = "r",
            Material = "ply",
            Length = "900",
            Height = "40",
            At = new() { Z = "s.top - 40 mm" },
        };
        var spacer = Metric(tier, runner) with { Sizes = [new() { Name = "spacer", Size = "s.height - r.height" }] };
        Assert.Equal(Mm(260), Size(Built(spacer), "spacer"));
        Assert.Equal(Size(Built(spacer), "spacer"), Size(Built(spacer), "r.bottom"));
    }

    [Theory]
    [InlineData(Wall.Back, Direction.PlusX, Direction.MinusY)]
    [InlineData(Wall.Left, Direction.PlusY, Direction.PlusX)]
    [InlineData(Wall.Right, Direction.MinusY, Direction.MinusX)]
    public void A_runner_lies_along_its_wall_with_its_back_against_it(Wall wall, Direction along, Direction shows)
    {
        var longBy = new LongBy { Right = "5" };
        var built = Built(
            Metric(
                new Runner
                {
                    Id = "r",
                    Material = "ply",
                    Length = "500",
                    Height = "40",
                    Wall = wall,
                    LongBy = longBy,
                }
            )
        );
        var panel = built.Panels.Single();
        Assert.Equal((along, shows), (panel.Place.X, panel.Place.Z));
        Assert.Equal(Mm(5), panel.Edges.End!.LongBy!.Length); // right, for someone who faces that wall
        Assert.Equal(Mm(40), Solid(panel).High.Z - Solid(panel).Low.Z);
    }

    [Fact]
    public void A_filler_stands_on_end_and_stays_long_at_the_wall_side()
    {
        var filler = new Filler
        {
            Id = "f",
            Material = "ply",
            Width = "30",
            Height = "700",
            LongBy = new() { Left = "12", Back = "8" },
        };
        var panel = Built(Metric(filler)).Panels.Single();
        Assert.Equal((Mm(700), Mm(30)), (panel.Length.Length, panel.Width.Length));
        Assert.Equal(Direction.MinusY, panel.Place.Z); // shows to the front
        var left = panel.Place.Y == Direction.MinusX ? panel.Edges.High : panel.Edges.Low;
        Assert.Equal(Mm(12), left!.LongBy!.Length);
        Assert.Equal(Mm(8), panel.Edges.End!.LongBy!.Length); // its upper end
    }

    [Theory]
    [InlineData(PanelLie.Flat, "width", "depth", "height")]
    [InlineData(PanelLie.UprightAlongX, "width", "height", "depth")]
    [InlineData(PanelLie.StandingAlongX, "height", "width", "depth")]
    [InlineData(PanelLie.UprightAlongY, "depth", "height", "width")]
    [InlineData(PanelLie.StandingAlongY, "height", "depth", "width")]
    public void A_free_panel_lies_as_told(PanelLie lie, string length, string width, string thickness)
    {
        var built = Built(
            Metric(
                new FreePanel
                {
                    Id = "p",
                    Material = "ply",
                    Length = "800",
                    Width = "300",
                    Lie = lie,
                }
            )
        );
        Assert.Equal(
            (Mm(800), Mm(300), Mm(17.6m)),
            (Size(built, $"p.{length}"), Size(built, $"p.{width}"), Size(built, $"p.{thickness}"))
        );
        Assert.Equal((built.Pieces[0].Low, built.Pieces[0].High), Corners(built.Panels));
    }

    [Fact]
    public void Holes_are_measured_from_the_left_lower_corner_as_the_panel_is_seen()
    {
        var panel = new FreePanel
        {
            Id = "p",
            Material = "ply",
            Length = "800",
            Width = "300",
            Lie = PanelLie.StandingAlongX,
            Holes =
            [
                new()
                {
                    Id = "h",
                    X = "50",
                    Y = "700",
                    Diameter = "40",
                },
            ],
        };
        var made = Built(Metric(panel)).Panels.Single();
        var hole = Assert.IsType<Machining.Through>(Assert.Single(made.Machining));
        var inRoom = made.Place.Map(new(hole.Centre.X, hole.Centre.Y, default));
        Assert.Equal((Mm(50), Mm(700)), (inRoom.X, inRoom.Z));
    }

    [Fact]
    public void Sheets_without_figure_leave_it_open_which_way_a_part_is_cut()
    {
        var project = Metric(
            new FreePanel
            {
                Id = "p",
                Material = "ply",
                Length = "800",
                Width = "300",
            }
        );
        var plain = project with
        {
            Shop = project.Shop with { Sheets = [Sheet("ply", "16 mm") with { HasFigure = false }] },
        };
        Assert.Equal(PanelFigure.Any, Built(plain).Panels.Single().Figure);
    }
}

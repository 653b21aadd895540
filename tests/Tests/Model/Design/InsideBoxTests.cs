using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;
using static Nookwright.Tests.Design.DesignGiven;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

public class InsideBoxTests
{
    private static readonly Carcass Plain = Box("box", "900", "700", "500") with { Top = BoxTop.Panel };

    private static BoxShelf Pins(string id, string at, int bay = 1) =>
        new()
        {
            Id = id,
            Kind = ShelfKind.Pins,
            At = at,
            Bay = bay,
        };

    [Fact]
    public void Partitions_without_a_place_share_the_inside_evenly()
    {
        var built = Built(Metric(Plain with { Partitions = [new() { Id = "a" }, new() { Id = "b" }] }));
        var bays = Enumerable.Range(1, 3).Select(i => built.Sizes[$"box.bay-{i}.width"].Amount).Distinct();
        Assert.Single(bays);
        Assert.Equal(
            Size(built, "box.inside-width"),
            (built.Sizes["box.bay-1.width"] * 3 + built.Sizes["ply.thickness"] * 2).Length
        );
    }

    [Fact]
    public void A_placed_partition_stands_where_it_is_told_and_between_bottom_and_top()
    {
        var built = Built(Metric(Plain with { Partitions = [new() { Id = "a", At = "300" }] }));
        var (low, high) = Solid(PanelOf(built, "box.a"));
        Assert.Equal(Mm(317.6m), low.X);
        Assert.Equal(Mm(300), Size(built, "box.bay-1.width"));
        Assert.Equal(Mm(17.6m), low.Z);
        Between(high.Z, Mm(682.4m) - Mark, Mm(682.4m));
    }

    /// <summary>864.8 inside + 2 × 8.8 = 882.4, down to the mark 882; the dadoes are 8.6 or 8.8 deep, within half a mark each.</summary>
    [Fact]
    public void A_fixed_shelf_goes_into_dadoes_where_the_box_has_them()
    {
        var box = Plain with { Joint = Joint.Dado, Shelves = [Pins("s", "200") with { Kind = ShelfKind.Fixed }] };
        var built = Built(Metric(box));
        var inside = Size(built, "box.inside-width");
        var length = Size(built, "box.s.length");
        Between(length, inside + Mm(17.6m) - Mark, inside + Mm(17.6m));
        foreach (var side in new[] { "box.left-side", "box.right-side" })
        {
            var (low, high) = Solid(PanelOf(built, "box.s"));
            var (sideLow, sideHigh) = Solid(PanelOf(built, side));
            var shared = Length.Min(high.X, sideHigh.X) - Length.Max(low.X, sideLow.X);
            var grooves = PanelOf(built, side).Machining.OfType<Machining.Groove>();
            Assert.Contains(grooves, groove => groove.Depth == shared && shared > Mm(8));
        }
    }

    [Fact]
    public void At_a_partition_a_fixed_shelf_butts_lest_two_dadoes_meet_in_it()
    {
        var box = Plain with
        {
            Joint = Joint.Dado,
            Partitions = [new() { Id = "p" }],
            Shelves = [Pins("s", "200") with { Kind = ShelfKind.Fixed }],
        };
        var built = Built(Metric(box));
        var bay = Size(built, "box.bay-1.width");
        Between(Size(built, "box.s.length"), bay + Mm(8.8m) - Mark, bay + Mm(8.8m));
        Assert.DoesNotContain(PanelOf(built, "box.p").Machining, m => m is Machining.Groove);
    }

    [Theory]
    [InlineData("-5")]
    [InlineData("870")]
    public void A_partition_outside_the_box_is_said(string at)
    {
        var finding = Only(
            Built(Metric(Plain with { Partitions = [new() { Id = "a", At = at }] })),
            "carcass.partition-outside"
        );
        Assert.Equal("pieces/box/partitions/a/at", finding.Field);
    }

    /// <summary>
    /// The 32 mm system as makers describe it (no standards body defines it): 5 mm holes, 32 mm apart, the front column 37 mm
    /// from the front edge, the rear column a multiple of 32 mm behind it.
    /// </summary>
    [Fact]
    public void Pin_holes_follow_the_thirty_two_millimetre_system()
    {
        var built = Built(Metric(Plain with { Shelves = [Pins("shelf", "300")] }));
        foreach (var id in (string[])["box.left-side", "box.right-side"])
        {
            var side = PanelOf(built, id);
            var columns = side.Machining.OfType<Machining.Pins>().ToList();
            Assert.Equal(2, columns.Count);
            Assert.All(columns, c => Assert.Equal((PanelFace.Hidden, Mm(32), Mm(5)), (c.Face, c.Pitch, c.Diameter)));
            var fromFront = columns.Select(c => side.Place.Map(new(c.First.X, c.First.Y, default)).Y).Order().ToList();
            Assert.Equal(Mm(37), fromFront[0]);
            Assert.Equal(0, (fromFront[1] - fromFront[0]).Nanometres % Mm(32).Nanometres);
            Between(fromFront[1], Mm(500 - 37 - 32), Mm(500 - 37));
        }
    }

    /// <summary>A shelf rests on the upper side of a 5 mm pin: the hole's centre lies 2.5 mm under the shelf.</summary>
    [Fact]
    public void A_shelf_lies_on_a_hole_of_its_column()
    {
        var built = Built(Metric(Plain with { Shelves = [Pins("shelf", "300")] }));
        var pins = PanelOf(built, "box.left-side").Machining.OfType<Machining.Pins>().First();
        var under = Solid(PanelOf(built, "box.shelf")).Low.Z;
        Assert.Equal(Mm(317.6m), under);
        Assert.Equal(0, (under - Mm(2.5m) - pins.First.X).Nanometres % Mm(32).Nanometres);
        Assert.True(pins.First.X + pins.Pitch * (pins.Count - 1) < Size(built, "box.height"));
    }

    [Fact]
    public void Sides_are_drilled_at_the_same_heights_and_opposite_each_other()
    {
        var built = Built(
            Metric(
                Plain with
                {
                    Partitions = [new() { Id = "a" }],
                    Shelves = [Pins("one", "200"), Pins("two", "310", 2)],
                }
            )
        );
        Assert.Equal(
            Places("box.left-side"),
            Places("box.a").Where(p => p.Face == PanelFace.Show).Select(p => p with { Face = PanelFace.Hidden })
        );
        Assert.Equal(Places("box.right-side"), Places("box.a").Where(p => p.Face == PanelFace.Hidden));

        IEnumerable<(PanelFace Face, Length Y, Length Z)> Places(string id) =>
            from pins in PanelOf(built, id).Machining.OfType<Machining.Pins>()
            let first = PanelOf(built, id).Place.Map(new(pins.First.X, pins.First.Y, default))
            select (pins.Face, first.Y, first.Z);
    }

    [Fact]
    public void Holes_from_both_faces_of_a_partition_do_not_meet()
    {
        var built = Built(
            Metric(
                Plain with
                {
                    Partitions = [new() { Id = "a" }],
                    Shelves = [Pins("one", "200"), Pins("two", "200", 2)],
                }
            )
        );
        var depths = PanelOf(built, "box.a").Machining.OfType<Machining.Pins>().Select(p => p.Depth);
        Assert.All(depths, depth => Assert.True(depth * 2 < Mm(17.6m)));
    }

    [Fact]
    public void A_second_shelf_goes_to_the_nearest_hole_and_says_so()
    {
        var built = Built(Metric(Plain with { Shelves = [Pins("one", "200"), Pins("two", "400")] }));
        // 200 mm apart is 6.25 pitches; six are 192.
        Assert.Equal(Mm(192), Solid(PanelOf(built, "box.two")).Low.Z - Solid(PanelOf(built, "box.one")).Low.Z);
        var finding = Only(built, "carcass.pin-shelf-moved");
        Assert.Contains("8 mm lower", finding.Message);
    }

    [Fact]
    public void Behind_inset_doors_columns_and_shelves_stand_back_by_the_doors_thickness()
    {
        var doors = new Doors
        {
            Id = "door",
            Box = "box",
            Material = "ply",
        };
        var built = Built(Metric(Plain with { Shelves = [Pins("shelf", "300")], Partitions = [] }, doors));
        Assert.Equal(Mm(17.6m + 6), Solid(PanelOf(built, "box.shelf")).Low.Y);
        Assert.Contains(
            PanelOf(built, "box.left-side").Machining.OfType<Machining.Pins>(),
            pins => pins.First.Y == Mm(37 + 17.6m)
        );
        Assert.DoesNotContain("pieces.overlap", Rules(built));
    }

    [Fact]
    public void A_shelf_on_pins_is_shorter_than_its_bay_by_its_clearance()
    {
        var built = Built(Metric(Plain with { Shelves = [Pins("shelf", "300")] }));
        Assert.Equal(Size(built, "box.inside-width") - Mm(3), PanelOf(built, "box.shelf").Length.Length);
    }

    [Theory]
    [InlineData("660", "too high")]
    [InlineData("-20", "too low")]
    public void A_shelf_outside_its_bay_is_said(string at, string how)
    {
        var shelf = new BoxShelf { Id = "s", At = at };
        Assert.Contains(how, Only(Built(Metric(Plain with { Shelves = [shelf] })), "carcass.shelf-above-bay").Message);
    }

    [Fact]
    public void A_shelf_in_a_bay_there_is_not_leaves_its_box_out()
    {
        var built = Built(
            Metric(
                Plain with
                {
                    Shelves =
                    [
                        new()
                        {
                            Id = "s",
                            At = "100",
                            Bay = 3,
                        },
                    ],
                }
            )
        );
        Assert.Equal(Severity.MustMend, Only(built, "carcass.no-such-bay").Severity);
        Assert.Empty(built.Pieces);
    }

    [Fact]
    public void Joints_deeper_than_the_sheet_are_said() =>
        Assert.Contains(
            "carcass.joint-too-deep",
            Rules(Built(Metric(Plain with { Joint = Joint.Dado, JointDepth = "18" })))
        );
}

using CsCheck;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;
using static Nookwright.Tests.Design.DesignGiven;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

public class DoorTests
{
    private static readonly Carcass TwentyFour = Box("box", "24 in", "30 in", "20 in") with { Top = BoxTop.Panel };

    private static Doors Doors(int count = 1) =>
        new()
        {
            Id = "door",
            Box = "box",
            Material = "ply",
            Count = count,
        };

    /// <summary>Trade practice, phase 5: inset = opening - gaps; 1/16 in is the common gap.</summary>
    [Fact]
    public void An_inset_door_is_its_opening_less_a_sixteenth_all_round()
    {
        var built = Built(Imperial(TwentyFour, Doors()));
        var opening = Size(built, "door.opening-width");
        Assert.Equal(In(22, 19, 32), Size(built, "box.bottom.length")); // 24 - 1.406 = 22.594
        Assert.Equal(Size(built, "box.bottom.length"), opening);
        Assert.Equal(opening - In(0, 1, 8), Size(built, "door.door.width"));
        Assert.Equal(In(0, 1, 16), Size(built, "door.left") - In(0, 703, 1000));
    }

    /// <summary>Trade practice, phase 5: pair = (opening + 2 overlays - middle gap) / 2.</summary>
    [Fact]
    public void A_pair_of_overlay_doors_shares_opening_and_overlays_less_the_middle_gap()
    {
        var doors = Doors(2) with { Style = DoorStyle.Overlay, Overlay = "1/2 in", Gap = "1/8 in" };
        var built = Built(Imperial(TwentyFour, doors));
        var byHand = (In(22, 19, 32) + In(1) - In(0, 1, 8)).Inches / 2; // 11.734…
        Assert.Equal(byHand, Size(built, "door.left-door.width").Inches, 1 / 32.0);
        Assert.Equal(Size(built, "door.left-door.width"), Size(built, "door.right-door.width"));
        var between = Solid(PanelOf(built, "door.right-door")).Low.X - Solid(PanelOf(built, "door.left-door")).High.X;
        Between(between, In(0, 1, 8), In(0, 1, 8) + In(0, 1, 16)); // the rest of rounding goes there
    }

    [Fact]
    public void Overlay_doors_stand_before_the_box_and_leave_half_a_gap_to_its_outside()
    {
        var built = Built(
            Metric(
                Box("box", "600", "700", "500") with
                {
                    Top = BoxTop.Panel,
                },
                Doors() with
                {
                    Style = DoorStyle.Overlay,
                    Gap = "3",
                }
            )
        );
        Assert.Equal(-Mm(17.6m), Size(built, "door.front"));
        Assert.Equal(Length.Zero, Size(built, "door.back"));
        var beside = Size(built, "door.left") - Size(built, "box.left");
        Between(beside, Mm(1.5m), Mm(1.5m) + Mark);
    }

    [Fact]
    public void Neighbours_over_one_partition_share_it_and_keep_their_gap()
    {
        var box = Box("box", "900", "700", "500") with { Partitions = [new() { Id = "middle" }] };
        var left = Doors() with { Id = "left", Bay = 1, Style = DoorStyle.Overlay, Gap = "3" };
        var built = Built(Metric(box, left, left with { Id = "right", Bay = 2 }));
        var between = Size(built, "right.left") - Size(built, "left.right");
        Between(between, Mm(3), Mm(3) + Mark);
        Assert.DoesNotContain("pieces.overlap", Rules(built));
    }

    [Fact]
    public void Figure_across_turns_the_door_and_not_its_size()
    {
        var upright = Built(Metric(Box("box", "600", "700", "500"), Doors()));
        var across = Built(Metric(Box("box", "600", "700", "500"), Doors() with { Figure = FigureOnDoor.Across }));
        var (a, b) = (PanelOf(upright, "door.door"), PanelOf(across, "door.door"));
        Assert.Equal((a.Length.Length, a.Width.Length), (b.Width.Length, b.Length.Length));
        Assert.Equal(Solid(a), Solid(b));
        Assert.Equal((a.Place.Z, b.Place.Z), (Direction.MinusY, Direction.MinusY)); // both show to the front
    }

    [Fact]
    public void A_door_that_waits_for_a_reading_is_held_until_it_is_taken()
    {
        var doors = Doors() with { Width = "opening.read - 3 mm" };
        var project = Metric(Box("box", "600", "700", "500"), doors) with
        {
            Readings = [new() { Name = "opening.read", Planned = "box.inside-width" }],
        };
        var waits = PanelOf(Built(project), "door.door");
        Assert.Equal(["opening.read"], waits.Width.Awaits);
        Assert.False(waits.Length.IsHeld);
        var read = project with { Readings = [project.Readings[0] with { Taken = "566.5 mm" }] };
        Assert.Equal(Mm(563.5m), PanelOf(Built(read), "door.door").Width.Length);
        Assert.False(PanelOf(Built(read), "door.door").Width.IsHeld);
    }

    [Fact]
    public void A_door_wider_than_its_opening_says_by_how_much_and_what_would_fit()
    {
        var finding = Only(
            Built(Metric(Box("box", "600", "700", "500"), Doors(2) with { Width = "290 mm" })),
            "doors.wider-than-opening"
        );
        Assert.Equal((Severity.MustMend, "pieces/door/width"), (finding.Severity, finding.Field));
        Assert.Contains("580 mm", finding.Message);
        Assert.Contains("15 mm more than the opening", finding.Message); // the opening is 565
        Assert.Contains("280 mm or less", finding.Message); // (565 - 3 × 1.5) / 2 = 280.25
    }

    [Theory]
    [InlineData("564 mm", "doors.gap-too-small")]
    [InlineData("562 mm", null)]
    public void A_given_width_that_fits_but_takes_of_the_gaps_is_a_warning(string width, string? rule)
    {
        var found = Rules(Built(Metric(Box("box", "600", "700", "500"), Doors() with { Width = width })));
        Assert.Equal(rule is null ? [] : [rule], found.Where(r => r.StartsWith("doors.", StringComparison.Ordinal)));
    }

    [Fact]
    public void An_overlay_door_too_narrow_to_cover_its_opening_is_said()
    {
        var doors = Doors() with { Style = DoorStyle.Overlay, Width = "540 mm" };
        var finding = Only(Built(Metric(Box("box", "600", "700", "500"), doors)), "doors.narrower-than-opening");
        Assert.Contains("25 mm", finding.Message);
    }

    /// <summary>Trade practice, phase 5 (calc): a 1/16 in gap jams a 3/4 in door narrower than about 4 1/2 in.</summary>
    [Theory]
    [InlineData("6 in", true)] // opening 4.5 in, door 4.375 in
    [InlineData("6 1/4 in", false)] // opening 4.75 in, door 4.625 in
    public void A_narrow_inset_door_binds_with_its_free_corner(string outside, bool binds)
    {
        var box = Box("box", outside, "30 in", "20 in");
        var built = Built(Job(LengthUnit.Inches, "3/4 in", "1/4 in", box, Doors()));
        Assert.Equal(binds, Rules(built).Contains("doors.corner-binds"));
    }

    [Fact]
    public void Doors_without_their_box_say_so()
    {
        var finding = Only(Built(Metric(Doors() with { Box = "bx" })), "doors.no-box");
        Assert.Equal("pieces/door/box", finding.Field);
    }

    [Fact]
    public void Doors_of_a_turned_box_hang_in_its_front_wherever_that_looks() =>
        Gen.Select(AnyBox(Joint.PocketScrews), Gen.Enum<DoorStyle>(), Gen.Int[1, 2])
            .Where((given, _, _) => given.Box.Partitions.Count == 0)
            .Sample(
                (given, style, count) =>
                {
                    var built = Built(
                        Job(
                            LengthUnit.Millimetres,
                            given.Thickness,
                            "5 mm",
                            given.Box,
                            Doors(count) with
                            {
                                Style = style,
                            }
                        )
                    );
                    Assert.DoesNotContain("pieces.overlap", Rules(built));
                    var doors = built.Pieces[1];
                    Assert.True((doors.High.X - Size(built, "door.right")).Abs() <= new Length(1)); // thirds of a nanometre
                    var box = built.Pieces[0];
                    var forward = given.Box.Facing switch
                    {
                        Facing.Left => doors.Low.X - box.Low.X,
                        Facing.Right => box.High.X - doors.High.X,
                        _ => doors.Low.Y - box.Low.Y,
                    };
                    Assert.Equal(style == DoorStyle.Inset ? Length.Zero : -Size(built, "ply.thickness"), forward);
                }
            );

    [Fact]
    public void Gaps_of_inset_doors_are_equal_and_never_smaller_than_asked() =>
        Gen.Select(AnyBox(Joint.PocketScrews), Gen.Int[1, 2])
            .Where((given, _) => given.Box.Partitions.Count == 0)
            .Sample(
                (given, count) =>
                {
                    var box = given.Box with { Facing = Facing.Front };
                    var built = Built(Job(LengthUnit.Millimetres, given.Thickness, "5 mm", box, Doors(count)));
                    var open = Size(built, "ply.thickness");
                    var edges = built
                        .Pieces[1]
                        .Panels.Select(Solid)
                        .SelectMany(s => (Length[])[s.Low.X, s.High.X])
                        .Prepend(open)
                        .Append(open + Size(built, "box.inside-width"))
                        .ToList();
                    var gaps = Enumerable.Range(0, count + 1).Select(i => edges[(2 * i) + 1] - edges[2 * i]).ToList();
                    Assert.All(gaps, gap => Assert.True(gap >= Mm(1.5m) - new Length(1), $"{gap}"));
                    Assert.True(gaps.Max() - gaps.Min() <= new Length(2)); // thirds of a nanometre
                }
            );
}

using CsCheck;
using Nookwright.Measure;
using static Nookwright.Tests.Measure.Given;
using static Nookwright.Tests.Parts.PartsGiven;

namespace Nookwright.Tests.Parts;

public class CutSizeTests
{
    /// <summary>By hand: 600 finished, less 2 and 0.5 of edging, plus 20 long at one end: 600 - 2.5 + 20 = 617.5.</summary>
    [Fact]
    public void The_saw_sets_the_finished_size_less_counted_edging_plus_what_stays_long()
    {
        var panel = Panel("top.slab", 600, 400) with
        {
            Edges = new(new("oak-strip", Mm(2), Written(20)), new("oak-tape", Mm(0.5m), null), null, null),
        };
        var part = Assert.Single(PartsOf(panel).Parts);
        Assert.Equal((Mm(617.5m), Mm(400)), (part.CutLength.Length, part.CutWidth.Length));
        var why = WhyText.Tell(part.CutLength, LengthFormat.Millimetres(0.1m)).ToList();
        Assert.Contains(why, line => line.Contains("oak-strip on an edge is part of the finished size"));
    }

    [Fact]
    public void Tape_that_does_not_count_leaves_the_size_alone()
    {
        var panel = Panel("p.a", 600, 400) with { Edges = new(new("tape", Length.Zero, null), null, null, null) };
        Assert.Same(panel.Length, Assert.Single(PartsOf(panel).Parts).CutLength);
    }

    /// <summary>By hand: planned 500 + 20 = 520, and 25 mm allowance (the shop's default in millimetres) makes 545 by 325.</summary>
    [Fact]
    public void A_part_that_waits_for_a_reading_is_a_blank_with_allowance()
    {
        var panel = Panel("filler.strip", Awaited("run.width", 500) + Written(20), Written(300));
        var part = Assert.Single(PartsOf(panel).Parts);
        Assert.True(part.IsHeld);
        Assert.Equal((Mm(545), Mm(325), Mm(25)), (part.Blank!.Length, part.Blank.Width, part.Blank.Allowance));
        Assert.Equal(["run.width"], part.Blank.Awaits);
    }

    [Fact]
    public void The_allowance_is_the_shops()
    {
        var job = Job with { Shop = Job.Shop with { Allowance = "40" } };
        var part = PartsOf(job, Panel("a.b", Awaited("r", 500), Written(300))).Parts[0];
        Assert.Equal(Mm(540), part.Blank!.Length);
    }

    /// <summary>A part is held just when its sizes, or what stays long, come from a reading not taken; nothing else holds it.</summary>
    [Fact]
    public void Only_formulas_over_a_reading_not_taken_hold_a_part()
    {
        var number = Gen.Select(Gen.Int[300, 900], Gen.Bool, (mm, waits) => waits ? Awaited("r", mm) : Written(mm));
        Gen.Select(number, number, number, Gen.Bool)
            .Sample(
                (length, width, longBy, isLong) =>
                {
                    var panel = Panel("a.b", (length * 2) + Written(1), width / 3) with
                    {
                        Edges = new(null, null, null, isLong ? new(null, Length.Zero, longBy) : null),
                    };
                    var expected = length.IsHeld || width.IsHeld || (isLong && longBy.IsHeld);
                    return PartsOf(panel).Parts[0].IsHeld == expected;
                }
            );
    }

    [Fact]
    public void A_panel_that_its_edging_eats_up_must_be_mended()
    {
        var panel = Panel("p.a", 3, 400) with { Edges = new(new("strip", Mm(3), null), null, null, null) };
        Assert.Equal("part.nothing-left", Assert.Single(PartsOf(panel).Findings).Rule);
    }

    [Fact]
    public void Parts_that_wait_for_a_reading_are_listed_with_it()
    {
        var finding = Assert.Single(PartsOf(Panel("a.b", Awaited("run.width", 500), Written(300))).Findings);
        Assert.Equal("part.held", finding.Rule);
        Assert.Equal("a.b waits for reading run.width and stays 25 mm long until it is taken.", finding.Message);
    }
}

using Nookwright.Design;
using Nookwright.Drawing;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Sawing;

namespace Nookwright.Tests.Drawing;

public sealed class CuttingPictureTests
{
    private static readonly LengthFormat Format = LengthFormat.Millimetres(0.1m);

    [Fact]
    public void The_sample_plan_is_one_the_virtual_saw_can_execute() =>
        Assert.Null(VirtualSaw.Run(SamplePlan.Plan, SamplePlan.Request).Why);

    [Theory]
    [InlineData(190, 110)]
    [InlineData(110, 190)]
    [InlineData(60, 40)]
    public void Every_part_s_letter_is_on_its_part_once(double width, double height)
    {
        var picture = SheetLayout.Of(SamplePlan.Plan, 1, SamplePlan.Request, Format, width, height);
        foreach (var part in SamplePlan.Request.Parts)
        {
            var group = Assert.Single(picture.Marks.OfType<Mark.Group>(), g => g.About == part.Id);
            var letter = Assert.Single(group.Marks.OfType<Mark.Label>(), l => l.Text == part.Letter);
            Assert.True(letter.Bold);
            Assert.Contains(ViewTests.LabelsOf(picture.Marks), l => l.Text == part.Letter);
        }
        var letters = ViewTests.LabelsOf(picture.Marks).Count(l => l.Text == "A");
        Assert.Equal(2, letters);
    }

    [Fact]
    public void A_held_blank_says_so_and_is_cross_hatched_and_offcuts_are_hatched_with_what_to_write_on_them()
    {
        var picture = SheetLayout.Of(SamplePlan.Plan, 1, SamplePlan.Request, Format, 190, 110);
        var groups = picture.Marks.OfType<Mark.Group>().ToArray();
        var held = groups.Single(g => g.About == "door");
        Assert.Contains(held.Marks.OfType<Mark.Label>(), l => l.Text == "HELD 745 × 425");
        Assert.Contains(held.Marks.OfType<Mark.Path>(), p => p.Fill == Fill.Held);
        // The blank is 1a: it may become free some day.
        foreach (var (offcut, mark) in new[] { ("S1-F1", "1b"), ("S1-F2", "1c"), ("S1-F3", "1d") })
        {
            var group = groups.Single(g => g.About == offcut);
            Assert.Contains(group.Marks.OfType<Mark.Label>(), l => l.Text == mark);
            Assert.Contains(group.Marks.OfType<Mark.Path>(), p => p.Fill == Fill.Hatch);
        }
    }

    [Fact]
    public void Breakdown_cuts_are_numbered_and_say_how_far_from_which_edge()
    {
        var texts = ViewTests.TextsOf(SheetLayout.Of(SamplePlan.Plan, 1, SamplePlan.Request, Format, 190, 110));
        foreach (var text in new[] { "1", "2", "3", "4", "← 1655" })
            Assert.Contains(text, texts);
        // Cut 3 is measured from the upper edge: on a text that reads from the right, up is to its right.
        Assert.Contains("→ 425", texts);
        Assert.Contains("← 600", texts);
    }

    [Fact]
    public void A_cut_is_drawn_in_the_middle_of_its_kerf()
    {
        var picture = SheetLayout.Of(SamplePlan.Plan, 1, SamplePlan.Request, Format, 190, 110);
        var sheet = picture.Marks.OfType<Mark.Path>().First();
        var scale = (sheet.Spots.Max(s => s.X) - sheet.Spots.Min(s => s.X)) / 2440;
        var cut = ViewTests.All(picture.Marks).OfType<Mark.Line>().First(l => l.Pen == Pen.Cut);
        Assert.Equal((1655 + 1.1) * scale, cut.From.X - sheet.Spots.Min(s => s.X), 1e-6);
    }

    [Fact]
    public void A_setting_s_card_shows_the_distance_the_letters_and_what_is_left()
    {
        var visit = SamplePlan.Plan.Visits[4];
        var picture = SettingPicture.Of(visit, SamplePlan.Plan, SamplePlan.Request, Format);
        var texts = ViewTests.TextsOf(picture);
        Assert.Contains("700 mm", texts);
        Assert.Equal(2, texts.Count(t => t == "A"));
        Assert.Contains("S1-F3", texts);
        Assert.Contains("arrow ←  S1-T1, 554 wide", texts);
        Assert.Equal("Setting 5: stop at 700 mm", picture.Title);
    }

    [Fact]
    public void Workpieces_cut_alike_are_shown_once_with_both_letters() =>
        Assert.Contains(
            "C D",
            ViewTests.TextsOf(SettingPicture.Of(SamplePlan.Plan.Visits[2], SamplePlan.Plan, SamplePlan.Request, Format))
        );

    [Fact]
    public void A_part_s_picture_says_its_finished_sizes_and_what_it_is_cut_to_when_that_differs()
    {
        var panel = SampleJob.Panel("a.b", PanelRole.Free, (700, 554), (0, 0, 0));
        var part = SampleJob.PartOf(panel, "A");
        Assert.Equal(["554", "700", "A"], ViewTests.TextsOf(PartPicture.Of(part, Format)).Order());
        var longer = part with { CutLength = SampleJob.Size(712) };
        Assert.Contains("cut 712 × 554", ViewTests.TextsOf(PartPicture.Of(longer, Format, 90, 70)));
    }

    [Fact]
    public void An_l_shaped_part_says_each_leg_and_the_whole()
    {
        Point2 At(double x, double y) => new(SampleJob.Mm(x), SampleJob.Mm(y));
        var panel = SampleJob.Panel("a.b", PanelRole.Slab, (1400, 900), (0, 0, 0)) with
        {
            Outline = new([At(0, 0), At(400, 0), At(400, 350), At(1400, 350), At(1400, 900), At(0, 900)]),
        };
        var texts = ViewTests.TextsOf(PartPicture.Of(SampleJob.PartOf(panel, "B"), Format, 90, 70));
        foreach (var size in new[] { "400", "1000", "1400", "350", "550", "900" })
            Assert.Single(texts, size);
    }

    [Fact]
    public void An_edge_with_edging_is_drawn_heavy()
    {
        var panel = SampleJob.Panel("a.b", PanelRole.Free, (700, 554), (0, 0, 0)) with
        {
            Edges = new(null, null, new("tape", Length.Zero, null), null),
        };
        var picture = PartPicture.Of(SampleJob.PartOf(panel, "A"), Format);
        var heavy = Assert.Single(ViewTests.All(picture.Marks).OfType<Mark.Line>(), l => l.Pen == Pen.Cut);
        var outline = ViewTests.All(picture.Marks).OfType<Mark.Path>().First();
        Assert.Equal(outline.Spots.Max(s => s.Y), heavy.From.Y, 1e-9); // y = 0 is the lower edge
        Assert.Equal(heavy.From.Y, heavy.To.Y, 1e-9);
    }
}

using System.Xml.Linq;
using Nookwright.Drawing;
using Nookwright.Measure;

namespace Nookwright.Tests.Drawing;

public sealed class ViewTests
{
    [Fact]
    public void A_front_view_says_the_widths_of_the_boxes_the_heights_and_both_over_all()
    {
        var texts = TextsOf(Elevation.Of(SampleJob.Workbook(), SeenFrom.Front, 200, 180));
        Assert.Equal(3, texts.Count(t => t == "780"));
        foreach (var size in new[] { "2396", "80", "700", "30", "1508", "2318" }) // 2398 - 2, 780 + 30, 2318 - 810
            Assert.Contains(size, texts);
    }

    [Fact]
    public void A_plan_says_the_depths_of_the_boxes_and_of_the_top()
    {
        var texts = TextsOf(PlanView.Of(SampleJob.Workbook(), 200, 120));
        Assert.Contains("560", texts);
        Assert.Contains("604", texts);
        Assert.Equal(3, texts.Count(t => t == "780"));
    }

    [Fact]
    public void A_job_in_inches_has_its_sizes_in_fractions_and_a_scale_for_them()
    {
        var picture = Elevation.Of(SampleJob.Workbook(LengthUnit.Inches), SeenFrom.Front, 260, 180);
        Assert.Contains("30 45⁄64", TextsOf(picture)); // 780 / 25.4 = 30.7087 in = 30 45.35/64 in
        Assert.EndsWith("3⁄4 in = 1 ft", picture.Title);
    }

    [Theory]
    [InlineData(190, 180, "1:20")]
    [InlineData(330, 330, "1:10")]
    [InlineData(100, 90, "1:50")]
    public void The_largest_usual_scale_that_fits_is_taken(double width, double height, string scale) =>
        Assert.EndsWith(scale, Elevation.Of(SampleJob.Workbook(), SeenFrom.Front, width, height).Title);

    [Theory]
    [InlineData(SeenFrom.Front, 190)]
    [InlineData(SeenFrom.Left, 120)]
    [InlineData(SeenFrom.Right, 90)]
    public void No_two_texts_of_a_view_meet_and_none_runs_off_it(SeenFrom from, double width)
    {
        var picture = Elevation.Of(SampleJob.Workbook(), from, width, 180);
        var boxes = LabelsOf(picture.Marks).Select(l => (l.Text, Box: LabelBox.Of(l))).ToArray();
        foreach (var (one, i) in boxes.Select((b, i) => (b, i)))
        {
            Assert.True(one.Box.Left >= 0 && one.Box.Top >= 0, one.Text);
            Assert.True(one.Box.Right <= picture.Width && one.Box.Bottom <= picture.Height, one.Text);
            foreach (var other in boxes.Skip(i + 1))
                Assert.False(Meet(one.Box, other.Box), $"{one.Text} and {other.Text}");
        }
    }

    [Fact]
    public void Doors_seen_from_the_front_show_on_which_side_they_hang()
    {
        var picture = Elevation.Of(SampleJob.Workbook(), SeenFrom.Front, 200, 180);
        var meetings = LinesOf(picture.Marks)
            .Where(l => l.Pen == Pen.Hidden)
            .SelectMany(l => new[] { l.From, l.To })
            .GroupBy(s => (Math.Round(s.X, 2), Math.Round(s.Y, 2)))
            .Where(g => g.Count() == 2)
            .Select(g => g.Key.Item1)
            .Order()
            .ToArray();
        // Box 1 hangs on the left, boxes 2 and 3 on the right; doors are 777 wide and 780 apart, at 1:20.
        Assert.Equal(3, meetings.Length);
        Assert.Equal((777 + 780) / 20.0, meetings[1] - meetings[0], 0.05);
        Assert.Equal(780 / 20.0, meetings[2] - meetings[1], 0.05);
    }

    [Fact]
    public void Each_door_has_its_letter_once()
    {
        var book = SampleJob.Workbook();
        var letters = book.PartList.Parts.Where(p => p.Id.StartsWith("door-")).Select(p => p.Letter);
        var texts = TextsOf(Elevation.Of(book, SeenFrom.Front, 200, 180));
        Assert.All(letters, letter => Assert.Single(texts, letter));
    }

    [Fact]
    public void A_plan_below_a_height_leaves_out_what_is_above_and_cuts_what_goes_through()
    {
        var picture = PlanView.Of(SampleJob.Workbook(), 200, 120, SampleJob.Mm(500));
        var abouts = GroupsOf(picture.Marks).Select(g => g.About).ToHashSet();
        Assert.DoesNotContain("top.board", abouts);
        var cut = GroupsOf(picture.Marks).Where(g => g.Marks.OfType<Mark.Path>().Any(p => p.Fill == Fill.Dark));
        string[] upright = ["left-side", "right-side", "back"];
        var expected = Enumerable
            .Range(1, 3)
            .SelectMany(b => upright.Select(m => $"box-{b}.{m}").Append($"door-{b}.door"));
        Assert.Equal(expected.Order(), cut.Select(g => g.About!).Order());
    }

    [Fact]
    public void A_job_without_room_or_pieces_is_still_a_picture()
    {
        var full = SampleJob.Workbook();
        var empty = full with
        {
            Room = new([], [], [], [], new Dictionary<string, Traced>(), []),
            BuiltIn = full.BuiltIn with { Pieces = [] },
            PartList = new([], [], [], []),
        };
        foreach (var from in Enum.GetValues<SeenFrom>())
            SvgWriterTests.Read(Elevation.Of(empty, from, 100, 100));
        SvgWriterTests.Read(PlanView.Of(empty, 100, 100));
        SvgWriterTests.Read(RoomView.Of(empty, 100, 100));
        Assert.Contains("\"panels\":[]", SceneJson.Of(empty));
    }

    [Fact]
    public void Every_view_is_sound_svg_and_gives_no_id_twice()
    {
        var book = SampleJob.Workbook();
        Picture[] pictures =
        [
            RoomView.Of(book, 180, 140),
            PlanView.Of(book, 180, 140),
            .. Enum.GetValues<SeenFrom>().Select(from => Elevation.Of(book, from, 180, 140)),
        ];
        foreach (var root in pictures.Select(p => SvgWriterTests.Read(p)))
        {
            var ids = root.DescendantsAndSelf().Attributes("id").Select(a => a.Value).ToArray();
            Assert.Equal(ids.Length, ids.Distinct().Count());
            Assert.Contains("p-door-2.door", ids);
        }
    }

    internal static IEnumerable<string> TextsOf(Picture picture) => [.. LabelsOf(picture.Marks).Select(l => l.Text)];

    internal static IEnumerable<Mark.Label> LabelsOf(IEnumerable<Mark> marks) => All(marks).OfType<Mark.Label>();

    internal static IEnumerable<Mark.Group> GroupsOf(IEnumerable<Mark> marks) => All(marks).OfType<Mark.Group>();

    private static IEnumerable<Mark.Line> LinesOf(IEnumerable<Mark> marks) => All(marks).OfType<Mark.Line>();

    internal static IEnumerable<Mark> All(IEnumerable<Mark> marks) =>
        marks.SelectMany(m => m is Mark.Group group ? All(group.Marks).Prepend(m) : [m]);

    private static bool Meet(
        (double Left, double Top, double Right, double Bottom) a,
        (double Left, double Top, double Right, double Bottom) b
    ) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;
}

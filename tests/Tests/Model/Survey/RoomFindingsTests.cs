using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;
using static Nookwright.Projects.PlaceInPlan;
using static Nookwright.Tests.Measure.Given;
using static Nookwright.Tests.Survey.SurveyGiven;

namespace Nookwright.Tests.Survey;

public class RoomFindingsTests
{
    private static readonly RoomReading[] Square =
    [
        Width(Front, "2440"),
        Depth(Left, "600"),
        Depth(Right, "600"),
        Ceiling(Middle, "2400"),
    ];

    [Fact]
    public void A_room_nobody_read_has_no_walls_and_says_where_to_start()
    {
        var room = RoomOf();
        Assert.Empty(room.Walls);
        Assert.Equal(Length.Zero, room.Envelope(Length.Zero, Mm(2000)).Width);
        Assert.Equal("room.not-measured", Assert.Single(room.Findings).Rule);
    }

    [Fact]
    public void A_ceiling_nobody_read_is_not_there()
    {
        var room = RoomOf(Width(Front, "2440"), Depth(Left, "600"));
        Assert.Empty(room.Ceiling);
        Assert.False(room.Sizes.ContainsKey("room.height"));
        Assert.Equal(3, room.Walls.Count);
    }

    [Theory]
    [InlineData("width")]
    [InlineData("depth")]
    [InlineData("height")]
    public void What_is_missing_is_named(string missing)
    {
        var room = RoomOf(Floor(Middle, "0"));
        Assert.Contains(room.Findings, f => f.Rule == "room.not-measured" && f.Message.Contains(missing));
    }

    [Fact]
    public void A_diagonal_shorter_than_the_depth_is_left_out_and_named()
    {
        var room = RoomOf([.. Square, Diagonal(RightFront, "590")]);
        var finding = Assert.Single(room.Findings, f => f.Rule == "room.diagonal-not-possible");
        Assert.Equal(["r5"], finding.About);
        Assert.Equal(Mm(2440), room.Envelope(Length.Zero, Mm(2400)).Width);
    }

    [Fact]
    public void Diagonals_that_would_cross_the_back_corners_are_left_out()
    {
        var room = RoomOf([.. Square, Diagonal(RightFront, "700"), Diagonal(LeftFront, "700")]);
        Assert.Equal(2, room.Findings.Count(f => f.Rule == "room.diagonal-not-possible"));
        Assert.Equal(Mm(2440), room.Envelope(Length.Zero, Mm(2400)).Width);
    }

    /// <summary>By hand: both diagonals 2512.69 set the back 2440 wide; a tape that says 2415 across it disagrees by 25 mm.</summary>
    [Fact]
    public void Readings_that_contradict_each_other_by_more_than_a_crooked_wall_are_named()
    {
        var diagonals = new[] { Diagonal(RightFront, "2512.69"), Diagonal(LeftFront, "2512.69") };
        Assert.DoesNotContain("room.readings-disagree", Rules(RoomOf([.. Square, .. diagonals, Width(Back, "2438")])));
        Assert.Contains("room.readings-disagree", Rules(RoomOf([.. Square, .. diagonals, Width(Back, "2415")])));
    }

    [Fact]
    public void Walls_that_lean_until_they_cross_must_be_mended()
    {
        var room = RoomOf([.. Square, Lean(Left, "900", "300"), Lean(Right, "900", "300")]);
        Assert.Equal(Severity.MustMend, room.Findings.Single(f => f.Rule == "room.walls-cross").Severity);
        Assert.Equal(Length.Zero, room.Envelope(Length.Zero, Mm(2400)).Width);
    }

    [Fact]
    public void A_reading_that_cannot_be_used_is_named_with_its_field_and_left_out()
    {
        var odd = new Dictionary<string, RoomReading>
        {
            ["room.reading-not-possible"] = Width(Front, "-2440"),
            ["room.reading-unclear"] = Width(Front, "2440 mn"),
            ["room.reading-misplaced"] = Width(Left, "2440"),
            ["room.lean-without-height"] = Lean(Left, "4", null),
        };
        Assert.All(
            odd,
            pair =>
            {
                var finding = Assert.Single(RoomOf([.. Square, pair.Value]).Findings, f => f.Rule == pair.Key);
                Assert.StartsWith("room/readings/r5/", finding.Field);
            }
        );
    }

    [Fact]
    public void A_reading_beyond_any_room_does_not_break_the_sums() =>
        Assert.Contains("room.reading-not-possible", Rules(RoomOf([.. Square, Diagonal(RightFront, "900000 mm")])));

    [Fact]
    public void A_reading_not_taken_is_no_size_and_a_note()
    {
        var room = RoomOf([.. Square, Width(Back, "1") with { Value = null }]);
        Assert.False(room.Sizes.ContainsKey("room.r5"));
        Assert.Contains(room.Findings, f => f is { Rule: "room.reading-awaited", Severity: Severity.Note });
    }
}

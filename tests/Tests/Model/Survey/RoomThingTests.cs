using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using static Nookwright.Projects.PlaceInPlan;
using static Nookwright.Tests.Measure.Given;
using static Nookwright.Tests.Survey.SurveyGiven;

namespace Nookwright.Tests.Survey;

public class RoomThingTests
{
    private static readonly RoomReading[] Square =
    [
        Width(Front, "2440"),
        Depth(Left, "600"),
        Depth(Right, "620"),
        Ceiling(Middle, "2400"),
    ];

    [Fact]
    public void A_window_in_the_back_wall_names_its_sides_for_formulas()
    {
        var window = Thing(RoomThingKind.Window, Wall.Back) with
        {
            Along = "700",
            Width = "900",
            Bottom = "1000",
            Height = "1100",
        };
        var room = RoomWith([window], Width(Front, "2440"), Depth(Left, "600"), Ceiling(Middle, "2400"));
        Assert.Equal((Mm(700), Mm(1600)), (Size("left"), Size("right")));
        Assert.Equal((Mm(1000), Mm(2100)), (Size("bottom"), Size("top")));
        Assert.Equal(new Point3(Mm(700), Mm(600), Mm(1000)), Assert.Single(room.Things).Corners[0]);
        Length Size(string side) => room.Sizes[$"thing.{side}"].Length;
    }

    /// <summary>By hand: the right wall's left end, facing it, is at the back, 620 deep: 100 along is at y = 520.</summary>
    [Fact]
    public void On_the_right_wall_along_starts_at_the_back()
    {
        var outlet = Thing(RoomThingKind.Outlet, Wall.Right) with
        {
            Along = "100",
            Width = "70",
            Bottom = "300",
            Height = "115",
        };
        var room = RoomWith([outlet], Square);
        Assert.Equal((Mm(520), Mm(450)), (room.Sizes["thing.left"].Length, room.Sizes["thing.right"].Length));
        Assert.All(room.Things[0].Corners, corner => Assert.Equal(Mm(2440), corner.X));
    }

    [Fact]
    public void A_baseboard_without_a_place_runs_from_end_to_end()
    {
        var board = Thing(RoomThingKind.Baseboard, Wall.Left) with { Height = "90", Projection = "14" };
        var thing = Assert.Single(RoomWith([board], Square).Things);
        Assert.Equal((Mm(0), Mm(600)), (thing.Corners[0].Y, thing.Corners[1].Y));
        Assert.Equal((Mm(90), Mm(14)), (thing.Corners[2].Z, thing.Projection));
    }

    /// <summary>By hand: the left wall stands 10 mm in at 1000, so at 500 a vent on it is 5 mm in.</summary>
    [Fact]
    public void A_thing_follows_its_leaning_wall()
    {
        var vent = Thing(RoomThingKind.Vent, Wall.Left) with
        {
            Along = "200",
            Width = "100",
            Bottom = "500",
            Height = "100",
        };
        var room = RoomWith([vent], [.. Square, Lean(Left, "10", "1000")]);
        Assert.Equal([Mm(5), Mm(5), Mm(6), Mm(6)], room.Things[0].Corners.Select(corner => corner.X));
    }

    [Fact]
    public void A_stud_stands_by_its_centre_line_up_to_the_ceiling()
    {
        var stud = Thing(RoomThingKind.Stud, Wall.Left) with { Along = "400", Width = "38" };
        var room = RoomWith([stud], Square);
        Assert.Equal((Mm(381), Mm(419)), (room.Sizes["thing.left"].Length, room.Sizes["thing.right"].Length));
        Assert.Equal(Mm(2400), room.Sizes["thing.top"].Length);
    }

    [Theory]
    [InlineData("2000", "500", "0", "60 mm beyond")]
    [InlineData("-20", "500", "0", "20 mm before")]
    [InlineData("100", "500", "2000", "100 mm above the ceiling")]
    public void A_thing_outside_its_wall_is_named_with_how_far(string along, string width, string bottom, string says)
    {
        var window = Thing(RoomThingKind.Window, Wall.Back) with
        {
            Along = along,
            Width = width,
            Bottom = bottom,
            Height = "500",
        };
        var room = RoomWith([window], Width(Front, "2440"), Depth(Left, "600"), Ceiling(Middle, "2400"));
        Assert.Contains(room.Findings, f => f.Rule == "room.thing-outside-wall" && f.Message.Contains(says));
    }

    [Fact]
    public void A_thing_whose_size_nobody_understands_is_named_and_left_out()
    {
        var vent = Thing(RoomThingKind.Vent, Wall.Left) with { Along = "two hands" };
        var room = RoomWith([vent], Square);
        Assert.Empty(room.Things);
        Assert.Equal(
            "room/things/thing/along",
            Assert.Single(room.Findings, f => f.Rule == "room.thing-unclear").Field
        );
    }

    private static RoomThing Thing(RoomThingKind kind, Wall wall) =>
        new()
        {
            Id = "thing",
            Kind = kind,
            Wall = wall,
        };
}

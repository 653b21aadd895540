using CsCheck;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Survey;
using static Nookwright.Projects.PlaceInPlan;
using static Nookwright.Tests.Measure.Given;
using static Nookwright.Tests.Survey.SurveyGiven;

namespace Nookwright.Tests.Survey;

public class RoomTests
{
    private static readonly RoomReading[] Square =
    [
        Width(Front, "2440"),
        Width(Back, "2440"),
        Depth(Left, "600"),
        Depth(Right, "600"),
        Ceiling(Middle, "2400"),
    ];

    [Fact]
    public void A_square_plumb_recess_is_the_box_that_was_read()
    {
        var envelope = RoomOf(Square).Envelope(Length.Zero, Mm(2400));
        Assert.Equal(new RoomEnvelope(Length.Zero, Mm(2400), Length.Zero, Mm(2440), Mm(600)), envelope);
    }

    /// <summary>The mason's 3-4-5 triangle: 3 deep and a diagonal of 5 put the back corner 4 along, square to the opening.</summary>
    [Fact]
    public void Three_four_five_sets_the_left_wall_square()
    {
        var room = RoomOf(
            Width(Front, "4000"),
            Depth(Left, "3000"),
            Depth(Right, "3000"),
            Diagonal(RightFront, "5000"),
            Diagonal(LeftFront, "5000")
        );
        Assert.Equal(new Point3(Length.Zero, Mm(3000), Length.Zero), room.Floor[3]);
        Assert.Equal(new Point3(Mm(4000), Mm(3000), Length.Zero), room.Floor[2]);
    }

    /// <summary>
    /// A parallelogram recess 2440 wide and 600 deep whose sides both lean over by 1.5 degrees in plan: the longest
    /// rectangle is W - b tan a = 2440 - 600 * 0.0261859 = 2424.288 mm (plane geometry). Its diagonals by Pythagoras:
    /// from the right front corner sqrt(2424.2884^2 + 600^2) = 2497.4294, from the left sqrt(2455.7116^2 + 600^2) = 2527.9428.
    /// </summary>
    [Fact]
    public void A_parallelogram_recess_takes_a_box_as_long_as_its_closed_form_says()
    {
        var shift = 600 * Math.Tan(1.5 * Math.PI / 180);
        var room = RoomOf([
            .. Square,
            Diagonal(RightFront, Sqrt(2440 - shift)),
            Diagonal(LeftFront, Sqrt(2440 + shift)),
        ]);
        var width = room.Envelope(Length.Zero, Mm(2400)).Width.Millimetres;
        Assert.Equal(2440 - shift, width, 0.001);
        Assert.Equal(2424.288, width, 0.001);
        string Sqrt(double along) => Math.Sqrt((along * along) + (600.0 * 600)).ToString("0.000000") + " mm";
    }

    /// <summary>
    /// Two diagonals of a parallelogram a x b tell how far it is out of square: (d1^2 - d2^2) / (4ab), from the law of
    /// cosines twice. Here d1^2 - d2^2 = 4 * 2440 * shift, and the angle is shift / depth.
    /// </summary>
    [Fact]
    public void The_diagonals_difference_tells_how_far_the_side_walls_are_out_of_square()
    {
        var room = RoomOf([.. Square, Diagonal(RightFront, "2500 mm"), Diagonal(LeftFront, "2525.3 mm")]);
        var shift = room.Floor[3].X.Millimetres;
        var outOfSquare = ((2525.3 * 2525.3) - (2500.0 * 2500.0)) / (4 * 2440 * 600);
        Assert.Equal(outOfSquare, shift / 600, 1e-4);
        // Half a nanometre each way is rounded towards the inside.
        Assert.Equal(2440, (room.Floor[2].X - room.Floor[3].X).Millimetres, 1e-6);
    }

    /// <summary>By hand: 6 mm in over 1200 is 12 mm in over 2400; both walls so, 2440 - 24 = 2416 wide at the ceiling.</summary>
    [Fact]
    public void Leaning_walls_leave_less_the_higher_one_looks()
    {
        var room = RoomOf([.. Square, Lean(Left, "6 mm", "1200"), Lean(Right, "6 mm", "1200")]);
        Assert.Equal(Mm(2440), room.Envelope(Length.Zero, Length.Zero).Width);
        Assert.Equal(Mm(2428), room.Envelope(Length.Zero, Mm(1200)).Width);
        Assert.Equal(Mm(2416), room.Envelope(Mm(600), Mm(2400)).Width);
        Assert.Equal(Mm(12), room.Sizes["room.left"].Length);
        Assert.Equal(Mm(2440), room.Sizes["room.width"].Length);
    }

    /// <summary>Two walls that lean the same way: every width is 2440, yet an upright box has 10 mm less.</summary>
    [Fact]
    public void Walls_that_lean_alike_leave_less_room_than_any_width_shows()
    {
        var room = RoomOf([.. Square, Lean(Left, "10 mm", "2400"), Lean(Right, "-10 mm", "2400")]);
        Assert.Equal(Mm(2430), room.Envelope(Length.Zero, Mm(2400)).Width);
    }

    [Fact]
    public void The_narrowest_width_between_two_heights_governs()
    {
        var room = RoomOf(
            Width(Front, "2440", "0"),
            Width(Front, "2431", "900"),
            Width(Front, "2446", "2000"),
            Depth(Left, "600"),
            Ceiling(Middle, "2400")
        );
        Assert.Equal(Mm(2431), room.Envelope(Length.Zero, Mm(2400)).Width);
        Assert.Equal(Mm(2446), room.Envelope(Mm(2000), Mm(2400)).Width);
    }

    [Fact]
    public void A_bow_read_in_the_middle_narrows_the_box()
    {
        var room = RoomOf([.. Square, Width(Middle, "2433"), Depth(Middle, "594")]);
        var envelope = room.Envelope(Length.Zero, Mm(2400));
        Assert.Equal((Mm(2433), Mm(594)), (envelope.Width, envelope.Back));
    }

    [Fact]
    public void Of_two_readings_of_one_place_the_smaller_governs_and_both_are_kept()
    {
        var room = RoomOf([.. Square, Width(Front, "2438")]);
        Assert.Equal(Mm(2438), room.Envelope(Length.Zero, Mm(100)).Width);
        Assert.Equal((Mm(2440), Mm(2438)), (room.Sizes["room.r1"].Length, room.Sizes["room.r6"].Length));
    }

    [Fact]
    public void The_width_says_which_reading_it_comes_from_and_when_it_was_taken()
    {
        var why = WhyText.Tell(RoomOf(Square).Sizes["room.width"], LengthFormat.Millimetres(0.5m)).ToList();
        Assert.Contains(why, line => line.Contains("room.r1 = 2440 mm, read on 2026-11-02"));
    }

    [Fact]
    public void The_floor_and_the_ceiling_follow_their_readings()
    {
        var room = RoomOf([.. Square, Floor(RightBack, "7"), Floor(LeftFront, "3"), Ceiling(LeftBack, "2395")]);
        Assert.Equal([Mm(-3), Mm(0), Mm(-7), Mm(0)], room.Floor.Select(corner => corner.Z));
        Assert.Equal([Mm(2395), Mm(2395), Mm(2395), Mm(2395)], room.Ceiling.Select(corner => corner.Z));
        Assert.Equal((Mm(7), Mm(2395)), (room.Sizes["room.floor.fall"].Length, room.Sizes["room.height"].Length));
    }

    /// <summary>Whatever was read, no box is wider or deeper than a reading taken between its heights.</summary>
    [Fact]
    public void No_envelope_is_wider_or_deeper_than_a_reading_between_its_heights()
    {
        var level = Gen.Int[0, 20].Select(i => i * 100);
        var near = Gen.Int[-200, 200].Select(i => i / 10m);
        var width = Gen.Select(
            AnyOf(Front, Middle, Back),
            level,
            near,
            (at, z, off) => Width(at, $"{2440 + off}", $"{z}")
        );
        var depth = Gen.Select(
            AnyOf(Left, Middle, Right),
            level,
            near,
            (at, z, off) => Depth(at, $"{600 + off}", $"{z}")
        );
        var lean = Gen.Select(AnyOf(Left, Right, Back), near, (at, off) => Lean(at, $"{off}", "2000"));
        var diagonal = Gen.Select(AnyOf(LeftFront, RightFront), near, (at, off) => Diagonal(at, $"{2512 + off}"));
        Gen.Select(width.Array[1, 6], depth.Array[1, 5], lean.Array[0, 3], diagonal.Array[0, 2], level, level)
            .Sample(
                (widths, depths, leans, diagonals, a, b) =>
                {
                    var room = RoomOf([.. widths, .. depths, .. leans, .. diagonals, Ceiling(Middle, "2400")]);
                    var (low, high) = (Math.Min(a, b), Math.Max(a, b));
                    var envelope = room.Envelope(Mm(low), Mm(high));
                    Assert.All(widths.Where(Within), w => Assert.True(envelope.Width <= Said(w)));
                    Assert.All(depths.Where(Within), d => Assert.True(envelope.Back <= Said(d)));
                    bool Within(RoomReading r) => int.Parse(r.Height!.Value.Text) is var z && z >= low && z <= high;
                }
            );
        static Length Said(RoomReading reading) =>
            LengthText.Read(reading.Value!.Value.Text, LengthUnit.Millimetres).Value;
    }

    /// <summary>A taller box never has more room.</summary>
    [Fact]
    public void Looking_over_more_height_never_makes_room()
    {
        var room = RoomOf([
            .. Square,
            Width(Front, "2431", "900"),
            Lean(Left, "9", "2000"),
            Lean(Back, "-5", "2000"),
            Diagonal(RightFront, "2505"),
        ]);
        Gen.Int[0, 2400]
            .Array[4]
            .Sample(heights =>
            {
                var z = heights.Order().Select(h => Mm(h)).ToList();
                var (inner, outer) = (room.Envelope(z[1], z[2]), room.Envelope(z[0], z[3]));
                Assert.True(outer.Left >= inner.Left && outer.Right <= inner.Right && outer.Back <= inner.Back);
            });
    }

    private static Gen<PlaceInPlan> AnyOf(params PlaceInPlan[] places) =>
        Gen.Int[0, places.Length - 1].Select(i => places[i]);
}

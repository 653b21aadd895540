using Nookwright.Measure;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Measure;

public class WhyTextTests
{
    private static readonly Traced RoomWidth = Traced.Read(
        In(63),
        "room.width",
        new DateOnly(2026, 10, 3),
        isTaken: true
    );
    private static readonly Traced Filler = Traced
        .Written(In(1, 1, 2), "1 1/2", "sizes/filler.left")
        .Called("filler.left");

    private static Traced Work(string text, params Traced[] named) =>
        Formula.Read(text).Value.Evaluate(name => named.Single(number => number.Name == name), LengthUnit.Inches).Value;

    [Fact]
    public void A_size_is_told_as_its_sum_and_then_what_the_sum_needs() =>
        Assert.Equal(
            [
                "box-1.width = 61 in",
                "  = room.width - 1/2 in - filler.left",
                "  room.width = 63 in, read on 2026-10-03",
                "  filler.left = 1 1/2 in, written in sizes/filler.left",
            ],
            WhyText.Tell(
                Work("room.width - 1/2 in - filler.left", RoomWidth, Filler).Called("box-1.width"),
                LengthFormat.Inches(32)
            )
        );

    [Fact]
    public void Brackets_stand_where_the_sum_needs_them_and_nowhere_else()
    {
        var sum = Work("(room.width - (filler.left - 2 * (filler.left + 1 in))) / (3 * 2)", RoomWidth, Filler)
            .Called("x");
        Assert.Equal(
            "  = (room.width - (filler.left - 2 * (filler.left + 1 in))) / (3 * 2)",
            WhyText.Tell(sum, LengthFormat.Inches(32)).ElementAt(1)
        );
    }

    [Fact]
    public void Rounding_is_told_with_the_number_before()
    {
        var third = Work("room.width / 8", RoomWidth)
            .Called("door.width")
            .RoundedTo(In(0, 1, 32))
            .Called("door.finished");
        Assert.Equal("door.finished = 7 7/8 in", WhyText.Tell(third, LengthFormat.Inches(32)).First());
        var rounded = Work("room.width / 13", RoomWidth).RoundedTo(In(0, 1, 32)).Called("slat");
        Assert.Equal(
            [
                "slat = 4 27/32 in",
                "  rounded to the nearest 1/32 in from about 4.8462 in",
                "  = room.width / 13",
                "  room.width = 63 in, read on 2026-10-03",
            ],
            WhyText.Tell(rounded, LengthFormat.Inches(32))
        );
    }

    [Fact]
    public void A_reading_not_taken_says_so_and_how_it_was_planned()
    {
        var planned = Traced.Read(In(30), "box-1.built", null, isTaken: false, Work("filler.left * 20", Filler));
        Assert.Equal(
            [
                "box-1.built = 30 in, not taken yet; planned",
                "  planned as filler.left * 20",
                "  filler.left = 1 1/2 in, written in sizes/filler.left",
            ],
            WhyText.Tell(planned, LengthFormat.Inches(32))
        );
    }

    [Fact]
    public void A_number_that_waits_says_for_which_reading()
    {
        var (left, right) = (
            Traced.Read(In(30), "left.built", null, false),
            Traced.Read(In(31), "right.built", null, false)
        );
        var gap = Work("room.width - left.built - right.built", RoomWidth, left, right).Called("gap");
        Assert.Equal(
            "gap = 2 in, held until left.built, right.built are read",
            WhyText.Tell(gap, LengthFormat.Inches(32)).First()
        );
    }

    [Fact]
    public void A_mark_of_the_other_system_is_named_exactly()
    {
        var rounded = Work("room.width / 13", RoomWidth).RoundedTo(Mm(0.5m)).Called("slat");
        Assert.Equal(
            "  rounded to the nearest 0.5 mm from about 4.8462 in",
            WhyText.Tell(rounded, LengthFormat.Inches(32)).ElementAt(1)
        );
        Assert.Equal(
            "  rounded to the nearest 0.5 mm from about 123.092 mm",
            WhyText.Tell(rounded, LengthFormat.Millimetres(0.5m)).ElementAt(1)
        );
    }

    [Fact]
    public void A_rule_says_its_sentence()
    {
        var gap = Traced.ByRule(In(0, 1, 16), "a door gap is 1/16 in (common practice, no source)");
        var door = (RoomWidth - gap).Called("door");
        Assert.Equal(
            [
                "door = 62 15/16 in",
                "  = room.width - 1/16 in",
                "  room.width = 63 in, read on 2026-10-03",
                "  1/16 in, by rule: a door gap is 1/16 in (common practice, no source)",
            ],
            WhyText.Tell(door, LengthFormat.Inches(32))
        );
    }

    [Fact]
    public void What_was_told_above_is_not_told_again()
    {
        var box = Work("room.width / 2", RoomWidth).Called("box");
        var pair = (box + (box - Filler).Called("other")).Called("pair");
        Assert.Equal(
            [
                "pair = 61 1/2 in",
                "  = box + other",
                "  box = 31 1/2 in",
                "    = room.width / 2",
                "    room.width = 63 in, read on 2026-10-03",
                "  other = 30 in",
                "    = box - filler.left",
                "    box = 31 1/2 in, as told above",
                "    filler.left = 1 1/2 in, written in sizes/filler.left",
            ],
            WhyText.Tell(pair, LengthFormat.Inches(32))
        );
    }

    [Fact]
    public void Functions_angles_and_areas_read_as_written()
    {
        var sum = Work("max(room.width * sin(30 deg), sqrt(filler.left * filler.left))", RoomWidth, Filler).Called("x");
        Assert.Equal(
            "  = max(room.width * sin(30 deg), sqrt(filler.left * filler.left))",
            WhyText.Tell(sum, LengthFormat.Inches(32)).ElementAt(1)
        );
        Assert.Equal("31 1/2 in", WhyText.Amount(sum.Amount, LengthFormat.Inches(32)));
        Assert.Equal(
            "about 1/3 in".Replace("1/3", "11/32", StringComparison.Ordinal),
            WhyText.Amount(Work("1/3 in").Amount, LengthFormat.Inches(32))
        );
        Assert.Equal("12.5 deg", WhyText.Amount(Work("12.5 deg").Amount, LengthFormat.Inches(32)));
        Assert.Equal("6 mm^2", WhyText.Amount(Work("2 mm * 3 mm").Amount, LengthFormat.Millimetres(1)));
    }

    [Fact]
    public void A_sum_too_long_to_read_aloud_is_told_in_stretches()
    {
        var sum = Enumerable.Range(0, 20_000).Aggregate(RoomWidth, (soFar, _) => soFar - Filler);
        var lines = WhyText.Tell(sum, LengthFormat.Inches(32)).ToList();
        Assert.All(lines, line => Assert.True(line.Trim().Length < 1000));
        Assert.Single(lines, line => line.Contains("room.width = 63 in, read on", StringComparison.Ordinal));
    }

    [Fact]
    public void Unnamed_numbers_used_twice_over_do_not_double_the_story()
    {
        var number = Enumerable.Range(0, 200).Aggregate(RoomWidth, (half, _) => half + half);
        Assert.True(WhyText.Tell(number, LengthFormat.Inches(32)).Count() < 1000);
    }

    [Fact]
    public void A_story_of_ten_thousand_steps_is_told_to_its_end()
    {
        var number = RoomWidth;
        for (var i = 0; i < 10_000; i++)
            number = (number + Filler).Called($"s{i}");
        Assert.Equal(
            20_002,
            WhyText
                .Tell(number, LengthFormat.Inches(32))
                .Count(line => !line.Contains("above", StringComparison.Ordinal))
        );
    }
}

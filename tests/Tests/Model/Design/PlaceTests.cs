using CsCheck;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;
using static Nookwright.Tests.Design.DesignGiven;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

public class PlaceTests
{
    private static Carcass[] Boxes(int count) =>
        [.. Enumerable.Range(1, count).Select(i => Box($"box-{i}", "600.3", "700", "500"))];

    private static Row Run(params string[] pieces) => new() { Id = "run", Pieces = pieces };

    [Fact]
    public void A_row_advances_by_what_is_built_not_by_what_was_asked()
    {
        var boxes = Boxes(3);
        var built = Built(Metric(boxes) with { Rows = [Run("box-1", "box-2", "box-3")] });
        // 600.3 - 35.2 = 565.1 goes to the 565 mark, so each box comes out 600.2.
        Assert.Equal(Mm(600.2m) * 3, Size(built, "box-3.right"));
        var rest = built.Remainders.Where(r => r.Panel.EndsWith(".bottom", StringComparison.Ordinal)).ToList();
        Assert.Equal([-Mm(0.1m), -Mm(0.1m), -Mm(0.1m)], rest.Select(r => r.Amount));
        Assert.Equal("box-1 comes out 0.1 mm narrower; the next piece in its row moves with it", rest[0].Goes);
    }

    [Fact]
    public void What_takes_the_rest_takes_it_to_the_nanometre_before_its_own_mark() =>
        Gen.Select(Gen.Int[2, 8], Gen.Int[4000, 9000], Gen.Int[150, 200])
            .Sample(
                (count, width, thickness) =>
                {
                    Carcass[] boxes =
                    [
                        .. Enumerable.Range(1, count).Select(i => Box($"box-{i}", Tenths(width), "700", "500")),
                    ];
                    var filler = new Filler
                    {
                        Id = "rest",
                        Material = "ply",
                        Width = $"10 m - box-{count}.right",
                        Height = "700",
                    };
                    var project = Job(LengthUnit.Millimetres, Tenths(thickness), "5", [.. boxes, filler]) with
                    {
                        Rows = [Run([.. boxes.Select(b => b.Id)])],
                    };
                    var built = Built(project);
                    var exact =
                        PanelOf(built, "rest.filler").BeforeRounding.Width ?? PanelOf(built, "rest.filler").Width;
                    Assert.Equal(Mm(10_000), Size(built, $"box-{count}.right") + exact.Length);
                }
            );

    [Fact]
    public void Pieces_in_a_row_line_up_with_the_one_before_and_keep_a_place_of_their_own()
    {
        var boxes = Boxes(3);
        boxes[0] = boxes[0] with
        {
            At = new()
            {
                X = "100",
                Y = "50",
                Z = "90",
            },
        };
        boxes[2] = boxes[2] with { At = new() { X = "2000" } };
        var built = Built(Metric(boxes) with { Rows = [Run("box-1", "box-2", "box-3") with { Gap = "2" }] });
        Assert.Equal(Mm(702.2m), Size(built, "box-2.left"));
        Assert.Equal((Mm(50), Mm(90)), (Size(built, "box-3.front"), Size(built, "box-3.bottom")));
        Assert.Equal(Mm(2000), Size(built, "box-3.left"));
    }

    [Fact]
    public void A_stack_goes_up_by_built_heights()
    {
        var boxes = Boxes(2);
        var built = Built(Metric(boxes) with { Rows = [Run("box-1", "box-2") with { Direction = RowDirection.Up }] });
        Assert.Equal(Size(built, "box-1.height"), Size(built, "box-2.bottom"));
    }

    [Theory]
    [InlineData(Facing.Left)]
    [InlineData(Facing.Right)]
    public void A_turned_box_lies_with_its_lowest_corner_at_its_place_and_its_front_to_the_side(Facing facing)
    {
        var box = Box("box", "600", "700", "400") with
        {
            Facing = facing,
            At = new()
            {
                X = "1000",
                Y = "200",
                Z = "100",
            },
            Shelves =
            [
                new()
                {
                    Id = "shelf",
                    At = "300",
                    SetBack = "30",
                },
            ],
        };
        var built = Built(Metric(box));
        var piece = built.Pieces[0];
        Assert.Equal(new(Mm(1000), Mm(200), Mm(100)), piece.Low);
        Assert.Equal(new(Mm(1400), Mm(800.2m), Mm(800)), piece.High);
        var shelf = Solid(PanelOf(built, "box.shelf"));
        Assert.Equal(facing == Facing.Left ? Mm(1030) : Mm(1000), shelf.Low.X);
        Assert.Equal(facing == Facing.Left ? Mm(1400) : Mm(1370), shelf.High.X);
        // Seen from in front of the turned box, its left side is on the left hand.
        Assert.Equal(facing == Facing.Left, Solid(PanelOf(built, "box.left-side")).Low.Y > Mm(500));
    }

    [Fact]
    public void Pieces_may_refer_to_each_other_in_any_order()
    {
        var one = Box("one", "two.depth", "700", "400") with { At = new() { X = "two.right" } };
        var two = Box("two", "600", "one.height", "one.width");
        Only(Built(Metric(one, two)), "formula.cycle"); // one's width is two's depth is one's width
        var built = Built(Metric(one with { Width = "500" }, two));
        Assert.DoesNotContain(built.Findings, f => f.Severity == Severity.MustMend);
        Assert.Equal(Size(built, "two.right"), Size(built, "one.left"));
    }

    [Fact]
    public void A_row_of_a_thousand_boxes_is_no_deeper_than_a_row_of_two()
    {
        var boxes = Boxes(1000);
        var built = Built(Metric(boxes) with { Rows = [Run([.. boxes.Select(b => b.Id)])] });
        Assert.Equal(Mm(600.2m) * 1000, Size(built, "box-1000.right"));
    }

    [Fact]
    public void A_row_that_names_no_piece_says_so()
    {
        var built = Built(Metric(Boxes(1)) with { Rows = [Run("gone", "box-1")] });
        Assert.Equal("rows/run/pieces", Only(built, "rows.no-such-piece").Field);
    }
}

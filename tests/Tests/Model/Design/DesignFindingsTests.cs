using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Survey;
using Nookwright.Trouble;
using static Nookwright.Tests.Design.DesignGiven;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

public class DesignFindingsTests
{
    private static readonly Carcass Good = Box("good", "600", "700", "500") with { At = new() { X = "5000" } };

    [Fact]
    public void A_circle_of_sizes_is_told_once_and_everything_else_is_designed()
    {
        var built = Built(Metric(Box("a", "b.width", "700", "500"), Box("b", "a.width", "700", "500"), Good));
        var finding = Only(built, "formula.cycle");
        Assert.StartsWith("pieces/", finding.Field);
        Assert.Contains("column 1", finding.Message);
        Assert.Contains("a.width", finding.Message);
        Assert.Equal("good", Assert.Single(built.Pieces).Piece.Id);
    }

    [Fact]
    public void An_unknown_name_is_told_with_field_and_column_and_what_may_be_meant()
    {
        var built = Built(Metric(Box("a", "2 * goood.width", "700", "500"), Good));
        var finding = Only(built, "formula.unknown-name");
        Assert.Equal("pieces/a/width", finding.Field);
        Assert.Contains("column 5", finding.Message);
        Assert.Contains("good.width", finding.Message);
        Assert.Single(built.Pieces);
    }

    [Fact]
    public void Numbers_of_different_kinds_are_told_by_their_column() =>
        Assert.Contains("column", Only(Built(Metric(Box("a", "600 mm + 3", "700", "500"))), "formula.units").Message);

    [Fact]
    public void A_formula_that_cannot_be_read_is_told() =>
        Assert.Equal(
            "pieces/a/width",
            Only(Built(Metric(Box("a", "600 +", "700", "500"))), "formula.unreadable").Field
        );

    [Theory]
    [InlineData("0", "0 mm")]
    [InlineData("-20 mm", "-20 mm")]
    public void A_size_that_is_not_more_than_nought_is_named_with_its_value(string width, string shown)
    {
        var built = Built(Metric(Box("a", width, "700", "500"), Good));
        var finding = Only(built, "size.not-positive");
        Assert.Equal((Severity.MustMend, "pieces/a/width"), (finding.Severity, finding.Field));
        Assert.Contains(shown, finding.Message);
        Assert.Single(built.Pieces);
    }

    [Fact]
    public void A_box_narrower_than_its_own_sides_is_told_by_the_part_that_has_no_size()
    {
        var finding = Only(Built(Metric(Box("a", "30 mm", "700", "500"))), "size.not-positive");
        Assert.Contains("a.bottom", finding.Message);
    }

    [Fact]
    public void What_depends_on_a_broken_piece_is_left_out_and_says_what_to_mend()
    {
        var doors = new Doors
        {
            Id = "door",
            Box = "a",
            Material = "ply",
        };
        var built = Built(Metric(Box("a", "nothing", "700", "500"), doors, Good));
        var left = Only(built, "pieces.left-out");
        Assert.Equal(("pieces/a/width", "door"), (left.Field, Assert.Single(left.About)));
        Assert.Single(built.Pieces);
    }

    [Fact]
    public void Missing_material_is_told() =>
        Assert.Equal(
            "pieces/a/material",
            Only(Built(Metric(Box("a", "600", "700", "500") with { Material = null })), "material.missing").Field
        );

    [Fact]
    public void A_back_of_a_sheet_the_shop_has_not_is_told() =>
        Assert.Equal(
            "pieces/a/back/material",
            Only(
                Built(Metric(Box("a", "600", "700", "500") with { Back = new() { Material = "gold" } })),
                "material.missing"
            ).Field
        );

    [Fact]
    public void Missing_edging_is_told_once_and_the_panels_stay()
    {
        var built = Built(Metric(Good with { FrontEdge = "gold" }));
        Assert.Equal("pieces/good/frontEdge", Only(built, "edging.missing").Field);
        Assert.NotEmpty(built.Panels);
    }

    [Fact]
    public void A_sheet_nobody_measured_is_taken_as_sold_with_a_warning()
    {
        var project = Metric(Good);
        var unmeasured = project with
        {
            Shop = project.Shop with { Sheets = [new() { Id = "ply", Nominal = "18 mm" }] },
        };
        var finding = Only(Built(unmeasured), "sheet.not-measured");
        Assert.Equal("shop/sheets/ply/measured", finding.Field);
        Assert.Equal(Mm(564), Size(Built(unmeasured), "good.bottom.length"));
    }

    [Fact]
    public void A_broken_named_size_is_told_even_when_no_piece_uses_it()
    {
        var built = Built(Metric(Good) with { Sizes = [new() { Name = "rail", Size = "3 in + oops" }] });
        Assert.Equal("sizes/rail/size", Only(built, "formula.unknown-name").Field);
        Assert.DoesNotContain("pieces.left-out", Rules(built));
    }

    [Fact]
    public void Two_pieces_of_one_id_are_told_and_the_first_is_kept() =>
        Assert.Single(
            Built(Metric(Good, Good)).Pieces,
            p => Only(Built(Metric(Good, Good)), "pieces.id-twice").About.Contains(p.Piece.Id)
        );

    [Fact]
    public void Pieces_in_the_same_place_are_told_by_how_much()
    {
        var other = Box("other", "600", "700", "500") with { At = new() { X = "good.right - 12.5 mm" } };
        var finding = Only(Built(Metric(Good, other)), "pieces.overlap");
        Assert.Equal(Severity.Warning, finding.Severity);
        Assert.Equal(["good", "other"], finding.About);
        Assert.Contains("12.5 mm", finding.Message);
    }

    [Fact]
    public void Pieces_that_only_touch_do_not_overlap()
    {
        var other = Box("other", "600", "700", "500") with { At = new() { X = "good.right" } };
        Assert.DoesNotContain("pieces.overlap", Rules(Built(Metric(Good, other))));
    }

    [Fact]
    public void An_overlap_below_the_shops_mark_is_a_note() =>
        Assert.Equal(
            Severity.Note,
            Only(
                Built(
                    Metric(Good, Box("other", "600", "700", "500") with { At = new() { X = "good.right - 0.3 mm" } })
                ),
                "pieces.overlap"
            ).Severity
        );

    [Fact]
    public void A_piece_may_stand_in_the_hollow_of_an_L()
    {
        var top = new Slab
        {
            Id = "top",
            Material = "ply",
            Width = "2000",
            Depth = "500",
            Make = LMake.OnePanel,
            Return = ReturnSide.Left,
            ReturnLength = "600",
            ReturnDepth = "400",
        };
        var post = new FreePanel
        {
            Id = "post",
            Material = "ply",
            Length = "700",
            Width = "100",
            Lie = PanelLie.StandingAlongX,
            At = new() { X = "900" },
        };
        Assert.DoesNotContain("pieces.overlap", Rules(Built(Metric(top, post))));
        Assert.Contains("pieces.overlap", Rules(Built(Metric(top, post with { At = new() { X = "200" } }))));
    }

    [Fact]
    public void A_piece_that_goes_into_a_wall_is_told_by_how_much()
    {
        var room = Recess(2000, 600, 2400);
        var box = Box("box", "600", "700", "500") with
        {
            At = new() { X = "1407", Y = "100" },
        };
        var finding = Assert.Single(BuiltIn.Of(Metric(box), room).Findings, f => f.Rule == "room.piece-outside");
        Assert.Contains("7.2 mm into the right wall", finding.Message);
    }

    [Fact]
    public void Names_of_the_room_are_seen_by_formulas()
    {
        var sizes = new Dictionary<string, Traced>
        {
            ["room.width"] = Traced.Read(Mm(1800), "room.width", null, isTaken: true),
        };
        var built = BuiltIn.Of(Metric(Box("a", "room.width / 3", "700", "500")), NoRoom with { Sizes = sizes });
        Assert.Equal(Mm(600.2m), built.Sizes["a.width"].Length);
    }

    [Fact]
    public void The_shops_mark_is_what_the_maker_says()
    {
        var built = Built(Metric(Box("a", "600", "700", "500")) with { Mark = "1 mm" });
        Assert.Equal(Mm(565), Size(built, "a.bottom.length"));
        Assert.Equal(Mm(0.2m), Assert.Single(built.Remainders, r => r.Panel == "a.bottom").Amount);
        Assert.Equal(Mm(564.8m), PanelOf(built, "a.bottom").BeforeRounding.Length!.Length);
    }

    /// <summary>A recess with plumb, square walls and a level floor.</summary>
    private static Room Recess(decimal width, decimal depth, decimal height)
    {
        Point3 At(decimal x, decimal y, decimal z) => new(Mm(x), Mm(y), Mm(z));
        WallFace Face(Wall wall, (decimal X, decimal Y) left, (decimal X, decimal Y) right) =>
            new(
                wall,
                [
                    At(left.X, left.Y, 0),
                    At(right.X, right.Y, 0),
                    At(right.X, right.Y, height),
                    At(left.X, left.Y, height),
                ]
            );
        return NoRoom with
        {
            Walls =
            [
                Face(Wall.Back, (0, depth), (width, depth)),
                Face(Wall.Left, (0, 0), (0, depth)),
                Face(Wall.Right, (width, depth), (width, 0)),
            ],
            Floor = [At(0, 0, 0), At(width, 0, 0), At(width, depth, 0), At(0, depth, 0)],
            Ceiling = [At(0, 0, height), At(width, 0, height), At(width, depth, height), At(0, depth, height)],
        };
    }
}

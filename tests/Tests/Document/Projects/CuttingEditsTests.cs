using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Tests.Projects;

public class CuttingEditsTests
{
    private static readonly Project Job = NewProject.Blank(LengthUnit.Inches) with
    {
        Shop = new()
        {
            Sheets =
            [
                new()
                {
                    Id = "ply",
                    Nominal = "3/4 in",
                    Stock =
                    [
                        new() { Length = "96 in", Width = "48 in" },
                        new()
                        {
                            Id = "flame",
                            Length = "96 in",
                            Width = "48 in",
                            Quantity = 1,
                        },
                    ],
                },
            ],
        },
        Pieces =
        [
            new Carcass
            {
                Id = "box-1",
                Width = "30 in",
                Height = "30 in",
                Depth = "14 in",
            },
            new Doors
            {
                Id = "doors-1",
                Box = "box-1",
                Count = 2,
            },
        ],
        Runs = [new() { Id = "figure", Panels = ["doors-1.left", "doors-1.right"] }],
    };

    [Fact]
    public void A_part_is_pinned_to_one_stock_and_freed_again()
    {
        var pinned = Job.PinPart("doors-1.left", "flame").Then(job => job.PinPart("doors-1.right", "flame")).Value;
        var pin = Assert.Single(pinned.Cutting.Pins);
        Assert.Equal(("pin-1", "flame"), (pin.Id, pin.From));
        Assert.Equal(["doors-1.left", "doors-1.right"], pin.Panels);
        var freed = pinned.PinPart("doors-1.left", null).Then(job => job.PinPart("doors-1.right", null)).Value;
        Assert.Equal(JobFile.Write(Job), JobFile.Write(freed));
    }

    [Fact]
    public void A_pin_names_a_stock_that_has_an_id() =>
        Assert.Equal(
            "There is no stock size with the id \"flme\": add it to shop/sheets/stock, or name one that is there. Did you mean \"flame\"?",
            Job.PinPart("doors-1.left", "flme").Refusal.Message
        );

    [Fact]
    public void A_stock_that_parts_are_pinned_to_keeps_its_id()
    {
        var pinned = Job.PinPart("doors-1.left", "flame").Value;
        Assert.Equal("cutting/pins/pin-1/from", pinned.SetField("shop/sheets/ply/stock/flame/id", "").Refusal.Field);
    }

    [Fact]
    public void A_part_has_one_pin_at_most()
    {
        Pin[] pins =
        [
            new()
            {
                Id = "a",
                From = "flame",
                Panels = ["doors-1.left"],
            },
            new()
            {
                Id = "b",
                From = "flame",
                Panels = ["doors-1.left"],
            },
        ];
        Assert.Equal(
            "cutting/pins/b/panels/0: \"doors-1.left\" is pinned by \"a\" already: take it out of one.",
            Job.Change(job => job with { Cutting = new() { Pins = pins } }).Refusal.ToString()
        );
    }

    [Fact]
    public void Parts_are_kept_apart_and_let_together_again()
    {
        var apart = Job.KeepApart(["doors-1.left", "doors-1.right"]).Value;
        Assert.Equal(JobFile.Write(Job), JobFile.Write(apart.LetTogether("apart-1").Value));
        Assert.False(Job.KeepApart(["doors-1.left"]).Ok);
        Assert.False(Job.LetTogether("apart-1").Ok);
    }

    [Fact]
    public void A_run_may_split_only_between_its_own_parts()
    {
        var split = Job.SplitRunAfter("figure", "doors-1.left", may: true).Value;
        Assert.Equal(["doors-1.left"], split.Runs[0].MaySplitAfter);
        Assert.Equal(
            JobFile.Write(Job),
            JobFile.Write(split.SplitRunAfter("figure", "doors-1.left", may: false).Value)
        );
        Assert.Equal(
            "runs/figure/maySplitAfter/0: The run can split only after one of its own panels but the last, and "
                + "\"doors-1.right\" is none: name one of doors-1.left.",
            Job.SplitRunAfter("figure", "doors-1.right", may: true).Refusal.ToString()
        );
    }

    [Fact]
    public void A_bad_place_is_marked_on_one_size_of_a_material()
    {
        var bad = new BadPlace
        {
            X = "10 in",
            Y = "4 in",
            Length = "3 in",
            Width = "2 in",
            Why = "knot",
        };
        var marked = Job.MarkBad("ply", 1, bad).Value;
        Assert.Equal([0, 1], marked.Shop.Sheets[0].Stock.Select(stock => stock.Bad.Count));
        var sheet = ShopNumbers.SheetOf(marked.Shop.Sheets[0], LengthUnit.Inches).Value;
        Assert.Equal(
            new BadArea(
                Length.FromInches(10),
                Length.FromInches(4),
                Length.FromInches(3),
                Length.FromInches(2),
                "knot"
            ),
            Assert.Single(sheet.Stock[1].Bad)
        );
        Assert.False(Job.MarkBad("ply", 2, bad).Ok);
        Assert.False(Job.MarkBad("oak", 0, bad).Ok);
    }

    [Fact]
    public void A_piece_taken_away_leaves_pins_and_wishes_and_one_renamed_keeps_them()
    {
        var wished = Job.PinPart("doors-1.left", "flame")
            .Then(job => job.KeepApart(["doors-1.left", "doors-1.right"]))
            .Then(job => job.SplitRunAfter("figure", "doors-1.left", may: true))
            .Value;
        var renamed = wished.RenamePiece("doors-1", "fronts").Value;
        Assert.Equal(["fronts.left"], renamed.Cutting.Pins[0].Panels);
        Assert.Equal(["fronts.left", "fronts.right"], renamed.Cutting.Apart[0].Panels);
        Assert.Equal(["fronts.left"], renamed.Runs[0].MaySplitAfter);
        var bare = wished.RemovePiece("doors-1").Value;
        Assert.Empty(bare.Cutting.Pins);
        Assert.Empty(bare.Cutting.Apart);
        Assert.Empty(bare.Runs[0].MaySplitAfter);
    }

    [Fact]
    public void A_bad_place_is_told_with_its_sheet_and_its_number()
    {
        var bad = new BadPlace
        {
            X = "0",
            Y = "0",
            Length = "3",
            Width = "2",
        };
        var marked = Job.MarkBad("ply", 0, bad).Value;
        Assert.Contains(
            marked.FieldsOf(marked.Shop.Sheets[0]),
            field =>
                field
                    is {
                        Path: "shop/sheets/ply/stock/0/bad/0/x",
                        Label: "stock size 1, bad place 1: begins along the length at"
                    }
        );
    }
}

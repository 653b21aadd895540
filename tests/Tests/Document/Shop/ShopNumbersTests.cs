using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Tests.Shop;

public class ShopNumbersTests
{
    [Fact]
    public void A_shop_that_says_nothing_has_the_usual_saws_in_inches() =>
        Assert.Equal(
            new SawLimits(In(0.125m), In(0.09375m), In(0.25m), In(30), In(96), In(108), In(96), In(48), In(1))
            {
                LeastRip = In(6),
                LeastEdge = In(12),
            },
            ShopNumbers.LimitsOf(new Workshop(), LengthUnit.Inches).Value
        );

    [Fact]
    public void A_shop_that_says_nothing_has_the_usual_saws_in_millimetres() =>
        Assert.Equal(
            new SawLimits(Mm(3.2m), Mm(2.2m), Mm(6), Mm(760), Mm(2440), Mm(2750), Mm(2440), Mm(1220), Mm(25)),
            ShopNumbers.LimitsOf(new Workshop(), LengthUnit.Millimetres).Value
        );

    [Fact]
    public void What_is_written_counts_and_a_bare_number_is_in_the_documents_unit()
    {
        var shop = new Workshop
        {
            Dressing = "0",
            TableSaw = new() { RipReach = "33", Kerf = "2.4 mm" },
        };
        var limits = ShopNumbers.LimitsOf(shop, LengthUnit.Inches).Value;
        Assert.Equal((Length.Zero, In(33), Mm(2.4m)), (limits.Dressing, limits.RipReach, limits.TableKerf));
    }

    [Fact]
    public void What_is_written_of_one_stock_is_read_with_it()
    {
        var good = new SheetGood
        {
            Id = "ply",
            Nominal = "3/4",
            Stock =
            [
                new()
                {
                    Id = "flame",
                    Length = "96 1/16",
                    Width = "48",
                    OutOfSquare = "1/8",
                    TrustsEdges = true,
                    Bad =
                    [
                        new()
                        {
                            X = "0",
                            Y = "-1",
                            Length = "2",
                            Width = "2",
                        },
                    ],
                },
            ],
        };
        var stock = Assert.Single(ShopNumbers.SheetOf(good, LengthUnit.Inches, out var refusals).Stock);
        Assert.Equal(("flame", In(0.125m), (bool?)true), (stock.Id, stock.OutOfSquare, stock.TrustsEdges));
        Assert.Equal(
            "shop/sheets/ply/stock/flame/bad/0/y: \"-1\" is below zero: write 0 for none.",
            Assert.Single(refusals).ToString()
        );
    }

    [Fact]
    public void Every_size_that_cannot_be_used_is_named()
    {
        var shop = new Workshop
        {
            ChunkLength = "long",
            TrackSaw = new() { TrackLength = "0" },
            Allowance = "-1 in",
        };
        ShopNumbers.LimitsOf(shop, LengthUnit.Inches, out var refusals);
        Assert.Equal(
            ["shop/trackSaw/trackLength", "shop/chunkLength", "shop/allowance"],
            refusals.Select(r => r.Field)
        );
        Assert.Equal(
            "shop/trackSaw/trackLength: \"0\" is not above zero, and nothing in a shop is as small: write its real size.",
            ShopNumbers.LimitsOf(shop, LengthUnit.Inches).Refusal.ToString()
        );
        Assert.Equal("\"-1 in\" is below zero: write 0 for none.", refusals[2].Message);
    }

    [Fact]
    public void A_sheet_is_as_thick_as_it_was_measured_and_nominal_only_until_then()
    {
        var good = new SheetGood { Id = "ply", Nominal = "3/4 in" };
        var nominal = ShopNumbers.SheetOf(good, LengthUnit.Inches).Value;
        var measured = ShopNumbers.SheetOf(good with { Measured = "23/32" }, LengthUnit.Inches).Value;
        Assert.Equal((In(0.75m), false), (nominal.Thickness, nominal.IsMeasured));
        Assert.Equal((In(0.71875m), true), (measured.Thickness, measured.IsMeasured));
    }

    [Fact]
    public void A_stock_size_that_cannot_be_read_is_named_by_its_place()
    {
        var good = new SheetGood
        {
            Id = "ply",
            Nominal = "18 mm",
            Stock = [new() { Length = "2440", Width = "1220" }, new() { Length = "2440", Width = "wide" }],
        };
        Assert.Equal("shop/sheets/ply/stock/1/width", ShopNumbers.SheetOf(good, LengthUnit.Millimetres).Refusal.Field);
    }

    [Fact]
    public void The_smallest_mark_is_a_thirty_second_or_half_a_millimetre()
    {
        Assert.Equal(In(0.03125m), ShopNumbers.MarkOf(null, LengthUnit.Inches).Value);
        Assert.Equal(Mm(0.5m), ShopNumbers.MarkOf(null, LengthUnit.Millimetres).Value);
        Assert.Equal("mark", ShopNumbers.MarkOf("0", LengthUnit.Inches).Refusal.Field);
    }

    private static Length In(decimal inches) => Length.FromInches(inches);

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}

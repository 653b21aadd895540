using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Tests.Lists;

public class BareLists
{
    private const string Parts = """"
        label,quantity,length,width,material,grain,match,run
        side,2,30 1/2 in,"23 3/4""",birch,length,sides,
        shelf,3,603.5 mm,1' 11",birch,any,,
        door-left,1,28,15 1/2,birch,length,,doors
        door-right,1,28,17,birch,length,,doors
        """";

    private const string Stock = """
        material,length,width,quantity,price
        birch,96,48,,64.50
        birch,8',24 in,1,30
        """;

    [Fact]
    public void Parts_are_read_as_makers_write_them()
    {
        var parts = PartsCsv.Read(Parts, "parts.csv", LengthUnit.Inches).Value;
        Assert.Equal(Length.FromInches(30, 1, 2), parts[0].Length);
        Assert.Equal(Length.FromInches(23, 3, 4), parts[0].Width);
        Assert.Equal(Length.FromMillimetres(603.5m), parts[1].Length);
        Assert.Equal(Length.FromInches(23), parts[1].Width);
        Assert.Equal((PanelFigure.Length, "doors", 5), (parts[3].Figure, parts[3].Run, parts[3].Line));
    }

    [Fact]
    public void An_inch_mark_in_a_field_is_no_quote()
    {
        var parts = PartsCsv
            .Read("label,length,width\nside,23 3/4\",12\"\n", "parts.csv", LengthUnit.Millimetres)
            .Value;
        Assert.Equal((Length.FromInches(23, 3, 4), Length.FromInches(12)), (parts[0].Length, parts[0].Width));
    }

    [Fact]
    public void Semicolons_and_tabs_do_as_well_as_commas()
    {
        var semicolons = PartsCsv.Read("label;length;width\r\na;10;20\r\n", "p.csv", LengthUnit.Millimetres).Value;
        var tabs = PartsCsv.Read("label\tlength\twidth\na\t10\t20\n", "p.csv", LengthUnit.Millimetres).Value;
        Assert.Equal(Jobs.Mm(20), semicolons.Single().Width);
        Assert.Equal(Jobs.Mm(20), tabs.Single().Width);
    }

    [Fact]
    public void Several_of_a_label_share_it_and_get_ids_of_their_own()
    {
        var request = Request(Parts, Stock);
        Assert.Equal(
            ["side-1", "side-2", "shelf-1", "shelf-2", "shelf-3", "door-left", "door-right"],
            request.Parts.Select(p => p.Id)
        );
        Assert.Equal("side", request.Parts[1].Letter);
        Assert.Equal(["door-left", "door-right"], request.Runs.Single().Parts);
        Assert.Equal(
            [("sides, length", MatchedSide.Length), ("sides, width", MatchedSide.Width)],
            request.Matches.Select(m => (m.Id, m.Sides[0].Side))
        );
        Assert.Equal((64.50m, null, 1), (request.Stock[0].Price, request.Stock[0].Quantity, request.Stock[1].Quantity));
    }

    [Fact]
    public void A_list_is_planned_and_the_plan_can_be_cut()
    {
        var request = Request(Parts, Stock);
        var plan = Jobs.PlanOf(request);
        Assert.True(VirtualSaw.Run(plan, request).Accepted);
        Assert.Equal(plan.DimensionsNow, plan.Visits.Count);
    }

    [Theory]
    [InlineData("", 1, null, "empty")]
    [InlineData("label,length\na,10", 1, "width", "no column \"width\"")]
    [InlineData("label,length,width,colour\na,10,20,red", 1, "colour", "means nothing here")]
    [InlineData("label,length,width\na,10,ten", 2, "width", "does not start with a number")]
    [InlineData("label,length,width\na,10,20\n\nb,10,0", 4, "width", "not above zero")]
    [InlineData("label,length,width\na,-10,20", 2, "length", "not above zero")]
    [InlineData("label,length,width,grain\na,10,20,up", 2, "grain", "none of any, length, width")]
    [InlineData("label,length,width,quantity\na,10,20,2.5", 2, "quantity", "no whole number")]
    [InlineData("label,length,width\n,10,20", 2, "label", "nothing under")]
    [InlineData("label,length,width,split\na,10,20,perhaps", 2, "split", "none of yes, no")]
    [InlineData("label,length,width,height\na,10,20,tall", 2, "height", "none of length, width")]
    [InlineData("label,length,width\na,1,5,20", 2, null, "4 fields and the header 3")]
    [InlineData("label,length,width\n", 1, null, "nothing under it")]
    public void What_cannot_be_read_is_said_with_line_and_column(string text, int line, string? column, string says)
    {
        var refusal = PartsCsv.Read(text, "parts.csv", LengthUnit.Inches).Refusal;
        Assert.Equal(("parts.csv", line, column), (refusal.File, refusal.Line, refusal.Field));
        Assert.Contains(says, refusal.Message);
    }

    [Fact]
    public void Two_parts_of_one_id_are_told_apart_by_their_lines()
    {
        var refusal = Answer("label,length,width\na,10,20\na,30,40", "length,width\n96,48").Refusal;
        Assert.Equal(3, refusal.Line);
        Assert.Contains("first on line 2", refusal.Message);
    }

    [Fact]
    public void A_part_without_material_takes_the_only_one_there_is()
    {
        Assert.Equal(
            "birch",
            Answer("label,length,width\na,10,20", "material,length,width\nbirch,96,48").Value.Parts[0].Material
        );
        Assert.Contains(
            "several",
            Answer("label,length,width\na,10,20", "material,length,width\nbirch,96,48\nmdf,96,48").Refusal.Message
        );
    }

    [Fact]
    public void Wishes_of_a_list_reach_the_request()
    {
        var parts = """
            label,quantity,length,width,grain,run,height,split,piece,apart,from,awaits
            door,2,28,14,length,doors,length,yes,box,,show,
            front,2,12,6,,,,,,fronts,,
            top,1,70,15,length,,,,,,,run.width
            """;
        var request = Answer(parts, "length,width,name\n96,48,\n96,48,show").Value;
        Assert.Equal(("box", "show"), (request.Parts[0].Piece, request.Parts[1].From));
        Assert.Equal(MatchedSide.Length, request.Runs.Single().Height);
        Assert.Equal(["door-1", "door-2"], request.Runs.Single().MaySplitAfter);
        Assert.Equal(["front-1", "front-2"], request.Apart.Single().Parts);
        Assert.Equal(["run.width"], request.Parts[4].Awaits);
        Assert.Equal((Length.FromInches(71), Length.FromInches(16)), (request.Parts[4].Length, request.Parts[4].Width));
    }

    [Fact]
    public void What_is_true_of_one_sheet_reaches_the_request()
    {
        var stock = """
            material,length,width,name,thickness,offcut,figure,trusted,square,weight,bad
            birch,40,24,rack A,23/32,yes,no,yes,1/16,13.2,6 x 4 at 10 x 0; 3 x 3 at 0 x 20 1/2
            """;
        var piece = Answer("label,length,width\na,10,20", stock).Value.Stock.Single();
        Assert.Equal(
            ("rack A", true, false, true, 1),
            (piece.Id, piece.IsOffcut, piece.HasFigure, piece.TrustsEdges, piece.Quantity)
        );
        Assert.Equal((Length.FromInches(0, 1, 16), 13.2m), (piece.OutOfSquare, piece.KilogramsPerSquareMetre));
        Assert.Equal(
            [(Length.FromInches(10), Length.FromInches(6)), (Length.Zero, Length.FromInches(3))],
            piece.Bad.Select(b => (b.X, b.Length))
        );
        Assert.Equal(Length.FromInches(20, 1, 2), piece.Bad[1].Y);
    }

    [Theory]
    [InlineData("length,width,bad\n96,48,6 x 4", "bad", "as 6 x 4 at 10 x 0")]
    [InlineData("length,width,bad\n96,48,6 x 4 at 100 x 0", "bad", "lies beside the sheet")]
    [InlineData("length,width,weight\n96,48,heavy", "weight", "no number above 0")]
    [InlineData("length,width,square\n96,48,-1", "square", "below zero")]
    public void What_cannot_be_read_of_a_sheet_is_said_with_line_and_column(string text, string column, string says)
    {
        var refusal = StockCsv.Read(text, "stock.csv", LengthUnit.Inches).Refusal;
        Assert.Equal(("stock.csv", 2, column), (refusal.File, refusal.Line, refusal.Field));
        Assert.Contains(says, refusal.Message);
    }

    [Fact]
    public void Two_sheets_of_one_name_are_refused_with_their_lines()
    {
        var refusal = StockCsv
            .Read("length,width,name\n96,48,show\n60,30,show", "stock.csv", LengthUnit.Inches)
            .Refusal;
        Assert.Equal((3, "name"), (refusal.Line, refusal.Field));
        Assert.Contains("first on line 2", refusal.Message);
    }

    [Fact]
    public void A_part_from_a_sheet_nobody_has_is_refused_with_the_names_there_are()
    {
        var refusal = Answer("label,length,width,from\na,10,20,oak", "length,width,name\n96,48,show").Refusal;
        Assert.Equal(("parts.csv", 2, "from"), (refusal.File, refusal.Line, refusal.Field));
        Assert.Contains("the sheets are show", refusal.Message);
    }

    [Fact]
    public void A_price_with_a_currency_sign_is_refused_with_its_line() =>
        Assert.Equal(
            (2, "price"),
            StockCsv.Read("length,width,price\n96,48,$64", "stock.csv", LengthUnit.Inches).Refusal is var r
                ? (r.Line, r.Field)
                : default
        );

    [Fact]
    public void A_shop_file_has_the_fields_of_a_jobs_shop()
    {
        var text = """
            { // ours
              "tableSaw": { "kerf": "3.2 mm", "ripReach": "24 in" },
              "dressing": "10",
            }
            """;
        var saws = ShopFile.Read(text, "shop.json", LengthUnit.Millimetres).Value;
        Assert.Equal(
            (Jobs.Mm(3.2m), Length.FromInches(24), Jobs.Mm(10)),
            (saws.TableKerf, saws.RipReach, saws.Dressing)
        );
        Assert.Equal(ShopFile.Usual(LengthUnit.Millimetres).TrackKerf, saws.TrackKerf);
    }

    [Theory]
    [InlineData("{\n \"tableSaw\": { \"kerf\": \"wide\" } }", 2, "does not start with a number")]
    [InlineData("{\n \"dressing\": [] }", 2, "expected")]
    [InlineData("{\n \"dressing\": \"1\" ", 2, "not JSON")]
    public void A_shop_file_that_cannot_be_read_says_where(string text, int line, string says)
    {
        var refusal = ShopFile.Read(text, "shop.json", LengthUnit.Millimetres).Refusal;
        Assert.Equal(("shop.json", line), (refusal.File, refusal.Line));
        Assert.Contains(says, refusal.Message, StringComparison.OrdinalIgnoreCase);
    }

    private static CutRequest Request(string parts, string stock) => Answer(parts, stock).Value;

    private static Outcome<CutRequest> Answer(string parts, string stock) =>
        BareList.Request(
            PartsCsv.Read(parts, "parts.csv", LengthUnit.Inches).Value,
            StockCsv.Read(stock, "stock.csv", LengthUnit.Inches).Value,
            ShopFile.Usual(LengthUnit.Inches),
            new CutRules(),
            "parts.csv"
        );
}

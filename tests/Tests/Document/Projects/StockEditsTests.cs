using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Tests.Projects;

public class StockEditsTests
{
    private static readonly BadPlace Knot = new()
    {
        X = "10 in",
        Y = "4 in",
        Length = "3 in",
        Width = "2 in",
        Why = "a knot",
    };

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
                            Id = "ply-1",
                            Length = "60 in",
                            Width = "60 in",
                            Quantity = 3,
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
        ],
    };

    [Fact]
    public void A_part_pinned_to_a_size_without_an_id_gives_it_one_that_nothing_else_has()
    {
        var pinned = Job.PinPartTo("box-1.left-side", "ply", 0).Value;
        Assert.Equal("ply-2", StockOf(pinned)[0].Id);
        Assert.Equal("ply-2", Assert.Single(pinned.Cutting.Pins).From);
    }

    [Fact]
    public void A_size_that_has_an_id_keeps_it() =>
        Assert.Equal("ply-1", Job.PinPartTo("box-1.left-side", "ply", 1).Value.Cutting.Pins[0].From);

    [Fact]
    public void One_of_three_sheets_that_is_marked_stands_by_itself_and_two_are_left()
    {
        var marked = StockOf(Job.MarkBadOnOne("ply", 1, Knot).Value);
        Assert.Equal([null, 2, 1], marked.Select(size => size.Quantity));
        Assert.Equal([0, 0, 1], marked.Select(size => size.Bad.Count));
        Assert.Equal(("ply-2", "60 in"), (marked[2].Id, marked[2].Length.Text));
    }

    [Fact]
    public void Of_sheets_that_can_be_bought_without_end_one_is_marked_and_the_others_stay()
    {
        var marked = StockOf(Job.MarkBadOnOne("ply", 0, Knot).Value);
        Assert.Equal([null, 1, 3], marked.Select(size => size.Quantity));
        Assert.Equal([0, 1, 0], marked.Select(size => size.Bad.Count));
    }

    [Fact]
    public void A_second_mark_on_the_same_sheet_makes_no_entry_and_both_can_be_taken_away()
    {
        var once = Job.MarkBadOnOne("ply", 0, Knot).Value;
        var twice = once.MarkBadOnOne("ply", 1, Knot with { X = "50 in" }).Value;
        Assert.Equal([0, 2, 0], StockOf(twice).Select(size => size.Bad.Count));
        Assert.Equal(JobFile.Write(once), JobFile.Write(twice.UnmarkBad("ply", 1, 1).Value));
        Assert.Equal(
            "There is no such mark: it may have been taken away.",
            once.UnmarkBad("ply", 1, 1).Refusal.Message
        );
    }

    [Fact]
    public void A_sheet_that_is_not_there_is_told()
    {
        Assert.Contains("\"oak\"", Job.MarkBadOnOne("oak", 0, Knot).Refusal.Message, StringComparison.Ordinal);
        Assert.Contains(
            "no such stock size",
            Job.PinPartTo("box-1.left-side", "ply", 2).Refusal.Message,
            StringComparison.Ordinal
        );
        var none = Job.SetField("shop/sheets/ply/stock/ply-1/quantity", "0").Value;
        Assert.Equal("shop/sheets/ply/stock/ply-1/quantity", none.MarkBadOnOne("ply", 1, Knot).Refusal.Field);
    }

    private static IReadOnlyList<StockSize> StockOf(Project project) => project.Shop.Sheets[0].Stock;
}

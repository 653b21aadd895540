using Nookwright.Bounds;
using Nookwright.Cutting;
using Nookwright.Projects;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Bounds;

/// <summary>Bounds reckoned on paper.</summary>
public class ByHand
{
    private static CutRequest Ideally(params CutPart[] parts) =>
        Request(parts) with
        {
            Saws = Ideal,
            Stock = [Sheet(10, 10)],
        };

    private static CutPart[] Several(int count, decimal length, decimal width) =>
        [.. Enumerable.Range(0, count).Select(i => Part($"{length}x{width}-{i}", length, width, PanelFigure.Length))];

    /// <summary>
    /// Strips of 10 × 4 and 10 × 6 from 10 × 10: a sheet gives two fours, or a four and a six. At a price of half a sheet for
    /// either no pattern is worth more than a sheet, so seven fours and a six cost 7/2 + 1/2 = 4; by area 34/10, four too; and
    /// six fours and a six 3.5, hence 4, where the area asks for 3.
    /// </summary>
    [Fact]
    public void Prices_of_half_a_sheet_for_strips_of_which_two_share_a_sheet()
    {
        Assert.Equal(3, QuickArea(Ideally([.. Several(6, 10, 4), .. Several(1, 10, 6)])));
        Assert.Equal(4, Given.Sharpest(Ideally([.. Several(6, 10, 4), .. Several(1, 10, 6)])).Sheets);
    }

    /// <summary>
    /// Of 6 × 7 from 10 × 10 each needs a sheet to itself, whatever is left. Dual feasible functions see it; by area 4 · 42 / 100
    /// is less than 2.
    /// </summary>
    [Fact]
    public void Parts_of_more_than_half_a_sheet_both_ways_do_not_share_one()
    {
        var request = Ideally(Several(4, 6, 7));
        Assert.Equal(2, QuickArea(request));
        Assert.Equal((4, "dual feasible functions"), (Given.Quick(request).Sheets, Given.Quick(request).Way.Name));
    }

    /// <summary>
    /// 800 × 600 in a sheet of 2440 × 1220, dressed 6, kerf 3: whole, 1208 take 600 + 3 + 600 across and 2428 take
    /// 800 · 3 + 3 · 2 along, six a sheet. In chunks of at most 806 each way two of 600 + 12 across with the track's 2 between
    /// are 1226, more than the sheet has: three a sheet, so twelve need four sheets instead of two.
    /// </summary>
    [Fact]
    public void A_chunk_no_longer_than_one_part_costs_wood_and_the_bound_knows_it()
    {
        var request = Request(Several(12, 800, 600));
        var small = request with { Saws = Cutting.Jobs.Shop with { ChunkLength = Mm(806), ChunkWidth = Mm(806) } };
        Assert.Equal(2, Given.Sharpest(request).Sheets);
        Assert.Equal(2, Given.Quick(small).Sheets);
        Assert.Equal(4, Given.Sharpest(small).Sheets);
        Assert.Equal(4, PlanOf(small).Sheets.Count);
    }

    /// <summary>Four of 600 × 400 fill 1200 × 800; a free offcut of that size leaves two sheets' worth of eight to buy, or 24.00.</summary>
    [Fact]
    public void What_an_offcut_gives_need_not_be_bought()
    {
        var offcut = Sheet(1200, 800, quantity: 1) with { Id = "rack", IsOffcut = true };
        var request = Request(Several(12, 600, 400)) with
        {
            Saws = Ideal,
            Stock = [Sheet(1200, 800, price: 12), offcut],
        };
        Assert.Equal((240_000L, 2), (Given.Sharpest(request).Cost, Given.Sharpest(request).Sheets));
    }

    /// <summary>600 × 400 four times: two small sheets at 7 give two each and cost 14; one large at 12 gives four.</summary>
    [Fact]
    public void Of_two_kinds_of_sheet_the_cheaper_way_counts()
    {
        var request = Request(Several(4, 600, 400)) with
        {
            Saws = Ideal,
            Stock = [Sheet(1200, 800, price: 12), Sheet(1200, 400, price: 7)],
        };
        Assert.Equal((120_000L, 1), (Given.Sharpest(request).Cost, Given.Sharpest(request).Sheets));
    }

    /// <summary>Prices 7 and 12: sums of whole sheets are 0, 7, 12, 14, 19, 21, 24, …, and with one sheet at 7 only 0, 7, 12, 19, 24, ….</summary>
    [Fact]
    public void A_cost_is_rounded_up_to_what_whole_sheets_can_cost()
    {
        SheetKind[] kinds = [Kind(null), Kind(null)];
        Assert.Equal(
            [7, 12, 14, 19, 19],
            new long[] { 1, 8, 13, 15, 19 }.Select(c => WholeSheets.Cover(c, kinds, [7, 12]))
        );
        Assert.Equal([19, 24], new long[] { 13, 20 }.Select(c => WholeSheets.Cover(c, [Kind(1), Kind(null)], [7, 12])));
    }

    /// <summary>Where something fits only on the sheet at 12, the sums are 12, 19, 24, 26, …; whatever costs nothing meets a need for nothing.</summary>
    [Fact]
    public void A_sheet_that_something_fits_on_alone_is_among_those_bought()
    {
        SheetKind[] kinds = [Kind(null), Kind(null)];
        IReadOnlySet<int>[] needs = [new HashSet<int> { 1 }];
        Assert.Equal(
            [12, 12, 19, 24, 26],
            new long[] { 1, 8, 14, 20, 25 }.Select(c => WholeSheets.Cover(c, kinds, [7, 12], needs))
        );
        Assert.Equal(14, WholeSheets.Cover(8, kinds, [14, 0], needs));
    }

    /// <summary>The long part fits only on the sheet at 15, the two others go on one at 10: together 25, where two at 10 would have wood enough.</summary>
    [Fact]
    public void A_part_that_fits_on_the_dear_sheet_only_is_counted_on_it()
    {
        var request = Request([.. Several(1, 1200, 300), .. Several(2, 800, 400)]) with
        {
            Saws = Ideal,
            Stock = [Sheet(800, 800, price: 10), Sheet(1200, 400, price: 15)],
        };
        Assert.Equal(250_000L, Given.Sharpest(request).Cost);
    }

    private static SheetKind Kind(int? quantity) => new("", 1, 1, true, 0, quantity, false);

    private static int QuickArea(CutRequest request)
    {
        var worths = QuickBounds.ByArea(WoodQuestion.Of(request, "birch"));
        return (int)LeastCost.Of(worths, WoodQuestion.Of(request, "birch").Sheets, [1]);
    }
}

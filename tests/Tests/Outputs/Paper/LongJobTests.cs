using Nookwright.Cutting;
using Nookwright.Flow;
using Nookwright.Paper;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Tests.Fixtures;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using static Nookwright.Tests.Fixtures.HandMadeWorkbook;

namespace Nookwright.Tests.Paper;

/// <summary>Lists and cards that are longer than a page.</summary>
public sealed class LongJobTests
{
    [Fact]
    public void A_card_longer_than_a_page_goes_on_and_repeats_its_distance_on_each()
    {
        var cards = Printed(OneVisitOf(60))
            .Where(page => Text(page).Contains("Setting 1 of 1", StringComparison.Ordinal))
            .ToList();
        Assert.True(cards.Count > 1);
        Assert.All(cards, page => Assert.Contains(page.Letters, l => l.Value == "5" && l.PointSize > 60));
        Assert.All(
            Enumerable.Range(1, 60),
            i => Assert.Contains(cards, page => Text(page).Contains($"S1-C{i} →", StringComparison.Ordinal))
        );
    }

    [Fact]
    public void A_part_list_longer_than_a_page_repeats_its_heads_and_loses_no_part()
    {
        var pages = Printed(ManyParts(150))
            .Where(page => Text(page).Contains("Finished", StringComparison.Ordinal))
            .ToList();
        Assert.True(pages.Count > 2);
        var words = pages.SelectMany(page => page.GetWords()).Select(word => word.Text).ToHashSet();
        Assert.All(Enumerable.Range(1, 150), i => Assert.Contains($"P{i}", words));
    }

    [Fact]
    public void Long_names_stay_on_the_paper()
    {
        var whole = Make();
        var name = string.Concat(Enumerable.Repeat("Built-in-with-a-name-that-does-not-end-", 12));
        var pages = Printed(whole with { Project = whole.Project with { Name = name } });
        Assert.All(pages, page => Assert.All(page.Letters, l => Assert.True(l.EndBaseLine.X < page.Width - 30)));
        Assert.Contains("Match groups and running grain", Text(pages[0]), StringComparison.Ordinal);
        Assert.All(pages[0].Letters, l => Assert.True(l.StartBaseLine.Y > 30));
    }

    private static Workbook OneVisitOf(int rips)
    {
        var saw = new HandSaw();
        saw.Lay("S1", 1, In(48 * rips), In(48));
        var breakdown = new List<SawCut>();
        var sizing = new List<SawCut>();
        for (var i = 1; i <= rips; i++)
        {
            var on = i == 1 ? "S1" : $"S1-L{i - 1}";
            var (gives, leaves) = (($"S1-C{i}", WorkpieceUse.Chunk), ($"S1-L{i}", WorkpieceUse.Chunk));
            breakdown.Add(saw.Cut(In(0, 1, 8), (CutKind.Breakdown, on, SheetAxis.Length), In(24), gives, leaves));
        }
        for (var i = 1; i <= rips; i++)
        {
            var (gives, leaves) = (($"S1-R{i}", WorkpieceUse.Strip), ($"S1-X{i}", WorkpieceUse.Offcut));
            sizing.Add(saw.Cut(In(0, 1, 8), (CutKind.Sizing, $"S1-C{i}", SheetAxis.Width), In(15), gives, leaves));
        }
        PlanSheet[] sheets = [new(1, "birch", "birch", In(48 * rips), In(48), "S1")];
        var plan = new Plan(sheets, saw.Workpieces, breakdown, [new(1, Saw.Fence, In(15), 1, sizing, [])], [], 1);
        return Make() with { Plan = plan };
    }

    private static Workbook ManyParts(int count)
    {
        var whole = Make();
        var part = whole.PartList.Parts[0];
        var parts = Enumerable.Range(1, count).Select(i => part with { Id = $"free-{i}.panel", Letter = $"P{i}" });
        return whole with { PartList = new PartList([.. parts], [], [], []), Plan = null };
    }

    private static IReadOnlyList<Page> Printed(Workbook book)
    {
        var stream = new MemoryStream();
        Packet.Write(book, PaperSize.Letter, PacketEdition.Of(default, "long"), stream);
        return [.. PdfDocument.Open(stream.ToArray()).GetPages()];
    }

    private static string Text(Page page) => string.Concat(page.Letters.Select(l => l.Value)).Replace('\u00a0', ' ');
}

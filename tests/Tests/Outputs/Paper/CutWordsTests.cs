using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Paper;
using Nookwright.Tests.Fixtures;

namespace Nookwright.Tests.Paper;

/// <summary>What the orders of the breakdown say about what the track lies on.</summary>
public sealed class CutWordsTests
{
    [Theory]
    [InlineData(99, true)]
    [InlineData(100, false)]
    public void A_track_with_too_little_to_lie_on_is_carried_by_a_spare_board(int width, bool isSaid)
    {
        var cut = new SawCut(1, CutKind.Breakdown, "S1", SheetAxis.Width, FromEdge.Low, Mm(width), "A", "B");
        var order = new CutWords(new JobWords(Given(Mm(width)))).Breakdown(cut);
        Assert.Equal(isSaid, order.Contains("spare board of the same thickness", StringComparison.Ordinal));
    }

    private static Nookwright.Flow.Workbook Given(Length width)
    {
        var book = HandMadeWorkbook.Make();
        Workpiece Piece(string id, Length across) =>
            new(id, 1, default, default, Mm(2000), across, WorkpieceUse.Strip, null);
        return book with
        {
            Plan = book.Plan! with { Workpieces = [Piece("S1", Mm(1200)), Piece("A", width), Piece("B", Mm(1000))] },
        };
    }

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}

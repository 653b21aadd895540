using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Paper;

namespace Nookwright.Tests.Paper;

public class SawInHandTests
{
    [Theory]
    [InlineData(Saw.Fence, SheetAxis.Width, 2300, 1100, "Table saw, fence")]
    [InlineData(Saw.Stop, SheetAxis.Length, 2300, 450, "Crosscut, stop")]
    [InlineData(Saw.Stop, SheetAxis.Length, 2300, 1004, "Track saw, two stops")]
    [InlineData(Saw.Stop, SheetAxis.Width, 2300, 450, "Track saw, two stops")]
    public void A_stop_is_the_crosscut_saws_only_where_that_saw_can_make_the_cut(
        Saw saw,
        SheetAxis along,
        int length,
        int width,
        string inHand
    )
    {
        var cut = new SawCut(1, CutKind.Sizing, "S1", along, FromEdge.Low, Mm(400), null, null);
        var piece = new Workpiece("S1", 1, default, default, Mm(length), Mm(width), WorkpieceUse.Strip, null);
        Assert.Equal(inHand, SawInHand.Of(new Visit(1, saw, Mm(400), 1, [cut], []), _ => piece));
    }

    /// <summary>60 in is 1524 mm: no sled has its stop farther out.</summary>
    [Theory]
    [InlineData(1524, "Crosscut, stop")]
    [InlineData(1525, "Track saw, two stops")]
    public void A_stop_farther_out_than_a_sled_reaches_is_set_on_the_track_saw(int setting, string inHand)
    {
        var cut = new SawCut(1, CutKind.Sizing, "S1", SheetAxis.Length, FromEdge.Low, Mm(setting), null, null);
        var piece = new Workpiece("S1", 1, default, default, Mm(2300), Mm(300), WorkpieceUse.Strip, null);
        Assert.Equal(inHand, SawInHand.Of(new Visit(1, Saw.Stop, Mm(setting), 1, [cut], []), _ => piece));
    }

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}

using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Paper;
using Nookwright.Shop;

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
        Assert.Equal(inHand, new SawInHand(new Visit(1, saw, Mm(400), 1, [cut], []), _ => piece, Saws).Name);
    }

    /// <summary>60 in is 1524 mm: no sled has its stop farther out.</summary>
    [Theory]
    [InlineData(1524, "Crosscut, stop")]
    [InlineData(1525, "Track saw, two stops")]
    public void A_stop_farther_out_than_a_sled_reaches_is_set_on_the_track_saw(int setting, string inHand)
    {
        var cut = new SawCut(1, CutKind.Sizing, "S1", SheetAxis.Length, FromEdge.Low, Mm(setting), null, null);
        var piece = new Workpiece("S1", 1, default, default, Mm(2300), Mm(300), WorkpieceUse.Strip, null);
        Assert.Equal(inHand, new SawInHand(new Visit(1, Saw.Stop, Mm(setting), 1, [cut], []), _ => piece, Saws).Name);
    }

    /// <summary>An edge of 300 mm is not short, one of 299 is; a sled makes cuts of 24 in, which is 609.6 mm.</summary>
    [Theory]
    [InlineData(300, 300, "Table saw, fence")]
    [InlineData(300, 299, "Crosscut, stop")]
    [InlineData(609, 299, "Crosscut, stop")]
    [InlineData(610, 299, "Table saw, fence; sled")]
    public void Where_an_edge_is_too_short_for_the_fence_the_sled_makes_every_cut_it_can_reach(
        int one,
        int other,
        string inHand
    )
    {
        var hand = Across(200, one, other);
        Assert.Equal(inHand, hand.Name);
    }

    [Fact]
    public void Where_the_sled_cannot_make_all_of_them_each_cut_has_its_own_guide()
    {
        var visit = Crosscuts(800, 900, 700, 500);
        var hand = new SawInHand(visit, id => Piece(id), Saws);
        Assert.Equal([GuideInHand.Fence, GuideInHand.Track, GuideInHand.Sled], visit.Cuts.Select(hand.For));
    }

    [Fact]
    public void Where_the_fence_can_make_none_and_the_sled_not_all_of_them_the_track_saw_makes_all() =>
        Assert.Equal("Track saw, two stops", Across(800, 700, 500).Name);

    private static SawInHand Across(int setting, params int[] widths) => new(Crosscuts(setting, widths), Piece, Saws);

    private static Visit Crosscuts(int setting, params int[] widths) =>
        new(
            1,
            Saw.Fence,
            Mm(setting),
            1,
            [
                .. widths.Select(
                    (width, i) =>
                        new SawCut(
                            i + 1,
                            CutKind.Sizing,
                            $"{width}",
                            SheetAxis.Length,
                            FromEdge.Low,
                            Mm(setting),
                            null,
                            null
                        )
                ),
            ],
            []
        );

    // Named by its width, 2 m long.
    private static Workpiece Piece(string width) =>
        new(width, 1, default, default, Mm(2000), Mm(int.Parse(width)), WorkpieceUse.Strip, null);

    private static SawLimits Saws { get; } =
        new(Mm(3), Mm(2), Mm(6), Mm(760), Mm(2440), Mm(2750), Mm(2440), Mm(1220), Mm(25));

    private static Length Mm(int millimetres) => Length.FromMillimetres(millimetres);
}

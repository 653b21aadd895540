using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;

namespace Nookwright.Tests.Parts;

public sealed class NotchTests
{
    private static readonly Outline L = new([
        At(1600, 0),
        At(2000, 0),
        At(2000, 1100),
        At(0, 1100),
        At(0, 600),
        At(1600, 600),
    ]);

    [Fact]
    public void A_rectangle_has_none() => Assert.Null(Notch.Of(Panel(Outline.Rectangle(Mm(2000), Mm(1100)), new())));

    [Fact]
    public void A_bare_L_loses_what_its_outline_lacks() =>
        Assert.Equal(new Notch(Mm(1600), Mm(600), AtEnd: false, AtHigh: false), Notch.Of(Panel(L, new())));

    /// <summary>
    /// An 8 mm strip on the front and at the inside corner, the left end 10 mm long: along the length 1600 + 8 + 10 = 1618;
    /// across, the part is cut 8 smaller at the front and the notch 8 larger at the inside: 600 + 8 − 8 = 600.
    /// </summary>
    [Fact]
    public void Edging_and_what_stays_long_move_the_saw()
    {
        var strip = new PanelEdge("strip", Mm(8), null);
        var longer = new PanelEdge(null, Length.Zero, Traced.Written(Mm(10), "10 mm", "longBy"));
        var notch = Notch.Of(Panel(L, new PanelEdges(longer, null, strip, null) { Inner = strip }));
        Assert.Equal(new Notch(Mm(1618), Mm(600), AtEnd: false, AtHigh: false), notch);
    }

    /// <summary>What is cut and its edging come to the finished L: 1100 − 8 (front) high, 500 − 8 of it beside the notch.</summary>
    [Fact]
    public void What_is_left_beside_the_notch_is_the_finished_board_without_its_edging()
    {
        var strip = new PanelEdge("strip", Mm(8), null);
        var panel = Panel(L, new PanelEdges(null, null, strip, null) { Inner = strip });
        var cutWidth = panel.Width.Length - Mm(8);
        Assert.Equal(Mm(500 - 8), cutWidth - Notch.Of(panel)!.Width);
    }

    private static Panel Panel(Outline outline, PanelEdges edges) =>
        new(
            "top.main",
            "top",
            "top",
            PanelRole.Slab,
            "oak",
            Size(18),
            Size(2000),
            Size(1100),
            outline,
            PanelFigure.Length,
            Placement.Identity
        )
        {
            Edges = edges,
        };

    private static Traced Size(decimal millimetres) => Traced.Written(Mm(millimetres), $"{millimetres} mm", "test");

    private static Point2 At(decimal x, decimal y) => new(Mm(x), Mm(y));

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}

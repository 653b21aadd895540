using Nookwright.Design;
using Nookwright.Geometry;

namespace Nookwright.Drawing;

/// <summary>Draws a panel's outline, its machining and its edging, flat.</summary>
internal static class PartMarks
{
    /// <summary>The marks at a scale.</summary>
    public static IEnumerable<Mark> Of(Panel panel, OnPaper onPaper) =>
        [
            new Mark.Path(
                [.. panel.Outline.Corners.Select(c => onPaper.At(PartPicture.See(c)))],
                true,
                Fill.Light,
                Pen.Thin
            ),
            .. panel.Machining.SelectMany(m => Machined(m, onPaper)),
            .. EdgedSides(panel)
                .Select(s => new Mark.Line(
                    onPaper.At(PartPicture.See(s.From)),
                    onPaper.At(PartPicture.See(s.To)),
                    Pen.Cut
                )),
        ];

    private static IEnumerable<Mark> Machined(Machining machining, OnPaper onPaper) =>
        machining switch
        {
            Machining.Through hole => [Hole(hole.Centre, hole.Diameter.Millimetres, PanelFace.Show, onPaper)],
            Machining.Pins pins => Enumerable
                .Range(0, pins.Count)
                .Select(i => pins.First + new Point2(pins.Pitch * i, default))
                .Select(centre => Hole(centre, pins.Diameter.Millimetres, pins.Face, onPaper)),
            Machining.Groove groove => [Groove(groove, onPaper)],
            _ => [],
        };

    private static Mark.Circle Hole(Point2 centre, double diameter, PanelFace face, OnPaper onPaper) =>
        new(
            onPaper.At(PartPicture.See(centre)),
            Math.Max(0.25, diameter * onPaper.Scale / 2),
            face == PanelFace.Show ? Fill.Paper : Fill.None,
            face == PanelFace.Show ? Pen.Thin : Pen.Hidden
        );

    private static Mark.Path Groove(Machining.Groove groove, OnPaper onPaper)
    {
        var (a, b) = (onPaper.At(PartPicture.See(groove.From)), onPaper.At(PartPicture.See(groove.To)));
        var isShow = groove.Face == PanelFace.Show;
        return new(
            Window.Around([a, b]).Corners,
            true,
            isShow ? Fill.Middle : Fill.None,
            isShow ? Pen.Thin : Pen.Hidden
        );
    }

    /// <summary>The straight edges of the outline that lie on a side with edging.</summary>
    private static IEnumerable<(Point2 From, Point2 To)> EdgedSides(Panel panel)
    {
        var (low, high, edges) = (panel.Outline.Low, panel.Outline.High, panel.Edges);
        bool IsEdged(Point2 a, Point2 b) =>
            (a.X == b.X && a.X == low.X && edges.Start?.Edging is not null)
            || (a.X == b.X && a.X == high.X && edges.End?.Edging is not null)
            || (a.Y == b.Y && a.Y == low.Y && edges.Low?.Edging is not null)
            || (a.Y == b.Y && a.Y == high.Y && edges.High?.Edging is not null);
        var corners = panel.Outline.Corners;
        return corners.Select((a, i) => (a, corners[(i + 1) % corners.Count])).Where(e => IsEdged(e.a, e.Item2));
    }
}

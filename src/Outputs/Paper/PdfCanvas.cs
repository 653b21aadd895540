using Nookwright.Drawing;
using Nookwright.Lettering;
using PdfSharp.Drawing;

namespace Nookwright.Paper;

/// <summary>Draws pictures on a page of a PDF, one millimetre of picture to one millimetre of paper.</summary>
/// <param name="page">The page, measured in points from its top left corner.</param>
internal sealed class PdfCanvas(XGraphics page)
{
    private const double Pt = PdfLook.PointsPerMillimetre;

    private readonly Dictionary<(double Size, bool Bold), XFont> _fonts = [];

    /// <summary>Draws a picture with its top left corner at a spot of the page.</summary>
    public void Draw(Picture picture, Spot at)
    {
        var before = page.Save();
        page.TranslateTransform(at.X * Pt, at.Y * Pt);
        Draw(picture.Marks);
        page.Restore(before);
    }

    private void Draw(IReadOnlyList<Mark> marks)
    {
        foreach (var mark in marks)
            Draw(mark);
    }

    private void Draw(Mark mark)
    {
        switch (mark)
        {
            case Mark.Line line when PdfLook.Of(line.Pen) is { } pen:
                page.DrawLine(pen, Point(line.From), Point(line.To));
                break;
            case Mark.Path path:
                DrawShape(Outline(path), path.Fill, path.Pen);
                break;
            case Mark.Circle circle:
                DrawShape(Outline(circle), circle.Fill, circle.Pen);
                break;
            case Mark.Label label:
                DrawLabel(label);
                break;
            case Mark.Group group:
                Draw(group.Marks);
                break;
        }
    }

    private void DrawShape(Shape shape, Fill fill, Pen pen)
    {
        if (PdfLook.Of(fill) is { } brush)
            page.DrawPath(brush, shape.Outline);
        if (PdfLook.HatchDirections(fill) is { Count: > 0 } directions)
            DrawHatch(shape, directions);
        if (PdfLook.Of(pen) is { } line)
            page.DrawPath(line, shape.Outline);
    }

    // Lines on one grid for the whole picture, so that neighbouring hatched areas line up; clipped by the shape.
    private void DrawHatch(Shape shape, IReadOnlyList<int> directions)
    {
        var before = page.Save();
        page.IntersectClip(shape.Outline);
        var (low, high) = (shape.Low, shape.High);
        foreach (var slope in directions)
        {
            var corners = new[] { low, high, new Spot(low.X, high.Y), new Spot(high.X, low.Y) };
            var starts = corners.Select(corner => corner.Y - (slope * corner.X)).ToList();
            var spacing = PdfLook.HatchSpacing * Math.Sqrt(2);
            for (var c = Math.Ceiling(starts.Min() / spacing) * spacing; c <= starts.Max(); c += spacing)
                page.DrawLine(PdfLook.HatchLine, OnLine(low.X, slope, c), OnLine(high.X, slope, c));
        }
        page.Restore(before);
    }

    private void DrawLabel(Mark.Label label)
    {
        var before = page.Save();
        page.TranslateTransform(label.At.X * Pt, label.At.Y * Pt);
        if (label.Turn != 0)
            page.RotateTransform(-label.Turn);
        var width = TextMetrics.Width(label.Text, label.Size, label.Bold);
        var x = label.Anchor switch
        {
            Anchor.Middle => -width / 2,
            Anchor.End => -width,
            _ => 0,
        };
        foreach (var run in TextRun.Of(label.Text))
        {
            var at = new XPoint(x * Pt, -run.Rise * label.Size * Pt);
            page.DrawString(run.Text, Font(label.Size * run.Size, label.Bold), PdfLook.Ink, at);
            x += TextMetrics.Width(run, label.Size, label.Bold);
        }
        page.Restore(before);
    }

    private XFont Font(double size, bool bold)
    {
        if (!_fonts.TryGetValue((size, bold), out var font))
        {
            var style = bold ? XFontStyleEx.Bold : XFontStyleEx.Regular;
            _fonts[(size, bold)] = font = new(PdfFonts.Family, size * Pt, style);
        }
        return font;
    }

    private static Shape Outline(Mark.Path path)
    {
        var outline = new XGraphicsPath();
        outline.AddLines([.. path.Spots.Select(Point)]);
        if (path.Closed || path.Fill != Fill.None)
            outline.CloseFigure();
        return new(
            outline,
            new(path.Spots.Min(s => s.X), path.Spots.Min(s => s.Y)),
            new(path.Spots.Max(s => s.X), path.Spots.Max(s => s.Y))
        );
    }

    private static Shape Outline(Mark.Circle circle)
    {
        var (centre, radius) = (circle.Centre, circle.Radius);
        var (low, high) = (
            new Spot(centre.X - radius, centre.Y - radius),
            new Spot(centre.X + radius, centre.Y + radius)
        );
        var outline = new XGraphicsPath();
        outline.AddEllipse(low.X * Pt, low.Y * Pt, 2 * radius * Pt, 2 * radius * Pt);
        return new(outline, low, high);
    }

    private static XPoint Point(Spot spot) => new(spot.X * Pt, spot.Y * Pt);

    private static XPoint OnLine(double x, int slope, double c) => new(x * Pt, ((slope * x) + c) * Pt);

    private readonly record struct Shape(XGraphicsPath Outline, Spot Low, Spot High);
}

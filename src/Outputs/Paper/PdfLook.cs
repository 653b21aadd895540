using Nookwright.Drawing;
using PdfSharp.Drawing;

namespace Nookwright.Paper;

/// <summary>How pens and fills look on paper: one table, legible on a black and white printer.</summary>
internal static class PdfLook
{
    /// <summary>Points per millimetre: 72 points are one inch of 25.4 mm (ISO 32000-1, 8.3.2.3).</summary>
    public const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>The distance of hatch lines, in millimetres.</summary>
    public const double HatchSpacing = 2.4;

    private static readonly Dictionary<Pen, XPen> Pens = new()
    {
        [Pen.Outline] = Line(0.5, 0),
        [Pen.Thin] = Line(0.25, 0),
        [Pen.Dimension] = Line(0.18, 0),
        [Pen.Hidden] = Line(0.25, 0, dash: (2.0, 1.2)),
        [Pen.Cut] = Line(0.7, 0),
        [Pen.Room] = Line(0.35, 0.45),
    };

    private static readonly Dictionary<Fill, XBrush> Fills = new()
    {
        [Fill.Paper] = Shade(1),
        [Fill.Light] = Shade(0.96),
        [Fill.Middle] = Shade(0.89),
        [Fill.Dark] = Shade(0.80),
        [Fill.Room] = Shade(0.92),
        [Fill.Hatch] = Shade(1),
        [Fill.Held] = Shade(1),
        [Fill.Ink] = Shade(0),
    };

    /// <summary>Hatch lines.</summary>
    public static XPen HatchLine { get; } = Line(0.13, 0.25);

    /// <summary>The colour of text.</summary>
    public static XBrush Ink => Fills[Fill.Ink];

    /// <summary>The pen, or null for none.</summary>
    public static XPen? Of(Pen pen) => Pens.GetValueOrDefault(pen);

    /// <summary>The brush, or null for none.</summary>
    public static XBrush? Of(Fill fill) => Fills.GetValueOrDefault(fill);

    /// <summary>The directions hatch lines go, as dy per dx; none for a plain fill.</summary>
    public static IReadOnlyList<int> HatchDirections(Fill fill) =>
        fill switch
        {
            Fill.Hatch => [-1],
            Fill.Held => [-1, 1],
            _ => [],
        };

    private static XPen Line(double millimetres, double grey, (double On, double Off)? dash = null)
    {
        var pen = new XPen(Grey(grey), millimetres * PointsPerMillimetre) { LineJoin = XLineJoin.Round };
        if (dash is var (on, off))
            pen.DashPattern = [on / millimetres, off / millimetres];
        return pen;
    }

    private static XSolidBrush Shade(double grey) => new(Grey(grey));

    private static XColor Grey(double grey) => XColor.FromGrayScale(grey);
}

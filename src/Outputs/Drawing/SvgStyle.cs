namespace Nookwright.Drawing;

/// <summary>The one look of every pen and fill in SVG, as CSS classes; lengths are millimetres of the picture.</summary>
public static class SvgStyle
{
    /// <summary>The rules, for a page that shows many pictures. Colours are custom properties, so that a page can change them.</summary>
    public static string Rules { get; } =
        """
            .picture{font-family:Inter,system-ui,sans-serif;fill:none;stroke:none;stroke-linejoin:round;stroke-linecap:round}
            .picture .pen-outline{stroke:var(--ink,#111);stroke-width:.5}
            .picture .pen-thin{stroke:var(--ink,#111);stroke-width:.25}
            .picture .pen-dimension{stroke:var(--ink,#111);stroke-width:.18}
            .picture .pen-hidden{stroke:var(--ink,#111);stroke-width:.25;stroke-dasharray:1.6 1;stroke-linecap:butt}
            .picture .pen-cut{stroke:var(--ink,#111);stroke-width:.7}
            .picture .pen-room{stroke:var(--room-line,#777);stroke-width:.35}
            .picture .fill-paper{fill:var(--paper,#fff)}
            .picture .fill-light{fill:var(--wood-light,#fbf8f2)}
            .picture .fill-middle{fill:var(--wood-middle,#e9e1d3)}
            .picture .fill-dark{fill:var(--wood-dark,#cfc3ae)}
            .picture .fill-room{fill:var(--room,#efefef)}
            .picture .fill-ink{fill:var(--ink,#111)}
            .picture .label{fill:var(--ink,#111);stroke:none}
            .picture .bold{font-weight:700}
            .picture .hatching{stroke:var(--hatching,#555);stroke-width:.15}
            """;

    /// <summary>The class of a pen.</summary>
    public static string ClassOf(Pen pen) =>
        pen switch
        {
            Pen.Outline => "pen-outline",
            Pen.Thin => "pen-thin",
            Pen.Dimension => "pen-dimension",
            Pen.Hidden => "pen-hidden",
            Pen.Cut => "pen-cut",
            Pen.Room => "pen-room",
            _ => "",
        };

    /// <summary>The class of a fill; hatched fills are patterns and named by <see cref="PatternOf"/>.</summary>
    public static string ClassOf(Fill fill) =>
        fill switch
        {
            Fill.Paper => "fill-paper",
            Fill.Light => "fill-light",
            Fill.Middle => "fill-middle",
            Fill.Dark => "fill-dark",
            Fill.Room => "fill-room",
            Fill.Ink => "fill-ink",
            Fill.Hatch => "fill-hatch",
            Fill.Held => "fill-held",
            _ => "",
        };

    /// <summary>The name of a hatched fill's pattern, or null for a plain fill.</summary>
    public static string? PatternOf(Fill fill) =>
        fill switch
        {
            Fill.Hatch => "hatch",
            Fill.Held => "held",
            _ => null,
        };
}

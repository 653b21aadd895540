namespace Nookwright.Drawing;

/// <summary>Writes pictures as SVG 1.1: one unit is one millimetre, things carry their ids, fractions are set as fractions.</summary>
public static class SvgWriter
{
    /// <summary>The whole document, ready for a file or to stand inside a page.</summary>
    public static string Write(Picture picture, SvgOptions? options = null) =>
        new SvgPage(options ?? new SvgOptions()).Write(picture);
}

using Nookwright.Projects;

namespace Nookwright.Paper;

/// <summary>A sheet of paper and the part of it that is printed on; in millimetres from its top left corner.</summary>
/// <param name="Width">Of the paper.</param>
/// <param name="Height">Of the paper.</param>
internal readonly record struct PaperFormat(double Width, double Height)
{
    // Home printers leave up to 13 mm blank at an edge (common practice, no source); 18 mm on the left is for punched holes.
    private const double Margin = 14;
    private const double HoleMargin = 18;
    private const double Head = 9;
    private const double Foot = 8;

    /// <summary>The same paper lying on its long side.</summary>
    public PaperFormat Lying => new(Height, Width);

    /// <summary>The left edge of what is printed.</summary>
    public double Left => HoleMargin;

    /// <summary>The right edge of what is printed.</summary>
    public double Right => Width - Margin;

    /// <summary>The upper edge of what is printed, the page's head line counted.</summary>
    public double Top => Margin;

    /// <summary>The lower edge of what is printed, the page's foot line counted.</summary>
    public double Bottom => Height - Margin;

    /// <summary>The upper edge of the page's own content.</summary>
    public double BodyTop => Top + Head;

    /// <summary>The lower edge of the page's own content.</summary>
    public double BodyBottom => Bottom - Foot;

    /// <summary>The width of the page's own content.</summary>
    public double BodyWidth => Right - Left;

    /// <summary>Letter is 8 1/2 × 11 in (ASME Y14.1, size A); A4 is 210 × 297 mm (ISO 216).</summary>
    public static PaperFormat Of(PaperSize size) => size == PaperSize.A4 ? new(210, 297) : new(8.5 * 25.4, 11 * 25.4);
}

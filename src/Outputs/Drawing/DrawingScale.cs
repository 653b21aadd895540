using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>A scale of drawing that a rule or an architect's scale can measure.</summary>
/// <param name="Denominator">How many times smaller than real.</param>
/// <param name="Text">As written beside the drawing.</param>
internal sealed record DrawingScale(double Denominator, string Text)
{
    // ISO 5455, table 1, and 1:15 and 1:25 from common practice, no source.
    private static readonly DrawingScale[] Metric =
    [
        .. new[] { 2, 5, 10, 15, 20, 25, 50, 100, 200 }.Select(d => new DrawingScale(d, $"1:{d}")),
    ];

    // The divisions of an architect's scale; common practice, no source.
    private static readonly DrawingScale[] Inch =
    [
        new(4, "3 in = 1 ft"),
        new(8, "1 1⁄2 in = 1 ft"),
        new(12, "1 in = 1 ft"),
        new(16, "3⁄4 in = 1 ft"),
        new(24, "1⁄2 in = 1 ft"),
        new(32, "3⁄8 in = 1 ft"),
        new(48, "1⁄4 in = 1 ft"),
        new(64, "3⁄16 in = 1 ft"),
        new(96, "1⁄8 in = 1 ft"),
        new(192, "1⁄16 in = 1 ft"),
    ];

    /// <summary>The scales of a unit, the largest first.</summary>
    public static IReadOnlyList<DrawingScale> Of(LengthUnit unit) => unit == LengthUnit.Inches ? Inch : Metric;

    /// <summary>Millimetres of paper per millimetre.</summary>
    public double Factor => 1 / Denominator;
}

using Nookwright.Drawing;

namespace Nookwright.Paper;

/// <summary>A ruler on the page, 100 mm above and 4 in below, so that the maker sees whether the printer kept the size.</summary>
internal static class ScaleBar
{
    /// <summary>Its height with its figures.</summary>
    public const double Height = 14;

    private const double Inch = 25.4;
    private const string Says = "Lay a rule on this: if it differs, the printer changed the size; print at 100 %.";

    /// <summary>The ruler with the top left corner of its figures at a spot.</summary>
    public static IEnumerable<Mark> At(double x, double y)
    {
        var line = y + 6.2;
        yield return new Mark.Label("100 mm", new(x + 104, line - 1.2), TypeSize.Furniture);
        yield return new Mark.Line(new(x, line), new(x + 100, line), Pen.Outline);
        for (var i = 0; i <= 10; i++)
            yield return Tick(x + (10 * i), line, i % 5 == 0 ? -2.6 : -1.6);
        yield return new Mark.Line(new(x, line + 0.9), new(x + (4 * Inch), line + 0.9), Pen.Thin);
        for (var i = 0; i <= 8; i++)
            yield return Tick(x + (Inch / 2 * i), line + 0.9, i % 2 == 0 ? 2.6 : 1.6);
        yield return new Mark.Label("4 in", new(x + 104, line + 3.4), TypeSize.Furniture);
        yield return new Mark.Label(Says, new(x, line + 7.4), TypeSize.Furniture);
    }

    private static Mark Tick(double x, double y, double length) =>
        new Mark.Line(new(x, y), new(x, y + length), Pen.Thin);
}

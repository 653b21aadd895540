using Nookwright.Drawing;

namespace Nookwright.Paper;

/// <summary>Small things drawn on many pages.</summary>
internal static class Shapes
{
    /// <summary>A square to tick.</summary>
    public static Mark TickBox(double x, double y, double size) => Box(x, y, size, size, Pen.Thin);

    /// <summary>A rectangle by its top left corner.</summary>
    public static Mark Box(double x, double y, double width, double height, Pen pen, Fill fill = Fill.None) =>
        new Mark.Path([new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)], true, fill, pen);

    /// <summary>A level line.</summary>
    public static Mark Rule(double left, double right, double y, Pen pen = Pen.Thin) =>
        new Mark.Line(new(left, y), new(right, y), pen);

    /// <summary>An arrow from the one spot to the other.</summary>
    public static IEnumerable<Mark> Arrow(Spot from, Spot to, Pen pen = Pen.Thin)
    {
        const double Head = 2.6;
        const double HalfWidth = 0.9;
        var length = Math.Sqrt(Math.Pow(to.X - from.X, 2) + Math.Pow(to.Y - from.Y, 2));
        var (dx, dy) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        var foot = new Spot(to.X - (dx * Head), to.Y - (dy * Head));
        yield return new Mark.Line(from, foot, pen);
        yield return new Mark.Path(
            [
                to,
                new(foot.X - (dy * HalfWidth), foot.Y + (dx * HalfWidth)),
                new(foot.X + (dy * HalfWidth), foot.Y - (dx * HalfWidth)),
            ],
            true,
            Fill.Ink,
            Pen.None
        );
    }
}

using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>Finds where in an outline there is most room to write.</summary>
internal static class WidestRoom
{
    /// <summary>Outlines with more corners follow a wall; their bounding rectangle is nearly theirs.</summary>
    private const int MostCorners = 12;

    /// <summary>The largest rectangle between the outline's corners that lies inside it, on paper.</summary>
    public static Window In(Outline outline, OnPaper onPaper)
    {
        var whole = (outline.Low, outline.High);
        var (low, high) =
            outline.IsRectangle || outline.Corners.Count > MostCorners ? whole : Largest(outline) ?? whole;
        return Window.Around([onPaper.At(PartPicture.See(low)), onPaper.At(PartPicture.See(high))]);
    }

    private static (Point2 Low, Point2 High)? Largest(Outline outline)
    {
        var xs = outline.Corners.Select(c => c.X).Distinct().Order().ToArray();
        var ys = outline.Corners.Select(c => c.Y).Distinct().Order().ToArray();
        var inside = Cells(xs, ys, outline);
        var rectangles =
            from x in Spans(xs.Length)
            from y in Spans(ys.Length)
            where
                Enumerable
                    .Range(x.From, x.To - x.From)
                    .All(i => Enumerable.Range(y.From, y.To - y.From).All(j => inside[i, j]))
            select (Low: new Point2(xs[x.From], ys[y.From]), High: new Point2(xs[x.To], ys[y.To]));
        return rectangles.Cast<(Point2 Low, Point2 High)?>().MaxBy(r => Area(r!.Value));
    }

    private static double Area((Point2 Low, Point2 High) r) =>
        (r.High.X - r.Low.X).Millimetres * (r.High.Y - r.Low.Y).Millimetres;

    private static IEnumerable<(int From, int To)> Spans(int count) =>
        from a in Enumerable.Range(0, count)
        from b in Enumerable.Range(a + 1, count - a - 1)
        select (a, b);

    /// <summary>Which cells between neighbouring corner lines lie inside the outline, by their middles.</summary>
    private static bool[,] Cells(Length[] xs, Length[] ys, Outline outline)
    {
        var inside = new bool[xs.Length, ys.Length];
        for (var i = 0; i + 1 < xs.Length; i++)
        for (var j = 0; j + 1 < ys.Length; j++)
            inside[i, j] = IsInside(outline, (xs[i] + xs[i + 1]).Millimetres / 2, (ys[j] + ys[j + 1]).Millimetres / 2);
        return inside;
    }

    /// <summary>True when a line from the point to the right crosses the outline an odd number of times.</summary>
    private static bool IsInside(Outline outline, double x, double y)
    {
        var corners = outline.Corners;
        var isInside = false;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            var (ay, by) = (a.Y.Millimetres, b.Y.Millimetres);
            if (ay > y == by > y)
                continue;
            var crossing = a.X.Millimetres + ((y - ay) / (by - ay) * (b.X - a.X).Millimetres);
            isInside ^= crossing > x;
        }
        return isInside;
    }
}

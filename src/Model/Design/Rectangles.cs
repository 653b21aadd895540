using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Design;

/// <summary>Splits an outline whose sides run along the axes into rectangles.</summary>
internal static class Rectangles
{
    /// <summary>Rectangles that fill the outline without overlapping, from the lowest up.</summary>
    public static IEnumerable<(Point2 Low, Point2 High)> Of(Outline outline)
    {
        if (outline.IsRectangle)
            return [(outline.Low, outline.High)];
        var levels = outline.Corners.Select(corner => corner.Y).Distinct().Order().ToList();
        return levels.Zip(levels.Skip(1)).SelectMany(band => InBand(outline, band.First, band.Second));
    }

    /// <summary>Upright sides that pass a band, from the left, are by turns the left and the right of a rectangle.</summary>
    private static IEnumerable<(Point2 Low, Point2 High)> InBand(Outline outline, Length low, Length high)
    {
        var sides = Sides(outline)
            .Where(side => Length.Min(side.From.Y, side.To.Y) <= low && Length.Max(side.From.Y, side.To.Y) >= high)
            .Select(side => side.From.X)
            .Order()
            .ToList();
        for (var i = 0; i + 1 < sides.Count; i += 2)
            yield return (new(sides[i], low), new(sides[i + 1], high));
    }

    private static IEnumerable<(Point2 From, Point2 To)> Sides(Outline outline) =>
        outline.Corners.Zip(outline.Corners.Skip(1).Append(outline.Corners[0]));
}

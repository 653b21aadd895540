using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Parts;

/// <summary>A rectangle cut out of a corner of a part after it has its size, which makes an L of it.</summary>
/// <param name="Length">Along the part's length, as cut.</param>
/// <param name="Width">Along the part's width, as cut.</param>
/// <param name="AtEnd">True at x = its length, false at x = 0.</param>
/// <param name="AtHigh">True at y = its width, false at y = 0.</param>
public sealed record Notch(Length Length, Length Width, bool AtEnd, bool AtHigh)
{
    /// <summary>The notch that makes an L of a part; null for a rectangle, or an outline of another kind.</summary>
    /// <remarks>
    /// Edging that counts on the inside edges makes it larger; edging that counts at the corner it is cut from makes it
    /// smaller, since the part is cut smaller there; what stays long there is cut away with it.
    /// </remarks>
    public static Notch? Of(Panel panel)
    {
        var corners = panel.Outline.Corners;
        var (low, high) = (panel.Outline.Low, panel.Outline.High);
        Point2[] bounds = [low, new(high.X, low.Y), high, new(low.X, high.Y)];
        var inside = corners.Where(c => c.X > low.X && c.X < high.X && c.Y > low.Y && c.Y < high.Y).ToList();
        if (corners.Count != 6 || inside.Count != 1 || bounds.Count(corners.Contains) != 3)
            return null;
        var (corner, inner) = (bounds.First(b => !corners.Contains(b)), panel.Edges.Inner);
        var (atEnd, atHigh) = (corner.X == high.X, corner.Y == high.Y);
        var along = (corner.X - inside[0].X).Abs();
        var across = (corner.Y - inside[0].Y).Abs();
        return new(
            Cut(along, inner, atEnd ? panel.Edges.End : panel.Edges.Start),
            Cut(across, inner, atHigh ? panel.Edges.High : panel.Edges.Low),
            atEnd,
            atHigh
        );
    }

    private static Length Cut(Length finished, PanelEdge? inner, PanelEdge? outer) =>
        finished
        + (inner?.Counted ?? Nookwright.Measure.Length.Zero)
        - (outer?.Counted ?? Nookwright.Measure.Length.Zero)
        + (outer?.LongBy?.Length ?? Nookwright.Measure.Length.Zero);
}

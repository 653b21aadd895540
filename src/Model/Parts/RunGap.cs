using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Parts;

/// <summary>How far two neighbours of a running grain stand apart in the room, from wood to wood: edging on the facing edges counts as gap.</summary>
internal static class RunGap
{
    /// <summary>The gap between the cut edges of two panels along the run; null where they do not stand side by side.</summary>
    /// <param name="one">A panel.</param>
    /// <param name="next">Its neighbour.</param>
    /// <param name="height">The side of both that lies across the run.</param>
    public static Length? Between(Panel one, Panel next, MatchedSide height)
    {
        if (Axis(one, height) != Axis(next, height) || Across(one, height) != Across(next, height))
            return null;
        var (a, b) = (Wood(one), Wood(next));
        if (!Overlap(a, b, Across(one, height)))
            return null;
        var axis = Axis(one, height);
        var gap = Length.Max(b.Low(axis) - a.High(axis), a.Low(axis) - b.High(axis));
        return gap.IsNegative ? null : gap;
    }

    private static bool Overlap(Corners a, Corners b, int axis) =>
        a.Low(axis) < b.High(axis) && b.Low(axis) < a.High(axis);

    /// <summary>The panel's bare wood once it is fitted: what stays long is gone, and edging is not of its figure.</summary>
    private static Corners Wood(Panel panel)
    {
        var (start, end, low, high) = panel.Edges;
        Point3 from = new(Edging(start), Edging(low), Length.Zero);
        Point3 to = new(panel.Length.Length - Edging(end), panel.Width.Length - Edging(high), Length.Zero);
        return new(panel.Place.Map(from), panel.Place.Map(to));
    }

    private static Length Edging(PanelEdge? edge) => edge?.Counted ?? Length.Zero;

    private static int Axis(Panel panel, MatchedSide height) =>
        AxisOf(height == MatchedSide.Length ? panel.Place.Y : panel.Place.X);

    private static int Across(Panel panel, MatchedSide height) =>
        AxisOf(height == MatchedSide.Length ? panel.Place.X : panel.Place.Y);

    private static int AxisOf(Direction direction) => (int)direction / 2;

    /// <summary>Two opposite corners in the room.</summary>
    private readonly record struct Corners(Point3 One, Point3 Other)
    {
        public Length Low(int axis) => Length.Min(Of(One, axis), Of(Other, axis));

        public Length High(int axis) => Length.Max(Of(One, axis), Of(Other, axis));

        private static Length Of(Point3 point, int axis) =>
            axis switch
            {
                0 => point.X,
                1 => point.Y,
                _ => point.Z,
            };
    }
}

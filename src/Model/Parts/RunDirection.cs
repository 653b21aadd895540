using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Parts;

/// <summary>Which way a running grain goes: which side of its parts lies across the strip, as the strip's height.</summary>
/// <remarks>
/// The side that all share, where only one is shared. Where both are, as with equal doors, the way the panels follow each
/// other in the room; and where they stand apart, the strip runs along the figure.
/// </remarks>
internal static class RunDirection
{
    public static MatchedSide HeightOf(IReadOnlyList<Panel> members)
    {
        var lengths = members.Select(panel => panel.Length.Length).Distinct().Count();
        var widths = members.Select(panel => panel.Width.Length).Distinct().Count();
        return (lengths, widths) switch
        {
            (> 1, 1) => MatchedSide.Width,
            (1, > 1) => MatchedSide.Length,
            _ => ByPlace(members[0], members[1]) ?? ByFigure(members[0]),
        };
    }

    private static MatchedSide? ByPlace(Panel one, Panel next)
    {
        var step = Centre(next) - Centre(one);
        var alongLength = Along(step, one.Place.X);
        var alongWidth = Along(step, one.Place.Y);
        if (alongLength == alongWidth)
            return null;
        return alongLength > alongWidth ? MatchedSide.Width : MatchedSide.Length;
    }

    private static MatchedSide ByFigure(Panel panel) =>
        panel.Figure == PanelFigure.Width ? MatchedSide.Length : MatchedSide.Width;

    private static Point3 Centre(Panel panel)
    {
        var half = new Point3(Half(panel.Length.Length), Half(panel.Width.Length), Half(panel.Thickness.Length));
        return panel.Place.Map(half);
    }

    private static Length Half(Length length) => new(length.Nanometres / 2);

    private static Length Along(Point3 vector, Direction direction) =>
        direction switch
        {
            Direction.PlusX or Direction.MinusX => vector.X.Abs(),
            Direction.PlusY or Direction.MinusY => vector.Y.Abs(),
            _ => vector.Z.Abs(),
        };
}

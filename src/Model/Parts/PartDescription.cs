using System.Text;
using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Parts;

/// <summary>All that makes a part what it is, in one exact text: two parts are truly equal just when their texts are.</summary>
/// <remarks>
/// A part turned by half a turn in its plane is the same part: the figure still runs the same way and the show face still
/// shows. A mirror image is another part, and so is one turned by a quarter. Ids and names do not count.
/// </remarks>
internal static class PartDescription
{
    public static string Of(Part part, bool materialHasFigure)
    {
        var panel = part.Panel;
        var figure = materialHasFigure ? panel.Figure : PanelFigure.Any;
        var waits = part.Blank is null ? "" : string.Join(' ', part.Blank.Awaits);
        var run = part.Run is null ? "" : $"{part.Run.Order} of {part.Run.Run}";
        var sizes = $"{Text(panel.Thickness)} {Text(part.CutLength)} {Text(part.CutWidth)}";
        return string.Join('|', panel.Material, sizes, figure, waits, run, Shape(panel));
    }

    /// <summary>Of the two ways it can lie on the bench with its show face up, always the same one.</summary>
    private static string Shape(Panel panel)
    {
        var asItIs = Shape(panel, new HalfTurn(panel, isTurned: false));
        var turned = Shape(panel, new HalfTurn(panel, isTurned: true));
        return string.CompareOrdinal(asItIs, turned) <= 0 ? asItIs : turned;
    }

    private static string Shape(Panel panel, HalfTurn turn)
    {
        var text = new StringBuilder();
        text.AppendJoin(' ', Corners(panel.Outline, turn)).Append('|');
        text.AppendJoin(';', turn.Edges(panel.Edges).Append(panel.Edges.Inner).Select(Text)).Append('|');
        text.AppendJoin(';', panel.Machining.Select(turn.Map).Select(Text).Order(StringComparer.Ordinal));
        return text.ToString();
    }

    /// <summary>The outline from its lowest corner on: a turned one starts elsewhere.</summary>
    private static IEnumerable<string> Corners(Outline outline, HalfTurn turn)
    {
        var corners = outline.Corners.Select(turn.Map).ToList();
        var first = corners.IndexOf(corners.MinBy(corner => (corner.Y, corner.X)));
        return corners.Skip(first).Concat(corners.Take(first)).Select(Text);
    }

    private static string Text(PanelEdge? edge) =>
        edge is null ? "" : $"{edge.Edging} {Text(edge.Counted)} {(edge.LongBy is { } by ? Text(by) : "")}";

    private static string Text(Machining machining) =>
        machining switch
        {
            Machining.Through hole => $"hole {Text(hole.Centre)} {Text(hole.Diameter)}",
            Machining.Pins pins =>
                $"pins {pins.Face} {Text(pins.First)} {Text(pins.Pitch)} {pins.Count} {Text(pins.Diameter)} {Text(pins.Depth)}",
            Machining.Groove groove =>
                $"groove {groove.Face} {Text(groove.From)} {Text(groove.To)} {Text(groove.Depth)}",
            _ => throw new NotSupportedException($"No description of {machining.GetType().Name}."),
        };

    private static string Text(Traced size) => Text(size.Length);

    private static string Text(Length length) => $"{length.Nanometres}";

    private static string Text(Point2 point) => $"{point.X.Nanometres},{point.Y.Nanometres}";
}

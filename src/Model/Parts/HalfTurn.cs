using Nookwright.Design;
using Nookwright.Geometry;

namespace Nookwright.Parts;

/// <summary>A panel as it lies, or turned by 180 degrees in its plane: what is at one corner comes to the opposite one.</summary>
internal sealed class HalfTurn(Panel panel, bool isTurned)
{
    private readonly Point2 _far = new(panel.Length.Length, panel.Width.Length);

    public Point2 Map(Point2 point) => isTurned ? _far - point : point;

    /// <summary>Start, end, low and high.</summary>
    public IReadOnlyList<PanelEdge?> Edges(PanelEdges edges) =>
        isTurned ? [edges.End, edges.Start, edges.High, edges.Low] : [edges.Start, edges.End, edges.Low, edges.High];

    public Machining Map(Machining machining) =>
        (isTurned, machining) switch
        {
            (true, Machining.Through hole) => hole with { Centre = Map(hole.Centre) },
            (true, Machining.Pins pins) => pins with { First = Map(pins.First + Upward(pins)) },
            (true, Machining.Groove groove) => groove with { From = Map(groove.To), To = Map(groove.From) },
            _ => machining,
        };

    /// <summary>From the first hole of a column to its last, which a turn makes the first.</summary>
    private static Point2 Upward(Machining.Pins pins) => new(pins.Pitch * (pins.Count - 1), Measure.Length.Zero);
}

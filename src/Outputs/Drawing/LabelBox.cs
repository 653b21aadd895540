using Nookwright.Lettering;

namespace Nookwright.Drawing;

/// <summary>The rectangles that labels take up on a picture, so that others keep clear of them.</summary>
public static class LabelBox
{
    /// <summary>Capitals and figures stand on the baseline; brackets and tails hang a little below it.</summary>
    private const double Below = 0.2;

    /// <summary>The corners of one label's rectangle, as left, top, right and bottom in millimetres.</summary>
    public static (double Left, double Top, double Right, double Bottom) Of(Mark.Label label)
    {
        var width = TextMetrics.Width(label.Text, label.Size, label.Bold);
        var start = label.Anchor switch
        {
            Anchor.Middle => -width / 2,
            Anchor.End => -width,
            _ => 0,
        };
        var (sin, cos) = Math.SinCos(label.Turn * Math.PI / 180);
        Spot At(double right, double up) =>
            new(label.At.X + (right * cos) - (up * sin), label.At.Y - (right * sin) - (up * cos));
        var (low, high) = (-Below * label.Size, TextMetrics.CapitalHeight * label.Size);
        var window = Window.Around([At(start, low), At(start + width, low), At(start, high), At(start + width, high)]);
        return (window.Left, window.Top, window.Right, window.Bottom);
    }

    /// <summary>The rectangles of all labels among some marks.</summary>
    internal static IEnumerable<Window> Of(IEnumerable<Mark> marks) =>
        marks.SelectMany(LabelsIn).Select(Of).Select(b => new Window(b.Left, b.Top, b.Right, b.Bottom));

    private static IEnumerable<Mark.Label> LabelsIn(Mark mark) =>
        mark switch
        {
            Mark.Label label => [label],
            Mark.Group group => group.Marks.SelectMany(LabelsIn),
            _ => [],
        };
}

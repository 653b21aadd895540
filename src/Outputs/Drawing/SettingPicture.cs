using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>A small picture for a setting's card: workpiece against the fence, blade, what is cut off shaded, what is left.</summary>
/// <remarks>
/// Seen from above by whoever feeds the saw: fence or stop on the right, the workpiece pushed up the picture. Workpieces
/// cut alike are shown once. Not to scale, so that narrow strips can be seen.
/// </remarks>
public static class SettingPicture
{
    /// <summary>How many different workpieces are shown at most; the card's list names them all.</summary>
    private const int Most = 3;

    private const double Gap = 6;

    /// <summary>How many kinds of workpieces a picture leaves out.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="plan">The plan it belongs to.</param>
    public static int LeftOut(Visit visit, Plan plan) => Math.Max(0, FenceStack.Of(visit, plan).Count - Most);

    /// <summary>The picture.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="plan">The plan it belongs to.</param>
    /// <param name="request">What the plan was asked for; it knows the letters.</param>
    /// <param name="format">How lengths are shown.</param>
    /// <param name="width">In millimetres.</param>
    /// <param name="height">In millimetres.</param>
    public static Picture Of(
        Visit visit,
        Plan plan,
        CutRequest request,
        LengthFormat format,
        double width = 120,
        double height = 60
    )
    {
        var stacks = FenceStack.Of(visit, plan).Take(Most).ToArray();
        var columns = Math.Max(1, stacks.Length);
        var columnWidth = columns == 1 ? width * 0.6 : (width - (Gap * (columns - 1))) / columns;
        var left = (width - (columnWidth * columns) - (Gap * (columns - 1))) / 2;
        var drawing = new FenceDrawing(visit, request, format, columnWidth, height);
        var marks = stacks.SelectMany((s, i) => drawing.Marks(s, left + (i * (columnWidth + Gap)) + columnWidth));
        var guide = visit.Saw == Saw.Stop ? "stop" : "fence";
        return new(width, height, [.. marks], $"Setting {visit.Number}: {guide} at {format.Print(visit.Setting)}");
    }
}

using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>One sheet of a plan: what it is broken down into, by which cuts in which order, and every part by its letter.</summary>
/// <remarks>The sheet's low corner is at the lower left; its length, along the figure, goes to the right, or up on an upright picture.</remarks>
public static class SheetLayout
{
    /// <summary>The picture, as large as a frame allows.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sheetNumber">Which of its sheets.</param>
    /// <param name="request">What the plan was asked for; it knows the letters.</param>
    /// <param name="format">How lengths are shown.</param>
    /// <param name="width">In millimetres.</param>
    /// <param name="height">In millimetres.</param>
    public static Picture Of(
        Plan plan,
        int sheetNumber,
        CutRequest request,
        LengthFormat format,
        double width,
        double height
    )
    {
        var sheet = plan.Sheets.First(s => s.Number == sheetNumber);
        var drawing = new SheetDrawing(plan, sheet, request, format.WithoutUnit, width, height);
        var title =
            $"Sheet {sheet.Number}: {sheet.Material}, {format.Print(sheet.Length)} × {format.Print(sheet.Width)}";
        return new(width, height, [.. drawing.Marks()], title);
    }

    /// <summary>The height a picture of a sheet needs when it is so wide; more would stay empty.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="width">In millimetres.</param>
    public static double HeightOf(PlanSheet sheet, double width)
    {
        var (one, other) = (sheet.Length.Millimetres, sheet.Width.Millimetres);
        const double Around = 2 * SheetDrawing.Margin;
        return Around + ((width - Around) * Math.Min(one, other) / Math.Max(one, other));
    }
}

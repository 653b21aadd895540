using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Paper;

namespace Nookwright.Web.Sessions;

/// <summary>The drawings of a cutting plan.</summary>
/// <param name="Sheets">The sheets in the order they are broken down.</param>
/// <param name="Settings">The visits in their order: the workpiece against the fence, and what comes off it.</param>
/// <param name="Stamps">What tells the cuts drawn from those of other plans.</param>
public sealed record PlanPictures(
    IReadOnlyList<PageDrawing> Sheets,
    IReadOnlyList<PageDrawing> Settings,
    CutStamps Stamps
)
{
    // Millimetres of a picture; the page stretches it to the width there is.
    private const double SheetWidth = 170;
    private const double SheetHeight = 95;

    /// <summary>Nothing is planned.</summary>
    public static PlanPictures None { get; } = new([], [], new(null));

    /// <summary>The drawings of a workbook's plan.</summary>
    public static PlanPictures Of(Workbook workbook) =>
        workbook.Plan is { } plan
            ? new(
                [.. plan.Sheets.Select(sheet => Of(sheet, plan, workbook))],
                [
                    .. plan.Visits.Select(visit => new PageDrawing(
                        $"Setting {visit.Number}",
                        () => Draw(visit, plan, workbook)
                    )),
                ],
                new(plan)
            )
            : None;

    private static PageDrawing Of(PlanSheet sheet, Plan plan, Workbook book)
    {
        var words = new JobWords(book);
        var size = words.Sides(sheet.Length, sheet.Width);
        return PageDrawing.WithoutScale(
            $"Sheet {sheet.Number}",
            () => Draw(sheet, plan, book),
            $"Sheet {sheet.Number}: {words.Material(sheet.Material)}, {size}"
        );
    }

    private static Picture Draw(PlanSheet sheet, Plan plan, Workbook book) =>
        SheetLayout.Of(plan, sheet.Number, book.CutRequest, book.Lengths, SheetWidth, SheetHeight);

    private static Picture Draw(Visit visit, Plan plan, Workbook book) =>
        SettingPicture.Of(visit, plan, book.CutRequest, book.Lengths);
}

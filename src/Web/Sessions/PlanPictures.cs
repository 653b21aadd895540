using Nookwright.Drawing;
using Nookwright.Flow;

namespace Nookwright.Web.Sessions;

/// <summary>The drawings of a cutting plan.</summary>
/// <param name="workbook">The workbook with its plan; without one there is nothing to draw.</param>
public sealed class PlanPictures(Workbook workbook)
{
    // Millimetres of a picture; the page stretches it to the width there is.
    private const double SheetWidth = 170;
    private const double SheetHeight = 95;

    /// <summary>The sheets in the order they are broken down.</summary>
    public IReadOnlyList<PageDrawing> Sheets { get; } =
        workbook.Plan is not { } plan
            ? []
            :
            [
                .. plan.Sheets.Select(sheet => new PageDrawing(
                    $"Sheet {sheet.Number}",
                    () =>
                        SheetLayout.Of(
                            plan,
                            sheet.Number,
                            workbook.CutRequest,
                            workbook.Lengths,
                            SheetWidth,
                            SheetHeight
                        )
                )),
            ];

    /// <summary>The visits in their order: the workpiece against the fence, and what comes off it.</summary>
    public IReadOnlyList<PageDrawing> Settings { get; } =
        workbook.Plan is not { } plan
            ? []
            :
            [
                .. plan.Visits.Select(visit => new PageDrawing(
                    $"Setting {visit.Number}",
                    () => SettingPicture.Of(visit, plan, workbook.CutRequest, workbook.Lengths)
                )),
            ];
}

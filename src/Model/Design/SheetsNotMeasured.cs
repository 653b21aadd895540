using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>Sheets that are used by a size nobody has measured.</summary>
internal static class SheetsNotMeasured
{
    private const string Source =
        "sheets are sold 1/64 to 1/32 in under their nominal thickness, and 45/64 in was measured for 3/4 (trade press and makers)";

    public static IEnumerable<Finding> Findings(IReadOnlyList<PlacedPiece> pieces, Job job) =>
        from material in pieces.SelectMany(piece => piece.Panels).Select(panel => panel.Material).Distinct()
        where job.Sheet(material) is { Measured: null }
        select new Finding(
            "sheet.not-measured",
            Severity.Warning,
            $"The thickness of {material} has not been measured, so its nominal {job.Sheet(material)!.Nominal} is used; "
                + "measure a sheet with a caliper before anything is cut.",
            [material],
            Source
        )
        {
            Field = $"shop/sheets/{material}/measured",
        };
}

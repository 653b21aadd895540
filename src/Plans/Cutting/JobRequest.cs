using Nookwright.Parts;
using Nookwright.Shop;

namespace Nookwright.Cutting;

/// <summary>What a job asks of the saws.</summary>
public static class JobRequest
{
    /// <summary>The request for a job's parts from the sheets of its shop.</summary>
    /// <param name="parts">Everything to make.</param>
    /// <param name="sheets">The materials, offcuts included.</param>
    /// <param name="saws">What the saws take and reach.</param>
    public static CutRequest Of(PartList parts, IReadOnlyList<Sheet> sheets, SawLimits saws) =>
        new(
            [.. parts.Parts.Select(Cut)],
            [.. parts.Matches.Where(m => m.Sides.Count > 1).Select(m => new CutMatch(m.Id, m.Sides, m.Because))],
            [.. parts.Runs.Select(r => new CutRun(r.Id, r.Parts) { Height = r.Height })],
            [.. sheets.SelectMany(Stock)],
            saws,
            new CutRules()
        );

    /// <summary>The id of a material's size, by its place in the shop's list from nought.</summary>
    internal static string StockId(string material, int index) => $"{material}/{index + 1}";

    private static CutPart Cut(Part part) =>
        new(
            part.Id,
            part.Letter,
            part.Panel.Name,
            part.Panel.Material,
            part.Blank?.Length ?? part.CutLength.Length,
            part.Blank?.Width ?? part.CutWidth.Length,
            part.Panel.Figure,
            part.Blank?.Awaits ?? []
        );

    private static IEnumerable<StockPiece> Stock(Sheet sheet) =>
        sheet.Stock.Select(
            (size, i) =>
                new StockPiece(
                    StockId(sheet.Id, i),
                    sheet.Id,
                    size.Length,
                    size.Width,
                    size.Quantity,
                    size.Price,
                    size.IsOffcut,
                    sheet.HasFigure
                )
        );
}

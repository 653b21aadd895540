using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Cutting;

/// <summary>What a job asks of the saws.</summary>
public static class JobRequest
{
    /// <summary>The request for a job's parts from the sheets of its shop.</summary>
    /// <param name="parts">Everything to make.</param>
    /// <param name="sheets">The materials, offcuts included.</param>
    /// <param name="saws">What the saws take and reach.</param>
    /// <param name="wishes">What the maker wishes of the plan; panels that there are not are passed over.</param>
    public static CutRequest Of(PartList parts, IReadOnlyList<Sheet> sheets, SawLimits saws, CuttingWishes wishes) =>
        new(
            [.. parts.Parts.Select(p => Cut(p, Pinned(p.Id, wishes)))],
            [.. parts.Matches.Where(m => m.Sides.Count > 1).Select(m => new CutMatch(m.Id, m.Sides, m.Because))],
            [.. parts.Runs.Select(r => Run(r))],
            [.. sheets.SelectMany(s => Stock(s, saws))],
            saws,
            new CutRules(BoxByBox: wishes.BoxByBox)
        )
        {
            Apart = [.. Apart(parts, wishes)],
        };

    /// <summary>The id of a material's size: what is written on it, or its place in the shop's list from nought.</summary>
    internal static string StockId(string material, int index, string? written) => written ?? $"{material}/{index + 1}";

    private static string? Pinned(string panel, CuttingWishes wishes) =>
        wishes.Pins.FirstOrDefault(pin => pin.Panels.Contains(panel))?.From;

    private static IEnumerable<CutApart> Apart(PartList parts, CuttingWishes wishes)
    {
        var known = parts.Parts.Select(p => p.Id).ToHashSet();
        return wishes
            .Apart.Select(apart => new CutApart(apart.Id, [.. apart.Panels.Distinct().Where(known.Contains)]))
            .Where(apart => apart.Parts.Count > 1);
    }

    private static CutRun Run(RunOfParts run) =>
        new(run.Id, run.Parts)
        {
            Height = run.Height,
            MaySplitAfter = run.MaySplitAfter,
            Gaps = run.Gaps,
        };

    private static CutPart Cut(Part part, string? from) =>
        new(
            part.Id,
            part.Letter,
            part.Panel.Name,
            part.Panel.Material,
            part.Blank?.Length ?? part.CutLength.Length,
            part.Blank?.Width ?? part.CutWidth.Length,
            part.Panel.Figure,
            part.Blank?.Awaits ?? []
        )
        {
            Piece = part.Panel.Piece,
            From = from,
        };

    private static IEnumerable<StockPiece> Stock(Sheet sheet, SawLimits saws) =>
        sheet.Stock.Select(
            (size, i) =>
                new StockPiece(
                    StockId(sheet.Id, i, size.Id),
                    sheet.Id,
                    size.Length,
                    size.Width,
                    size.Quantity,
                    size.Price,
                    size.IsOffcut,
                    sheet.HasFigure
                )
                {
                    Bad = size.Bad,
                    OutOfSquare = size.OutOfSquare,
                    TrustsEdges = size.TrustsEdges ?? saws.TrustsEdges,
                    KilogramsPerSquareMetre = sheet.KilogramsPerSquareMetre,
                }
        );
}

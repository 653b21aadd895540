using Nookwright.Cutting;
using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Lists;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Flow;

/// <summary>The workbook of a bare list: parts and sheets as anywhere else, no room and no pieces, so that its packet can be printed.</summary>
public static class ListWorkbook
{
    /// <summary>The workbook, without a plan.</summary>
    /// <param name="name">What the list is called on paper.</param>
    /// <param name="request">What the list asks of the saws.</param>
    /// <param name="sheets">The sheets as listed, in the order of the request's stock.</param>
    public static Workbook Of(string name, CutRequest request, IReadOnlyList<ListedSheet> sheets)
    {
        var project = new Project
        {
            Name = name,
            Units = request.Units,
            Paper = request.Units == LengthUnit.Millimetres ? PaperSize.A4 : PaperSize.Letter,
            Shop = new() { Sheets = [.. Goods(request, sheets)] },
        };
        var parts = new PartList([.. Parts(request, sheets)], [.. Matches(request)], [.. Runs(request)], []);
        return WorkbookSteps.Run(project) with { PartList = parts, CutRequest = request, Findings = [] };
    }

    private static IEnumerable<SheetGood> Goods(CutRequest request, IReadOnlyList<ListedSheet> sheets) =>
        request
            .Stock.Zip(sheets)
            .GroupBy(s => s.First.Material)
            .Select(material => new SheetGood
            {
                Id = material.Key,
                Nominal = Written(
                    material.Select(s => s.Second.Thickness).FirstOrDefault(t => t is not null) ?? Length.Zero,
                    request
                ),
                KilogramsPerSquareMetre = material
                    .Select(s => s.First.KilogramsPerSquareMetre)
                    .FirstOrDefault(k => k is not null),
                Stock =
                [
                    .. material.Select(s => new StockSize
                    {
                        Id = s.First.Id,
                        Length = Written(s.First.Length, request),
                        Width = Written(s.First.Width, request),
                        Quantity = s.First.Quantity,
                        Price = s.First.Price,
                        Offcut = s.First.IsOffcut,
                    }),
                ],
            });

    private static IEnumerable<Part> Parts(CutRequest request, IReadOnlyList<ListedSheet> sheets)
    {
        var thickness = request
            .Stock.Zip(sheets)
            .GroupBy(s => s.First.Material)
            .ToDictionary(
                g => g.Key,
                g => g.Select(s => s.Second.Thickness).FirstOrDefault(t => t is not null) ?? Length.Zero
            );
        var places = request
            .Runs.SelectMany(r => r.Parts.Select((part, i) => (part, Place: new PlaceInRun(r.Id, i + 1))))
            .DistinctBy(p => p.part)
            .ToDictionary(p => p.part, p => p.Place);
        foreach (var part in request.Parts)
        {
            var allowance = part.IsHeld ? request.Saws.Allowance : Length.Zero;
            var (length, width) = (Listed(part.Length - allowance, request), Listed(part.Width - allowance, request));
            var panel = new Panel(
                part.Id,
                part.Piece ?? "",
                part.Name,
                PanelRole.Free,
                part.Material,
                Listed(thickness.GetValueOrDefault(part.Material), request),
                length,
                width,
                Outline.Rectangle(length.Length, width.Length),
                part.Figure,
                Placement.Identity
            );
            var blank = part.IsHeld ? new Blank(part.Length, part.Width, allowance, part.Awaits) : null;
            yield return new(part.Id, part.Letter, panel, length, width, blank, places.GetValueOrDefault(part.Id));
        }
    }

    private static IEnumerable<MatchGroup> Matches(CutRequest request)
    {
        var parts = request.Parts.ToDictionary(p => p.Id);
        Length Size(PartSide side) => side.Side == MatchedSide.Width ? parts[side.Part].Width : parts[side.Part].Length;
        return request.Matches.Select(m => new MatchGroup(m.Id, m.Sides, Size(m.Sides[0]), m.Because, ByHand: false));
    }

    private static IEnumerable<RunOfParts> Runs(CutRequest request) =>
        request.Runs.Select(r => new RunOfParts(r.Id, r.Parts, r.Height ?? MatchedSide.Length)
        {
            MaySplitAfter = r.MaySplitAfter,
            Gaps = r.Gaps,
        });

    private static SizeText Written(Length length, CutRequest request) => new(LengthText.Write(length, request.Units));

    private static Traced Listed(Length length, CutRequest request) =>
        Traced.Written(length, LengthText.Write(length, request.Units), "the list");
}

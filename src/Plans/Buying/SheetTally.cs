using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Buying;

/// <summary>Counts a plan's sheets by the stock they come from.</summary>
internal sealed class SheetTally(Plan plan, Project project)
{
    /// <summary>In the order of the shop's materials and sizes; what the shop does not list comes last, without a price.</summary>
    public IEnumerable<SheetLine> Lines()
    {
        var used = plan.Sheets.GroupBy(sheet => sheet.Stock).ToDictionary(group => group.Key, group => group.ToList());
        foreach (var good in project.Shop.Sheets)
        {
            var material = new Bought(good.Id, Called(good), good.KilogramsPerSquareMetre);
            foreach (var (stock, i) in good.Stock.Select((stock, i) => (stock, i)))
                if (used.Remove(JobRequest.StockId(good.Id, i, stock.Id), out var sheets))
                    yield return Line(material, sheets, stock.Price, stock.Offcut);
        }
        foreach (var sheets in used.Values)
            yield return Line(new(sheets[0].Material, sheets[0].Material, null), sheets, null, isFromRack: false);
    }

    private static string Called(SheetGood good) => good.Name.Length > 0 ? good.Name : good.Id;

    private SheetLine Line(Bought material, List<PlanSheet> sheets, decimal? price, bool isFromRack)
    {
        var (length, width) = (sheets[0].Length, sheets[0].Width);
        var weight = material.KilogramsPerSquareMetre * SquareMetres(length, width);
        return new(material.Id, material.Name, length, width, sheets.Count, price, weight, isFromRack, Why(sheets));
    }

    private string Why(List<PlanSheet> sheets)
    {
        var numbers = sheets.Select(sheet => sheet.Number).ToHashSet();
        var parts = plan.Workpieces.Where(p => p.Part is not null && numbers.Contains(p.Sheet)).ToList();
        var held = parts.Count(p => p.Use == WorkpieceUse.Held);
        var waiting = held == 0 ? "" : $", {held} of them held";
        var list = numbers.Count == 1 ? "Sheet" : "Sheets";
        var count = parts.Count == 1 ? "1 part comes" : $"{parts.Count} parts come";
        return $"{list} {string.Join(", ", numbers.Order())} of the cutting plan: {count} off{(numbers.Count == 1 ? " it" : " them")}{waiting}.";
    }

    private static decimal SquareMetres(Length length, Length width) => Metres(length) * Metres(width);

    private static decimal Metres(Length length) => length.Nanometres / 1_000_000_000m;

    private readonly record struct Bought(string Id, string Name, decimal? KilogramsPerSquareMetre);
}

using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Buying;

/// <summary>Counts a plan's sheets by material and size, offcuts apart.</summary>
/// <remarks>Where an offcut is as large as a sheet that is sold, the offcuts go first, as they do in the plan.</remarks>
internal sealed class SheetTally(Plan plan, Project project)
{
    public IEnumerable<SheetLine> Lines() =>
        project
            .Shop.Sheets.SelectMany(good => Lines(good, [.. plan.Sheets.Where(sheet => sheet.Material == good.Id)]))
            .Concat(OfUnknownMaterial());

    private IEnumerable<SheetLine> Lines(SheetGood good, List<PlanSheet> used)
    {
        var name = good.Name.Length > 0 ? good.Name : good.Id;
        var material = new Bought(good.Id, name, good.KilogramsPerSquareMetre);
        var stock = ShopNumbers.SheetOf(good, project.Units, out _).Stock;
        foreach (var size in used.GroupBy(sheet => (sheet.Length, sheet.Width)))
        {
            var sold = stock.Where(s => (s.Length, s.Width) == size.Key).OrderByDescending(s => s.IsOffcut).ToList();
            var left = size.ToList();
            foreach (var offered in sold)
            {
                var taken = left.Take(offered.Quantity ?? left.Count).ToList();
                left = [.. left.Skip(taken.Count)];
                if (taken.Count > 0)
                    yield return Line(material, taken, offered.Price, offered.IsOffcut);
            }
            if (left.Count > 0)
                yield return Line(material, left, null, isFromRack: false);
        }
    }

    private IEnumerable<SheetLine> OfUnknownMaterial()
    {
        var known = project.Shop.Sheets.Select(good => good.Id).ToHashSet();
        return plan
            .Sheets.Where(sheet => !known.Contains(sheet.Material))
            .GroupBy(sheet => (sheet.Material, sheet.Length, sheet.Width))
            .Select(size => Line(new(size.Key.Material, size.Key.Material, null), [.. size], null, isFromRack: false));
    }

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

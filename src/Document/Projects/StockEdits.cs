using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>Changes to one sheet among those in the shop, each by name.</summary>
public static class StockEdits
{
    /// <summary>Pins a part to a size of stock by its place in the shop; a size without an id is given one first.</summary>
    /// <param name="project">The document.</param>
    /// <param name="panel">The part's panel.</param>
    /// <param name="material">The material's id.</param>
    /// <param name="stock">The place of the stock size in the material's list, from 0.</param>
    public static Outcome<Project> PinPartTo(this Project project, string panel, string material, int stock)
    {
        if (Missing(project, material, stock) is { } refusal)
            return refusal;
        var named = project.StockOf(material)[stock].Id ?? FreeId(project, material);
        return project
            .ChangeStock(material, entries => entries[stock] = entries[stock] with { Id = named })
            .Then(job => job.PinPart(panel, named));
    }

    /// <summary>Marks a bad place on one sheet of a size alone: where there are more of it, that sheet becomes an entry of its own.</summary>
    /// <param name="project">The document.</param>
    /// <param name="material">The material's id.</param>
    /// <param name="stock">The place of the stock size in the material's list, from 0.</param>
    /// <param name="bad">The place, as measured from the marked corner.</param>
    public static Outcome<Project> MarkBadOnOne(this Project project, string material, int stock, BadPlace bad)
    {
        if (Missing(project, material, stock) is { } refusal)
            return refusal;
        var size = project.StockOf(material)[stock];
        if (size.Quantity == 0)
            return new Refusal(
                "There is no sheet of this size to mark: say first how many there are.",
                $"shop/sheets/{material}/stock/{size.Id ?? $"{stock}"}/quantity"
            );
        if (size.Quantity == 1)
            return project.MarkBad(material, stock, bad);
        var marked = size with { Id = FreeId(project, material), Quantity = 1, Bad = [.. size.Bad, bad] };
        return project.ChangeStock(
            material,
            entries =>
            {
                entries[stock] = size with { Quantity = size.Quantity - 1 };
                entries.Insert(stock + 1, marked);
            }
        );
    }

    /// <summary>Takes the mark of a bad place away.</summary>
    /// <param name="project">The document.</param>
    /// <param name="material">The material's id.</param>
    /// <param name="stock">The place of the stock size in the material's list, from 0.</param>
    /// <param name="place">The place of the mark in its list, from 0.</param>
    public static Outcome<Project> UnmarkBad(this Project project, string material, int stock, int place)
    {
        if (Missing(project, material, stock) is { } refusal)
            return refusal;
        if (place < 0 || place >= project.StockOf(material)[stock].Bad.Count)
            return new Refusal("There is no such mark: it may have been taken away.", $"shop/sheets/{material}/stock");
        return project.ChangeStock(
            material,
            entries =>
                entries[stock] = entries[stock] with { Bad = [.. entries[stock].Bad.Where((_, i) => i != place)] }
        );
    }

    private static IReadOnlyList<StockSize> StockOf(this Project project, string material) =>
        project.Shop.Sheets.First(good => good.Id == material).Stock;

    private static Refusal? Missing(Project project, string material, int stock)
    {
        if (project.Shop.Sheets.All(good => good.Id != material))
            return new($"There is no material \"{material}\": it may have been taken away.", "shop/sheets");
        return stock >= 0 && stock < project.StockOf(material).Count
            ? null
            : new(
                $"\"{material}\" has no such stock size: it may have been taken away.",
                $"shop/sheets/{material}/stock"
            );
    }

    private static Outcome<Project> ChangeStock(this Project project, string material, Action<List<StockSize>> change)
    {
        List<StockSize> entries = [.. project.StockOf(material)];
        change(entries);
        return project.Change(job =>
            job with
            {
                Shop = job.Shop with
                {
                    Sheets =
                    [
                        .. job.Shop.Sheets.Select(good => good.Id == material ? good with { Stock = entries } : good),
                    ],
                },
            }
        );
    }

    private static string FreeId(Project project, string material)
    {
        var taken = project.Shop.Sheets.SelectMany(good => good.Stock).Select(size => size.Id).ToHashSet();
        return Enumerable.Range(1, int.MaxValue).Select(n => $"{material}-{n}").First(id => !taken.Contains(id));
    }
}

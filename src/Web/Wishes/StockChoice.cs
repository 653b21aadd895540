using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Web.Wishes;

/// <summary>A size of stock to choose.</summary>
/// <param name="Material">The material it is of.</param>
/// <param name="Index">Its place in the material's list, from 0.</param>
/// <param name="Size">The size.</param>
public sealed record StockChoice(SheetGood Material, int Index, StockSize Size)
{
    /// <summary>What tells it from the others, for a form.</summary>
    public string Key => $"{Material.Id}/{Index}";

    /// <summary>What it is called: material, size, and what is written on it.</summary>
    public string Name
    {
        get
        {
            var material = Material.Name.Length > 0 ? Material.Name : Material.Id;
            var written = Size.Id is { } id ? $", {id}" : "";
            return $"{material}, {Size.Length} × {Size.Width}{written}{(Size.Offcut ? ", offcut" : "")}";
        }
    }

    /// <summary>The path of its fields.</summary>
    public string Path => $"shop/sheets/{Material.Id}/stock/{Size.Id ?? $"{Index}"}";

    /// <summary>Every size of stock in the shop.</summary>
    public static IReadOnlyList<StockChoice> AllOf(Project project) =>
        [
            .. from material in project.Shop.Sheets
            from size in material.Stock.Index()
            select new StockChoice(material, size.Index, size.Item),
        ];
}

using Nookwright.Measure;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>Changes to the rack: offcuts that are kept for a job to come.</summary>
public static class RackEdits
{
    /// <summary>True when an offcut of this name, or a sheet, is there.</summary>
    public static bool HasOnRack(this Project project, string name) =>
        project.IdsIn("shop/sheets/stock").Contains(name);

    /// <summary>Puts an offcut on the rack; nothing changes when one of its name is there already.</summary>
    /// <param name="project">The document.</param>
    /// <param name="material">The material's id.</param>
    /// <param name="name">What is written on it, and its stock id from then on.</param>
    /// <param name="length">Along the figure.</param>
    /// <param name="width">Across it.</param>
    public static Outcome<Project> RackOffcut(
        this Project project,
        string material,
        string name,
        SizeText length,
        SizeText width
    )
    {
        if (project.Shop.Sheets.All(good => good.Id != material))
            return new Refusal(
                $"There is no material \"{material}\" here, and so no rack for its offcuts: add it, or give one its id. "
                    + $"There are {string.Join(", ", project.Shop.Sheets.Select(good => good.Id))}.",
                "shop/sheets"
            );
        if (project.HasOnRack(name))
            return project;
        var offcut = new StockSize
        {
            Id = name,
            Length = length,
            Width = width,
            Quantity = 1,
            Price = 0,
            Offcut = true,
        };
        SheetGood With(SheetGood good) => good.Id == material ? good with { Stock = [.. good.Stock, offcut] } : good;
        return project.Change(job => job with { Shop = job.Shop with { Sheets = [.. job.Shop.Sheets.Select(With)] } });
    }
}

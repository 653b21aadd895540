using System.Text.Json;
using System.Text.Json.Nodes;
using Nookwright.Records;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>Changes to what the maker wishes of the cutting plan, each by name.</summary>
public static class CuttingEdits
{
    /// <summary>Pins a part to a stock, or takes its pin away.</summary>
    /// <param name="project">The document.</param>
    /// <param name="panel">The part's panel.</param>
    /// <param name="stock">The id of the stock size it must come from; null for any.</param>
    public static Outcome<Project> PinPart(this Project project, string panel, string? stock)
    {
        var pins = project.Cutting.Pins.Select(pin => pin with { Panels = [.. pin.Panels.Where(p => p != panel)] });
        List<Pin> kept = [.. pins.Where(pin => pin.Panels.Count > 0 || pin.From == stock)];
        if (stock is not null && kept.FindIndex(pin => pin.From == stock) is var there && there >= 0)
            kept[there] = kept[there] with { Panels = [.. kept[there].Panels, panel] };
        else if (stock is not null)
            kept.Add(
                new()
                {
                    Id = FreeId("pin", kept.Select(pin => pin.Id)),
                    From = stock,
                    Panels = [panel],
                }
            );
        return project.ChangeCutting(cutting => cutting with { Pins = kept });
    }

    /// <summary>Keeps a sheet as it was planned.</summary>
    /// <param name="project">The document.</param>
    /// <param name="plan">The sheet alone and what it was asked for, in the form of <c>plan.schema.json</c>.</param>
    public static Outcome<Project> KeepSheet(this Project project, JsonObject plan)
    {
        var pin = new SheetPin
        {
            Id = FreeSheetId(project),
            Plan = JsonSerializer.SerializeToElement(plan, RecordJson.Options),
        };
        return project.ChangeCutting(cutting => cutting with { Sheets = [.. cutting.Sheets, pin] });
    }

    /// <summary>The id of the next sheet that is kept.</summary>
    public static string FreeSheetId(this Project project) =>
        FreeId("sheet", project.Cutting.Sheets.Select(pin => pin.Id));

    /// <summary>Lets a sheet that was kept change again.</summary>
    /// <param name="project">The document.</param>
    /// <param name="pin">The pin's id.</param>
    public static Outcome<Project> LetSheetChange(this Project project, string pin)
    {
        if (project.Cutting.Sheets.All(sheet => sheet.Id != pin))
            return new Refusal($"There is no kept sheet \"{pin}\": it may have been let go already.", "cutting/sheets");
        return project.ChangeCutting(cutting =>
            cutting with
            {
                Sheets = [.. cutting.Sheets.Where(sheet => sheet.Id != pin)],
            }
        );
    }

    /// <summary>Keeps parts from sharing a strip.</summary>
    /// <param name="project">The document.</param>
    /// <param name="panels">Panel ids, two or more.</param>
    public static Outcome<Project> KeepApart(this Project project, IReadOnlyList<string> panels)
    {
        if (panels.Distinct().Count() < 2)
            return new Refusal("It takes two parts to keep apart: name two panels or more.", "cutting/apart");
        var id = FreeId("apart", project.Cutting.Apart.Select(apart => apart.Id));
        return project.ChangeCutting(cutting =>
            cutting with
            {
                Apart = [.. cutting.Apart, new() { Id = id, Panels = panels }],
            }
        );
    }

    /// <summary>Takes a wish for parts apart away.</summary>
    public static Outcome<Project> LetTogether(this Project project, string apart)
    {
        if (project.Cutting.Apart.All(wish => wish.Id != apart))
            return new Refusal($"There is no wish \"{apart}\": it may have been taken away.", "cutting/apart");
        return project.ChangeCutting(cutting =>
            cutting with
            {
                Apart = [.. cutting.Apart.Where(wish => wish.Id != apart)],
            }
        );
    }

    /// <summary>Says whether a run may go on in another strip after one of its panels.</summary>
    /// <param name="project">The document.</param>
    /// <param name="run">The run's id.</param>
    /// <param name="panel">The panel.</param>
    /// <param name="may">True when it may.</param>
    public static Outcome<Project> SplitRunAfter(this Project project, string run, string panel, bool may)
    {
        if (project.Runs.All(known => known.Id != run))
            return new Refusal($"There is no run \"{run}\": it may have been taken away.", "runs");
        GrainRun Changed(GrainRun known) =>
            known with
            {
                MaySplitAfter =
                [
                    .. known.MaySplitAfter.Where(p => p != panel),
                    .. may ? [panel] : Array.Empty<string>(),
                ],
            };
        return project.Change(job =>
            job with
            {
                Runs = [.. job.Runs.Select(known => known.Id == run ? Changed(known) : known)],
            }
        );
    }

    /// <summary>Marks a place on a stock that nothing may be cut from.</summary>
    /// <param name="project">The document.</param>
    /// <param name="material">The material's id.</param>
    /// <param name="stock">The place of the stock size in the material's list, from 0.</param>
    /// <param name="bad">The place, as measured from the marked corner.</param>
    public static Outcome<Project> MarkBad(this Project project, string material, int stock, BadPlace bad)
    {
        if (project.Shop.Sheets.FirstOrDefault(good => good.Id == material) is not { } sheet)
            return new Refusal($"There is no material \"{material}\": it may have been taken away.", "shop/sheets");
        if (stock < 0 || stock >= sheet.Stock.Count)
            return new Refusal(
                $"\"{material}\" has {sheet.Stock.Count} stock sizes: name one of them.",
                $"shop/sheets/{material}/stock"
            );
        StockSize Marked(StockSize size) => size with { Bad = [.. size.Bad, bad] };
        SheetGood Changed(SheetGood good) =>
            good with
            {
                Stock = [.. good.Stock.Select((size, i) => i == stock ? Marked(size) : size)],
            };
        return project.Change(job =>
            job with
            {
                Shop = job.Shop with
                {
                    Sheets = [.. job.Shop.Sheets.Select(good => good.Id == material ? Changed(good) : good)],
                },
            }
        );
    }

    /// <summary>The wishes without the panels of a piece; a pin that holds nothing more goes, and so does a wish for one part alone.</summary>
    internal static CuttingWishes Without(this CuttingWishes wishes, string piece) =>
        wishes with
        {
            Pins =
            [
                .. wishes
                    .Pins.Select(pin => pin with { Panels = Edits.Without(pin.Panels, piece) })
                    .Where(pin => pin.Panels.Count > 0),
            ],
            Apart =
            [
                .. wishes
                    .Apart.Select(apart => apart with { Panels = Edits.Without(apart.Panels, piece) })
                    .Where(apart => apart.Panels.Count > 1),
            ],
        };

    /// <summary>The wishes with a piece by another id in the plans of the sheets that are kept.</summary>
    internal static CuttingWishes Renamed(this CuttingWishes wishes, string piece, string newId) =>
        wishes with
        {
            Sheets = [.. wishes.Sheets.Select(pin => pin with { Plan = IssueEdits.Renamed(pin.Plan, piece, newId) })],
        };

    private static Outcome<Project> ChangeCutting(this Project project, Func<CuttingWishes, CuttingWishes> change) =>
        project.Change(job => job with { Cutting = change(job.Cutting) });

    private static string FreeId(string stem, IEnumerable<string> taken)
    {
        var known = taken.ToHashSet();
        return Enumerable.Range(1, int.MaxValue).Select(n => $"{stem}-{n}").First(id => !known.Contains(id));
    }
}

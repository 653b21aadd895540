using System.CommandLine;
using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Measure;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Cli.Commands;

/// <summary>The options that give <c>cut</c> a bare list instead of a job.</summary>
public sealed class ListOptions
{
    private readonly Option<string?> _parts = new("--parts")
    {
        Description = "Parts: label,quantity,length,width,material,grain,match,run and more, see docs/lists.md.",
        HelpName = "CSV",
    };

    private readonly Option<string?> _stock = new("--stock")
    {
        Description = "Sheets: material,length,width,quantity,price and more; the figure runs along the length.",
        HelpName = "CSV",
    };

    private readonly Option<string?> _shop = new("--shop")
    {
        Description = "Saws and limits, in the form of a job's \"shop\"; the usual ones without it.",
        HelpName = "JSON",
    };

    private readonly UnitOption _units = new("What a bare number in the lists means: in or mm.");

    /// <summary>All of them.</summary>
    public IReadOnlyList<Option> All => [_parts, _stock, _shop, _units];

    /// <summary>True when a list is given.</summary>
    public bool IsGiven(ParseResult parsed) =>
        parsed.GetValue(_parts) is not null || parsed.GetValue(_stock) is not null;

    /// <summary>The unit of bare numbers.</summary>
    public LengthUnit Unit(ParseResult parsed) => _units.Of(parsed);

    /// <summary>What is to be cut, or why the lists cannot be taken.</summary>
    public Outcome<AskedOfLists> Read(ParseResult parsed)
    {
        if (parsed.GetValue(_parts) is not { } parts || parsed.GetValue(_stock) is not { } stock)
            return new Refusal("nookwright: A list needs both --parts FILE and --stock FILE.");
        var unit = Unit(parsed);
        return TextFile(parts)
            .Then(text => PartsCsv.Read(text, parts, unit))
            .Then(listed =>
                TextFile(stock)
                    .Then(text => StockCsv.Read(text, stock, unit))
                    .Then(sheets =>
                        Saws(parsed.GetValue(_shop), unit)
                            .Then(saws => BareList.Request(listed, sheets, saws, new CutRules(), parts))
                            .Then<AskedOfLists>(request => new AskedOfLists(
                                parts,
                                listed,
                                sheets,
                                request with
                                {
                                    Units = unit,
                                }
                            ))
                    )
            );
    }

    private static Outcome<SawLimits> Saws(string? file, LengthUnit unit) =>
        file is null ? ShopFile.Usual(unit) : TextFile(file).Then(text => ShopFile.Read(text, file, unit));

    private static Outcome<string> TextFile(string path)
    {
        if (Directory.Exists(path))
            return new Refusal("This is a folder: name the file in it.", File: path);
        if (!File.Exists(path))
            return new Refusal("There is no such file: check the name.", File: path);
        return File.ReadAllText(path);
    }
}

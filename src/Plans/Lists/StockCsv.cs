using Nookwright.Measure;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>A line of a bare list of sheets.</summary>
/// <param name="Material">The material's id; null for the only one there is.</param>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across it.</param>
/// <param name="Quantity">How many there are; null for as many as needed.</param>
/// <param name="Price">Of one; null when unknown.</param>
/// <param name="Line">Its line in the file.</param>
public sealed record ListedSheet(string? Material, Length Length, Length Width, int? Quantity, decimal? Price, int Line)
{
    /// <summary>What is written on it, for parts that must come from it; or null.</summary>
    public string? Name { get; init; }

    /// <summary>How thick it is, for the packet; null when nobody says.</summary>
    public Length? Thickness { get; init; }

    /// <summary>True for a piece from the rack, used before any sheet.</summary>
    public bool IsOffcut { get; init; }

    /// <summary>False for material without figure, whose parts may be turned freely.</summary>
    public bool HasFigure { get; init; } = true;

    /// <summary>Whether its factory edges may be measured from undressed; null for what the shop does.</summary>
    public bool? TrustsEdges { get; init; }

    /// <summary>How far its ends are out of square, over its whole width.</summary>
    public Length OutOfSquare { get; init; }

    /// <summary>Mass per area in kg/m²; null when unknown.</summary>
    public decimal? KilogramsPerSquareMetre { get; init; }

    /// <summary>Places nothing may be cut from.</summary>
    public IReadOnlyList<BadArea> Bad { get; init; } = [];
}

/// <summary>
/// Reads a bare list of sheets:
/// <c>material,length,width,quantity,price,name,thickness,offcut,figure,trusted,square,weight,bad</c>. The figure runs along
/// the length.
/// </summary>
/// <remarks><c>length</c> and <c>width</c> must be there. All columns are told of in <c>docs/lists.md</c>.</remarks>
public static class StockCsv
{
    private const int MostSheets = 100_000;

    private static readonly string[] Needed = ["length", "width"];

    private static readonly string[] Known =
    [
        "material",
        "length",
        "width",
        "quantity",
        "price",
        "name",
        "thickness",
        "offcut",
        "figure",
        "trusted",
        "square",
        "weight",
        "bad",
    ];

    /// <summary>The sheets, in the order of the file; or why the list cannot be read, with line and column.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name, for messages.</param>
    /// <param name="bare">The unit of a length that has none.</param>
    public static Outcome<IReadOnlyList<ListedSheet>> Read(string text, string file, LengthUnit bare)
    {
        if (!CsvTable.Read(text, file, Needed, Known).Take(out var table, out var refusal))
            return refusal;
        var sheets = new List<ListedSheet>();
        foreach (var row in table.Rows)
        {
            sheets.Add(Sheet(row, bare));
            if (row.Trouble is { } trouble)
                return trouble;
        }
        return NamedTwice(sheets) is { } twice ? twice with { File = file } : sheets;
    }

    private static ListedSheet Sheet(CsvRow row, LengthUnit bare)
    {
        var (length, width) = (row.Size("length", bare), row.Size("width", bare));
        var isOffcut = row.YesNo("offcut") ?? false;
        var count = row.Count("quantity", MostSheets);
        return new(row.Name("material"), length, width, count ?? (isOffcut ? 1 : null), row.Money("price"), row.Line)
        {
            Name = row.Name("name"),
            Thickness = row.Name("thickness") is null ? null : row.Size("thickness", bare),
            IsOffcut = isOffcut,
            HasFigure = row.YesNo("figure") ?? true,
            TrustsEdges = row.YesNo("trusted"),
            OutOfSquare = row.Name("square") is null ? Length.Zero : row.Amount("square", bare),
            KilogramsPerSquareMetre = row.Number("weight", 200),
            Bad = BadPlaces.Read(row, "bad", bare, length, width),
        };
    }

    private static Refusal? NamedTwice(List<ListedSheet> sheets) =>
        sheets.Where(s => s.Name is not null).GroupBy(s => s.Name).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? new(
                $"\"{twice.Key}\" is the name of two sheets, first on line {twice.First().Line}; give one another name.",
                "name",
                Line: twice.Last().Line
            )
            : null;
}

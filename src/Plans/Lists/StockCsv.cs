using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>A line of a bare list of sheets.</summary>
/// <param name="Material">The material's id; null for the only one there is.</param>
/// <param name="Length">Along the figure.</param>
/// <param name="Width">Across it.</param>
/// <param name="Quantity">How many there are; null for as many as needed.</param>
/// <param name="Price">Of one; null when unknown.</param>
/// <param name="Line">Its line in the file.</param>
public sealed record ListedSheet(
    string? Material,
    Length Length,
    Length Width,
    int? Quantity,
    decimal? Price,
    int Line
);

/// <summary>Reads a bare list of sheets: <c>material,length,width,quantity,price</c>. The figure runs along the length.</summary>
public static class StockCsv
{
    private const int MostSheets = 100_000;

    private static readonly string[] Needed = ["length", "width"];

    private static readonly string[] Known = ["material", "length", "width", "quantity", "price"];

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
            sheets.Add(
                new(
                    row.Name("material"),
                    row.Size("length", bare),
                    row.Size("width", bare),
                    row.Count("quantity", MostSheets),
                    row.Money("price"),
                    row.Line
                )
            );
            if (row.Trouble is { } trouble)
                return trouble;
        }
        return sheets;
    }
}

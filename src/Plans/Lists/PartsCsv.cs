using Nookwright.Measure;
using Nookwright.Planning;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>A line of a bare list of parts.</summary>
/// <param name="Label">What is written on them.</param>
/// <param name="Quantity">How many.</param>
/// <param name="Length">One way.</param>
/// <param name="Width">The other way.</param>
/// <param name="Material">The material's id; null for the only one there is.</param>
/// <param name="Figure">Which side the figure runs along.</param>
/// <param name="Match">The match group, or null.</param>
/// <param name="Run">The running grain, or null.</param>
/// <param name="Line">Its line in the file.</param>
public sealed record ListedPart(
    string Label,
    int Quantity,
    Length Length,
    Length Width,
    string? Material,
    PanelFigure Figure,
    string? Match,
    string? Run,
    int Line
)
{
    /// <summary>The piece they belong to, or null.</summary>
    public string? Piece { get; init; }

    /// <summary>The wish that they, and all others of its name, come from different strips; or null.</summary>
    public string? Apart { get; init; }

    /// <summary>The name of the sheet they must come from, or null.</summary>
    public string? From { get; init; }

    /// <summary>The reading they wait for, or null for parts that are cut to size now.</summary>
    public string? Awaits { get; init; }

    /// <summary>True when their run may go on in another strip after them.</summary>
    public bool MaySplit { get; init; }

    /// <summary>How far the next part of their run stands from each of them in place; null when nobody says.</summary>
    public Length? Gap { get; init; }

    /// <summary>Which of their sides lies across the strip of their run; null when nobody says.</summary>
    public MatchedSide? Height { get; init; }
}

/// <summary>
/// Reads a bare list of parts:
/// <c>label,quantity,length,width,material,grain,match,run,height,split,gap,piece,apart,from,awaits</c>.
/// </summary>
/// <remarks>
/// <c>label</c>, <c>length</c> and <c>width</c> must be there. Quantity is 1, and grain <c>any</c>, when not given. Grain
/// <c>length</c> or <c>width</c> says which side of the part the figure runs along. All columns are told of in
/// <c>docs/lists.md</c>.
/// </remarks>
public static class PartsCsv
{
    private static readonly string[] Needed = ["label", "length", "width"];

    private static readonly string[] Known =
    [
        "label",
        "quantity",
        "length",
        "width",
        "material",
        "grain",
        "match",
        "run",
        "height",
        "split",
        "gap",
        "piece",
        "apart",
        "from",
        "awaits",
    ];

    /// <summary>The parts, in the order of the file; or why the list cannot be read, with line and column.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name, for messages.</param>
    /// <param name="bare">The unit of a length that has none.</param>
    public static Outcome<IReadOnlyList<ListedPart>> Read(string text, string file, LengthUnit bare)
    {
        if (!CsvTable.Read(text, file, Needed, Known).Take(out var table, out var refusal))
            return refusal;
        var parts = new List<ListedPart>();
        foreach (var row in table.Rows)
        {
            parts.Add(Part(row, bare));
            if (row.Trouble is { } trouble)
                return trouble;
        }
        if (parts.Sum(p => (long)p.Quantity) is var count and > Planner.MostParts)
            return new Refusal(
                $"The list has {count} parts, and one plan takes {Planner.MostParts}; cut it into several lists.",
                "quantity",
                File: file
            );
        return parts;
    }

    private static ListedPart Part(CsvRow row, LengthUnit bare) =>
        new(
            row.Needed("label"),
            row.Count("quantity", Planner.MostParts) ?? 1,
            row.Size("length", bare),
            row.Size("width", bare),
            row.Name("material"),
            row.Choice("grain", ("any", PanelFigure.Any), ("length", PanelFigure.Length), ("width", PanelFigure.Width)),
            row.Name("match"),
            row.Name("run"),
            row.Line
        )
        {
            Piece = row.Name("piece"),
            Apart = row.Name("apart"),
            From = row.Name("from"),
            Awaits = row.Name("awaits"),
            MaySplit = row.YesNo("split") ?? false,
            Gap = row.Name("gap") is null ? null : row.Amount("gap", bare),
            Height = row.Choice<MatchedSide?>(
                "height",
                ("", null),
                ("length", MatchedSide.Length),
                ("width", MatchedSide.Width)
            ),
        };
}

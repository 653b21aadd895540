namespace Nookwright.Cli;

/// <summary>A table in plain text: columns padded to their widest cell, numbers to the right.</summary>
/// <param name="heads">The heads; one that ends in <c>&gt;</c> sets its column to the right.</param>
public sealed class TextTable(params IReadOnlyList<string> heads)
{
    private readonly List<IReadOnlyList<string>> _rows = [];

    /// <summary>Adds a row; it has a cell for every head.</summary>
    public TextTable Row(params IReadOnlyList<string> cells)
    {
        ArgumentOutOfRangeException.ThrowIfNotEqual(cells.Count, heads.Count);
        _rows.Add(cells);
        return this;
    }

    /// <summary>The lines, without trailing blanks.</summary>
    public IEnumerable<string> Lines()
    {
        var names = heads.Select(h => h.TrimEnd('>')).ToList();
        var widths = names.Select((name, i) => _rows.Select(r => r[i].Length).Append(name.Length).Max()).ToList();
        yield return Line(names, widths);
        yield return string.Join("  ", widths.Select(w => new string('-', w)));
        foreach (var row in _rows)
            yield return Line(row, widths);
    }

    private string Line(IReadOnlyList<string> cells, List<int> widths) =>
        string.Join("  ", cells.Select((cell, i) => IsRight(i) ? cell.PadLeft(widths[i]) : cell.PadRight(widths[i])))
            .TrimEnd();

    private bool IsRight(int column) => heads[column].EndsWith('>');
}

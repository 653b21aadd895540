using CsvHelper;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>A list with a header line, as spreadsheets save it: comma, semicolon or tab between columns.</summary>
internal sealed class CsvTable
{
    private CsvTable(IReadOnlyList<string> columns, IReadOnlyList<CsvRow> rows) => (Columns, Rows) = (columns, rows);

    /// <summary>The names of the columns there are, in lower case.</summary>
    public IReadOnlyList<string> Columns { get; }

    /// <summary>The rows, empty ones left out.</summary>
    public IReadOnlyList<CsvRow> Rows { get; }

    /// <summary>Reads a list.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name, for messages.</param>
    /// <param name="needed">Columns that must be there.</param>
    /// <param name="known">All columns that may be.</param>
    public static Outcome<CsvTable> Read(string text, string file, string[] needed, string[] known)
    {
        var lines = Lines(text);
        if (lines.Count == 0)
            return new Refusal(
                $"The list is empty; its first line names the columns: {string.Join(",", known)}.",
                File: file,
                Line: 1
            );
        List<string> columns = [.. lines[0].Fields.Select(f => f.Trim().ToLowerInvariant())];
        if (Header(columns, needed, known) is { } trouble)
            return trouble with { File = file, Line = lines[0].Line };
        var rows = lines.Skip(1).Where(l => l.Fields.Any(f => f.Trim().Length > 0)).ToList();
        var odd = rows.FirstOrDefault(r => r.Fields.Skip(columns.Count).Any(f => f.Trim().Length > 0));
        if (odd.Fields is not null)
            return new Refusal(
                $"This line has {odd.Fields.Length} fields and the header {columns.Count}; put a field that has a comma in quotes.",
                File: file,
                Line: odd.Line
            );
        if (rows.Count == 0)
            return new Refusal(
                "The list has a header and nothing under it; add a line for each part or sheet.",
                File: file,
                Line: lines[0].Line
            );
        return new CsvTable(columns, [.. rows.Select(r => new CsvRow(file, r.Line, columns, r.Fields))]);
    }

    private static Refusal? Header(List<string> columns, string[] needed, string[] known)
    {
        var names = string.Join(",", known);
        if (needed.FirstOrDefault(n => !columns.Contains(n)) is { } missing)
            return new($"There is no column \"{missing}\" in the first line; the columns are {names}.", missing);
        if (columns.FirstOrDefault(c => c.Length > 0 && !known.Contains(c)) is { } strange)
            return new($"The column \"{strange}\" means nothing here; the columns are {names}.", strange);
        return columns.Where(c => c.Length > 0).GroupBy(c => c).FirstOrDefault(g => g.Count() > 1) is { } twice
            ? new($"The column \"{twice.Key}\" is there twice; keep one.", twice.Key)
            : null;
    }

    private static List<(int Line, string[] Fields)> Lines(string text)
    {
        // An inch mark inside a field is no quote (23 3/4"); one that opens a field and never closes ends with its line.
        var options = new CsvReaderOptions
        {
            HasHeader = false,
            TrackLineNumbers = true,
            TrimWhitespace = true,
            AllowLineBreaksInQuotes = false,
            MalformedData = CsvMalformedDataHandling.Recover,
            FieldCountMismatch = CsvFieldCountHandling.Allow,
        };
        using var reader = CsvReader.FromText(text.TrimStart('\uFEFF'), options);
        var lines = new List<(int, string[])>();
        while (reader.Read())
            lines.Add(((int)reader.LineNumber, [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)]));
        return lines;
    }
}

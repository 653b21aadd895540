using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Nookwright.Projects;
using Nookwright.Records;
using Nookwright.Trouble;

namespace Nookwright.Files;

/// <summary>A job as text: JSON (RFC 8259) with comments and trailing commas taken, never written.</summary>
public static class JobText
{
    private const string Format = "nookwright-job";

    private const string Hint = $"a job begins with {{ \"format\": \"{Format}\", \"version\": 1, … }}";

    private const int MostNested = 64;

    internal static JsonReaderOptions ReaderOptions =>
        new()
        {
            CommentHandling = JsonCommentHandling.Skip,
            AllowTrailingCommas = true,
            MaxDepth = MostNested,
        };

    /// <summary>The project as text: stable order and layout, defaults left out, unknown fields kept after the known ones.</summary>
    public static string Write(Project project) => JsonLayout.Write(RecordJson.ToJson(project));

    /// <summary>Reads a job; all that is wrong with it is said at once, with file and line.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">The file's name as the user gave it, for messages.</param>
    /// <param name="migrations">The steps that bring older documents up to date; those of this program when null.</param>
    public static OpenedJob Open(string text, string fileName, Migrations? migrations = null)
    {
        var utf8 = Encoding.UTF8.GetBytes(text.TrimStart('\uFEFF'));
        if (!LinesOf(utf8).Take(out var lines, out var notJson))
            return OpenedJob.Refused(notJson with { File = fileName });
        return Take(utf8, lines, migrations ?? Migrations.Known, out var project) is { Count: > 0 } found
            ? new(null, [.. found.Select(r => lines.Placed(r, fileName)).OrderBy(r => r.Line)], lines)
            : new(project, [], lines);
    }

    private static List<Refusal> Take(byte[] utf8, FieldLines lines, Migrations migrations, out Project? project)
    {
        project = null;
        if (lines.Doubles().ToList() is { Count: > 0 } doubles)
            return doubles;
        var json = JsonNode.Parse(utf8, documentOptions: DocumentOptions);
        if (NotAJob(json) is { } strange)
            return [strange];
        var document = json!.AsObject();
        if (migrations.BringUpToDate(document) is { } version)
            return [version];
        var unfit = FormCheck.Of(document, Forms.Of<Project>()).ToList();
        if (unfit.Count > 0)
            return unfit;
        project = RecordJson.FromJson<Project>(document);
        return [.. ProjectChecks.Of(project)];
    }

    private static JsonDocumentOptions DocumentOptions =>
        new()
        {
            CommentHandling = ReaderOptions.CommentHandling,
            AllowTrailingCommas = ReaderOptions.AllowTrailingCommas,
            MaxDepth = ReaderOptions.MaxDepth,
        };

    private static Refusal? NotAJob(JsonNode? json)
    {
        if (json is not JsonObject document)
            return new($"This is JSON but not a job: {Hint}.");
        if (document["format"] is not { } format)
            return new($"This file does not say that it is a job: {Hint}.", "format");
        return format.GetValueKind() is JsonValueKind.String && format.GetValue<string>() == Format
            ? null
            : new($"This is a file of another kind: {Hint}.", "format");
    }

    private static Outcome<FieldLines> LinesOf(byte[] utf8)
    {
        if (utf8.All(letter => letter is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n'))
            return new Refusal($"The file is empty: {Hint}.", Line: 1);
        try
        {
            return FieldLines.Of(utf8);
        }
        catch (JsonException stop)
        {
            return NotJson(utf8, (int)stop.LineNumber!.Value, (int)stop.BytePositionInLine!.Value);
        }
    }

    private static Refusal NotJson(byte[] utf8, int lineBefore, int bytesBefore)
    {
        var start = 0;
        for (var i = 0; i < lineBefore; i++)
            start = Array.IndexOf(utf8, (byte)'\n', start) + 1;
        var at = Math.Min(start + bytesBefore, utf8.Length);
        var column = Encoding.UTF8.GetCharCount(utf8, start, at - start) + 1;
        if (IsTooDeep(utf8))
            return new(
                $"Brackets stand more than {MostNested} deep here, and no job needs that.",
                null,
                column,
                Line: lineBefore + 1
            );
        return new(WhyNot(Encoding.UTF8.GetString(utf8, at, utf8.Length - at)), Column: column, Line: lineBefore + 1);
    }

    private static bool IsTooDeep(byte[] utf8)
    {
        var reader = new Utf8JsonReader(utf8, ReaderOptions with { MaxDepth = int.MaxValue });
        try
        {
            while (reader.Read())
                if (reader.CurrentDepth >= MostNested)
                    return true;
        }
        catch (JsonException) { } // It broke before it got too deep.
        return false;
    }

    private static string WhyNot(string rest) =>
        string.IsNullOrWhiteSpace(rest)
            ? "The file ends too early: a closing } or ] or a quote is missing, and what followed may be lost. "
                + "Mend it, or go back to the version before, kept beside it as .bak."
            : $"This is not JSON from {Near(rest)} on: look there, or just before, for a missing comma, quote or bracket.";

    private static string Near(string rest)
    {
        var line = rest.Split('\n', 2)[0].Trim();
        return $"‹{(line.Length <= 30 ? line : string.Concat(line.AsSpan(0, 29), "…"))}›";
    }
}

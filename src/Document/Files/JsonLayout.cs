using System.Text;
using System.Text.Json.Nodes;
using Nookwright.Records;

namespace Nookwright.Files;

/// <summary>Lays JSON out for people and for comparing versions: two spaces in, one field a line, short things whole on one line.</summary>
internal static class JsonLayout
{
    private const int Widest = 110;

    /// <summary>The JSON as text, ending with a line break.</summary>
    public static string Write(JsonObject json)
    {
        var text = new StringBuilder();
        Write(text, json, "", 0);
        return text.Append('\n').ToString();
    }

    private static void Write(StringBuilder text, JsonNode? json, string indent, int used)
    {
        var line = OnOneLine(json);
        if (line is not null && (json is JsonValue or null || indent.Length + used + line.Length <= Widest))
            text.Append(line);
        else if (json is JsonObject thing)
            WriteLines(text, ('{', '}'), thing.Select(field => (Plain(field.Key) + ": ", field.Value)), indent);
        else
            WriteLines(text, ('[', ']'), json!.AsArray().Select(item => ("", item)), indent);
    }

    private static void WriteLines(
        StringBuilder text,
        (char Open, char Close) brackets,
        IEnumerable<(string Start, JsonNode? Value)> members,
        string indent
    )
    {
        var inner = indent + "  ";
        var before = brackets.Open;
        foreach (var (start, value) in members)
        {
            text.Append(before).Append('\n').Append(inner).Append(start);
            Write(text, value, inner, start.Length + 1);
            before = ',';
        }
        text.Append('\n').Append(indent).Append(brackets.Close);
    }

    private static string? OnOneLine(JsonNode? json) =>
        json switch
        {
            JsonObject { Count: 0 } => "{}",
            JsonArray { Count: 0 } => "[]",
            JsonObject thing => thing.All(field => field.Value is JsonValue or null)
                ? $"{{ {string.Join(", ", thing.Select(field => $"{Plain(field.Key)}: {Plain(field.Value)}"))} }}"
                : null,
            JsonArray items => items.All(item => item is JsonValue or null)
                ? $"[{string.Join(", ", items.Select(Plain))}]"
                : null,
            _ => Plain(json),
        };

    private static string Plain(JsonNode? json) => json?.ToJsonString(RecordJson.Options) ?? "null";
}

using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using Nookwright.Trouble;

namespace Nookwright.Records;

/// <summary>Holds JSON against the form it should have, and says everything that does not fit, each with its field.</summary>
public static class FormCheck
{
    private const int LongestText = 10_000;

    /// <summary>What does not fit; nothing when it can be turned into records.</summary>
    public static IEnumerable<Refusal> Of(JsonNode? json, Form form, string path = "") =>
        form switch
        {
            Form.Record record => json is JsonObject thing
                ? OfRecord(thing, record, path)
                : [Expected(form, json, path)],
            Form.OneOf kinds => json is JsonObject thing ? OfKind(thing, kinds, path) : [Expected(form, json, path)],
            Form.ListOf list => json is JsonArray items ? OfItems(items, list, path) : [Expected(form, json, path)],
            _ => Fits(json, form) ? OfLength(json!, path) : [Expected(form, json, path)],
        };

    private static IEnumerable<Refusal> OfRecord(JsonObject thing, Form.Record record, string path)
    {
        foreach (var field in record.Fields)
        {
            var fieldPath = FieldPath.Under(path, field.Name);
            if (thing[field.Name] is { } value)
                foreach (var refusal in Of(value, field.Form, fieldPath))
                    yield return refusal;
            else if (field.Required)
                yield return new(
                    $"This field is missing and cannot be left out: write {field.Form.InWords}.",
                    fieldPath
                );
        }
    }

    private static IEnumerable<Refusal> OfKind(JsonObject thing, Form.OneOf kinds, string path)
    {
        var words = new Form.Choice([.. kinds.Kinds.Select(kind => kind.Key)], kinds.Type);
        var kindPath = FieldPath.Under(path, Forms.Kind);
        if (thing[Forms.Kind] is not { } kind)
            return [new($"This field is missing and cannot be left out: write {words.InWords}.", kindPath)];
        return Fits(kind, words)
            ? OfRecord(thing, kinds.Kinds.First(known => known.Key == kind.GetValue<string>()).Value, path)
            : [Expected(words, kind, kindPath)];
    }

    private static IEnumerable<Refusal> OfItems(JsonArray items, Form.ListOf list, string path) =>
        items.SelectMany((item, i) => Of(item, list.Item, FieldPath.Under(path, FieldPath.KeyOf(item, i))));

    private static IEnumerable<Refusal> OfLength(JsonNode json, string path)
    {
        if (
            json.GetValueKind() is JsonValueKind.String
            && json.GetValue<string>().Length is > LongestText and var length
        )
            yield return new(
                $"This text has {length} characters; the longest taken is {LongestText}: shorten it.",
                path
            );
    }

    private static bool Fits(JsonNode? json, Form form) =>
        (form, json?.GetValueKind()) switch
        {
            (Form.Size, JsonValueKind.Number) => true,
            (Form.Size, JsonValueKind.String) => !string.IsNullOrWhiteSpace(json!.GetValue<string>()),
            (Form.Text, JsonValueKind.String) => true,
            (Form.Choice choice, JsonValueKind.String) => choice.Words.Contains(json!.GetValue<string>()),
            (Form.YesNo, JsonValueKind.True or JsonValueKind.False) => true,
            (Form.Day, JsonValueKind.String) => IsDay(json!.GetValue<string>()),
            (Form.Plan, JsonValueKind.Object) => json!["format"] is JsonValue word
                && word.TryGetValue(out string? format)
                && format == "nookwright-plan",
            (Form.Count count, JsonValueKind.Number) => json is JsonValue number
                && number.TryGetValue(out int whole)
                && whole >= count.Least
                && whole <= count.Most,
            (Form.Number limits, JsonValueKind.Number) => json is JsonValue number
                && number.TryGetValue(out decimal amount)
                && amount >= limits.Least
                && amount <= limits.Most,
            _ => false,
        };

    private static bool IsDay(string text) =>
        DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _);

    private static Refusal Expected(Form form, JsonNode? json, string path) =>
        new($"Expected {form.InWords}, found {Found(json)}.", path);

    private static string Found(JsonNode? json) =>
        json?.GetValueKind() switch
        {
            null or JsonValueKind.Null => "nothing (null)",
            JsonValueKind.Object => "fields in { }",
            JsonValueKind.Array => "a list in [ ]",
            JsonValueKind.String when json.GetValue<string>().Length == 0 => "empty text",
            _ => Shortened(json.ToJsonString(RecordJson.Options)),
        };

    private static string Shortened(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 57), "…");
}

using System.Collections;
using System.Globalization;
using System.Text.Json;

namespace Nookwright.Records;

/// <summary>One field of a record that holds a single value.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Field">What it is.</param>
/// <param name="Form">What may stand in it; for an item of a list of texts, the form of the item.</param>
/// <param name="Value">What stands in it; null for nothing.</param>
/// <param name="Within">The names of the lists and records it stands in and their keys, below the record asked about.</param>
public sealed record Leaf(string Path, FormField Field, Form Form, object? Value, IReadOnlyList<string> Within)
{
    /// <summary>What stands in it, as typed; empty for nothing.</summary>
    public string Text =>
        Value switch
        {
            null => "",
            bool yes => yes ? "yes" : "no",
            DateOnly day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            Enum word => JsonNamingPolicy.KebabCaseLower.ConvertName(word.ToString()),
            IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
            _ => Value.ToString()!,
        };
}

/// <summary>Walks through all that is written in a record, in the order of the file, fields left out among them.</summary>
public static class Leaves
{
    /// <summary>The single values below a record.</summary>
    /// <param name="record">The record.</param>
    /// <param name="path">Where it is.</param>
    public static IEnumerable<Leaf> Of(Kept record, string path = "") => Of(record, path, []);

    /// <summary>The records below a record and that record itself, each with its path.</summary>
    public static IEnumerable<(string Path, Kept Record)> RecordsOf(Kept record, string path = "")
    {
        yield return (path, record);
        foreach (var field in ((Form.Record)Forms.Of(record.GetType())).Fields)
        foreach (var (step, inner) in RecordsIn(field.Property.GetValue(record)))
        foreach (var below in RecordsOf(inner, FieldPath.Under(path, field.Name) + step))
            yield return below;
    }

    /// <summary>What an item of a list goes by; the same rule as <see cref="FieldPath.KeyOf"/>.</summary>
    public static string KeyOf(Kept item, int index) =>
        Text(item, "Id") ?? Text(item, "Name") ?? index.ToString(CultureInfo.InvariantCulture);

    private static IEnumerable<Leaf> Of(Kept record, string path, IReadOnlyList<string> within)
    {
        foreach (var field in ((Form.Record)Forms.Of(record.GetType())).Fields)
        {
            var value = field.Property.GetValue(record);
            var under = FieldPath.Under(path, field.Name);
            var below = value switch
            {
                Kept inner => Of(inner, under, [.. within, field.Name]),
                IEnumerable items and not string => OfItems(items, field, under, [.. within, field.Name]),
                _ => [new(under, field, field.Form, value, within)],
            };
            foreach (var leaf in below)
                yield return leaf;
        }
    }

    private static IEnumerable<(string Step, Kept Record)> RecordsIn(object? value) =>
        value switch
        {
            Kept record => [("", record)],
            IEnumerable items and not string => items
                .Cast<object>()
                .Index()
                .Where(item => item.Item is Kept)
                .Select(item => ("/" + KeyOf((Kept)item.Item, item.Index), (Kept)item.Item)),
            _ => [],
        };

    private static IEnumerable<Leaf> OfItems(
        IEnumerable items,
        FormField field,
        string path,
        IReadOnlyList<string> within
    )
    {
        var itemForm = ((Form.ListOf)field.Form).Item;
        foreach (var (index, item) in items.Cast<object>().Index())
        {
            var key = item is Kept thing ? KeyOf(thing, index) : $"{index}";
            var under = FieldPath.Under(path, key);
            var below = item is Kept inner
                ? Of(inner, under, [.. within, key])
                : [new(under, field, itemForm, item, [.. within, key])];
            foreach (var leaf in below)
                yield return leaf;
        }
    }

    private static string? Text(Kept item, string property)
    {
        var text = item.GetType().GetProperty(property)?.GetValue(item) as string;
        return FieldPath.IsStep(text) ? text : null;
    }
}

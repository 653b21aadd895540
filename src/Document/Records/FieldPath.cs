using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Nookwright.Records;

/// <summary>How a place in the document is named: steps joined by <c>/</c>, things in a list by their id (<c>pieces/box-1/width</c>).</summary>
/// <remarks>A thing in a list goes by its <c>id</c>, else by its <c>name</c>, else by its number in the list, from 0.</remarks>
public static class FieldPath
{
    /// <summary>The path of a step under another.</summary>
    public static string Under(string path, string step) => path.Length == 0 ? step : $"{path}/{step}";

    /// <summary>What an item of a list goes by.</summary>
    public static string KeyOf(JsonNode? item, int index) =>
        UsableKey(item, "id") ?? UsableKey(item, "name") ?? index.ToString(CultureInfo.InvariantCulture);

    /// <summary>The place of the item a step means, or -1.</summary>
    public static int IndexOf(JsonArray list, string step)
    {
        for (var i = 0; i < list.Count; i++)
            if (KeyOf(list[i], i) == step)
                return i;
        var isNumber = int.TryParse(step, NumberStyles.None, CultureInfo.InvariantCulture, out var index);
        return isNumber && index < list.Count ? index : -1;
    }

    /// <summary>True when a text can be a step of a path.</summary>
    internal static bool IsStep(string? text) => !string.IsNullOrEmpty(text) && !text.Contains('/');

    private static string? UsableKey(JsonNode? item, string field) =>
        item is JsonObject thing
        && thing.TryGetPropertyValue(field, out var value)
        && value?.GetValueKind() is JsonValueKind.String
        && value.GetValue<string>() is var key
        && IsStep(key)
            ? key
            : null;
}

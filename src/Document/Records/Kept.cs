using System.Text.Json;
using System.Text.Json.Serialization;

namespace Nookwright.Records;

/// <summary>A piece of the document that keeps the fields it does not know, so that nothing a newer program or a person added is lost.</summary>
public abstract record Kept
{
    /// <summary>Fields this program does not know, as they stood; null when there are none.</summary>
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Unknown { get; init; }
}

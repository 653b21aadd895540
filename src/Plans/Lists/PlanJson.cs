using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Sawing;

namespace Nookwright.Lists;

/// <summary>A plan as JSON, for scripts and machines. Its schema is <c>docs/plan.schema.json</c>.</summary>
/// <remarks>
/// The top says in numbers how good the plan is: <c>sheets</c>, <c>settings</c>, <c>visits</c>, <c>valid</c>, <c>waste</c>;
/// <c>plan</c> holds the plan itself. Lengths are exact millimetres.
/// </remarks>
public static class PlanJson
{
    /// <summary>The version of this form.</summary>
    public const int Version = 1;

    internal static readonly JsonSerializerOptions Options = MakeOptions();

    /// <summary>The plan as indented text.</summary>
    public static string Write(Plan plan, CutRequest request) => ToJson(plan, request).ToJsonString(Options) + "\n";

    /// <summary>The plan as JSON.</summary>
    public static JsonObject ToJson(Plan plan, CutRequest request)
    {
        var verdict = VirtualSaw.Run(plan, request);
        return new()
        {
            ["format"] = "nookwright-plan",
            ["version"] = Version,
            ["units"] = "mm",
            ["sheets"] = plan.Sheets.Count,
            ["settings"] = plan.Settings,
            ["visits"] = plan.Visits.Count,
            ["valid"] = verdict.Accepted,
            ["waste"] = Math.Round(PlanAreas.Waste(plan), 6),
            ["dimensions"] = plan.DimensionsNow,
            ["why"] = verdict.Why,
            ["findings"] = Node(plan.Findings),
            ["parts"] = Node(request.Parts),
            ["plan"] = new JsonObject
            {
                ["sheets"] = Node(plan.Sheets),
                ["workpieces"] = Node(plan.Workpieces),
                ["breakdown"] = Node(plan.Breakdown),
                ["visits"] = Node(plan.Visits),
            },
        };
    }

    internal static JsonNode? Node<T>(T value) => JsonSerializer.SerializeToNode(value, Options);

    private static JsonSerializerOptions MakeOptions()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            WriteIndented = true,
        };
        options.Converters.Add(new Millimetres());
        options.Converters.Add(new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower));
        return options;
    }

    /// <summary>Exact: six decimals of a millimetre are a nanometre.</summary>
    private sealed class Millimetres : JsonConverter<Length>
    {
        public override Length Read(ref Utf8JsonReader reader, Type type, JsonSerializerOptions options) =>
            Length.FromMillimetres(reader.GetDecimal());

        public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options) =>
            writer.WriteNumberValue(value.Nanometres / 1_000_000m);
    }
}

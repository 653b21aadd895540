using System.Text.Json;
using System.Text.Json.Nodes;
using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>Reads plans written as JSON; fields it does not know are passed over.</summary>
internal sealed class PlanReader
{
    private const string Form = "docs/plan.schema.json says what belongs there";

    private readonly JsonObject _json;
    private Refusal? _trouble;

    private PlanReader(JsonObject json) => _json = json;

    public static Outcome<ReadPlan> Read(JsonNode? json)
    {
        if (json is not JsonObject fields || Text(fields["format"]) != PlanJson.Format)
            return new Refusal(
                $"This is no plan: one begins with {{ \"format\": \"{PlanJson.Format}\", … }}.",
                "format"
            );
        if (fields["rounds"] is not null)
            return new Refusal(
                "This plan tells of several rounds together, and each is read by itself: take the rounds of the job's document.",
                "rounds"
            );
        return Version(fields["version"]) ?? new PlanReader(fields).Take();
    }

    private Outcome<ReadPlan> Take()
    {
        var parts = Part<IReadOnlyList<CutPart>>("parts");
        var asked = Part<AskedFor>("asked");
        var findings = Part<IReadOnlyList<Finding>>("findings");
        var cuts = Part<PlannedCuts>("plan");
        var dimensions = Part<int>("dimensions");
        var proof = _json["proof"] is null ? null : Part<PlanProof>("proof");
        if (_trouble is { } trouble)
            return trouble;
        var plan = new Plan(cuts!.Sheets, cuts.Workpieces, cuts.Breakdown, cuts.Visits, findings!, dimensions)
        {
            Proof = proof,
        };
        return new ReadPlan(plan, asked!.Request(parts!));
    }

    private T? Part<T>(string field)
    {
        try
        {
            if (_json[field] is { } value)
                return value.Deserialize<T>(PlanForm.Options);
            _trouble ??= new($"This field is missing, and no plan is read without it: {Form}.", field);
        }
        catch (JsonException stop)
        {
            var path = PlacesOf(stop.Path, field);
            _trouble ??= new($"{Found(path)} cannot be read here: {Form}.", path);
        }
        return default;
    }

    private string Found(string path)
    {
        JsonNode? at = _json;
        foreach (var step in path.Split('/'))
            at = at switch
            {
                JsonArray list when int.TryParse(step, out var index) && index < list.Count => list[index],
                JsonObject fields => fields[step],
                _ => null,
            };
        return at switch
        {
            null => "Nothing (null)",
            JsonObject => "What stands in these { }",
            JsonArray => "What stands in this [ ]",
            _ => at.ToJsonString(PlanForm.Options) is { Length: > 60 } text
                ? $"{text[..57]}…"
                : at.ToJsonString(PlanForm.Options),
        };
    }

    /// <summary><c>$.visits[0].cuts[2].kind</c> is <c>plan/visits/0/cuts/2/kind</c>.</summary>
    private static string PlacesOf(string? jsonPath, string field)
    {
        var steps = (jsonPath ?? "$")[1..].Split(['.', '[', ']'], StringSplitOptions.RemoveEmptyEntries);
        return string.Join('/', steps.Prepend(field));
    }

    private static Refusal? Version(JsonNode? version) =>
        version is JsonValue written && written.TryGetValue(out int number) && number is >= 1 and <= PlanJson.Version
            ? null
            : new(
                $"This program reads plans up to version {PlanJson.Version}: open it with the Nookwright that wrote it.",
                "version"
            );

    private static string? Text(JsonNode? json) =>
        json is JsonValue value && value.TryGetValue(out string? text) ? text : null;
}

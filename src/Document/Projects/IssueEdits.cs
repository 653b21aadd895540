using System.Text.Json;
using System.Text.Json.Nodes;
using Nookwright.Records;
using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>Handing a round of the cutting plan to the saw, and taking that back.</summary>
public static class IssueEdits
{
    /// <summary>Issues the next round of the plan: from now on it never moves.</summary>
    /// <param name="project">The document.</param>
    /// <param name="plan">What the round adds and what it was asked for, in the form of <c>plan.schema.json</c>.</param>
    /// <param name="day">The day.</param>
    public static Outcome<Project> IssueRound(this Project project, JsonObject plan, DateOnly day)
    {
        var issued = new IssuedRound
        {
            Round = project.Issued.Count + 1,
            Date = day,
            Plan = JsonSerializer.SerializeToElement(plan, RecordJson.Options),
        };
        return project.Change(job => job with { Issued = [.. job.Issued, issued] });
    }

    /// <summary>Withdraws the latest issued round: it may change again, as if nobody had cut from it.</summary>
    public static Outcome<Project> WithdrawRound(this Project project) =>
        project.Issued.Count == 0
            ? new Refusal("No plan is issued, so there is none to withdraw.", "issued")
            : project.Change(job => job with { Issued = [.. job.Issued.SkipLast(1)] });

    /// <summary>An issued round in which a piece goes by another id; only names change, no cut does.</summary>
    internal static IssuedRound Renamed(IssuedRound issued, string piece, string newId) =>
        issued with
        {
            Plan = Renamed(issued.Plan, piece, newId),
        };

    /// <summary>A plan in which a piece goes by another id.</summary>
    internal static JsonElement Renamed(JsonElement plan, string piece, string newId) =>
        JsonSerializer.SerializeToElement(Renamed(JsonNode.Parse(plan.GetRawText()), piece, newId), RecordJson.Options);

    private static JsonNode? Renamed(JsonNode? json, string piece, string newId, string field = "") =>
        json switch
        {
            JsonObject fields => new JsonObject(
                fields.Select(f => KeyValuePair.Create(f.Key, Renamed(f.Value, piece, newId, f.Key)))
            ),
            JsonArray items => new JsonArray([.. items.Select(item => Renamed(item, piece, newId, field))]),
            JsonValue value when value.TryGetValue(out string? text) => NameIn(text, piece, newId, field),
            _ => json?.DeepClone(),
        };

    /// <summary>Parts go by their piece's id, a point and their own name; nothing else in a plan begins like that.</summary>
    private static string NameIn(string text, string piece, string newId, string field) =>
        text.StartsWith(piece + ".", StringComparison.Ordinal) ? newId + text[piece.Length..]
        : field == "piece" && text == piece ? newId
        : text;
}

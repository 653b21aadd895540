using System.Text.Json.Nodes;
using Nookwright.Cutting;
using Nookwright.Sawing;
using Nookwright.Trouble;

namespace Nookwright.Lists;

/// <summary>A plan as JSON, for scripts and machines. Its schema is <c>docs/plan.schema.json</c>.</summary>
/// <remarks>
/// The top says in numbers how good the plan is: <c>sheets</c>, <c>settings</c>, <c>visits</c>, <c>valid</c>, <c>waste</c>;
/// <c>proof</c> says how far from the best it can be; <c>parts</c> and <c>asked</c> hold what was asked for, <c>plan</c> the
/// plan itself. Lengths are exact millimetres.
/// </remarks>
public static class PlanJson
{
    /// <summary>The word that says what kind of file it is.</summary>
    public const string Format = "nookwright-plan";

    /// <summary>The version of this form.</summary>
    public const int Version = 1;

    /// <summary>The plan as indented text.</summary>
    public static string Write(Plan plan, CutRequest request) =>
        ToJson(plan, request).ToJsonString(PlanForm.Options) + "\n";

    /// <summary>The plan as JSON.</summary>
    public static JsonObject ToJson(Plan plan, CutRequest request) =>
        ToJson(plan, request, VirtualSaw.Run(plan, request).Why);

    /// <summary>One round of a plan the virtual saw has executed, as JSON: what the round adds, and what it was asked for.</summary>
    /// <param name="round">The round.</param>
    public static JsonObject ToJson(CutRound round) => ToJson(round.Plan, round.Asked, null);

    /// <summary>Reads a plan with what it was asked for, exactly as it was written; or says which field cannot be read.</summary>
    /// <param name="json">The plan as JSON.</param>
    public static Outcome<ReadPlan> Read(JsonNode? json) => PlanReader.Read(json);

    private static JsonObject ToJson(Plan plan, CutRequest request, string? trouble)
    {
        var json = new JsonObject
        {
            ["format"] = Format,
            ["version"] = Version,
            ["units"] = "mm",
            ["sheets"] = plan.Sheets.Count,
            ["settings"] = plan.Settings,
            ["visits"] = plan.Visits.Count,
            ["valid"] = trouble is null,
            ["waste"] = Math.Round(PlanAreas.Waste(plan), 6),
            ["dimensions"] = plan.DimensionsNow,
            ["why"] = trouble,
            ["proof"] = PlanForm.Node(plan.Proof),
            ["findings"] = PlanForm.Node(plan.Findings),
            ["parts"] = PlanForm.Node(request.Parts),
            ["asked"] = PlanForm.Node(AskedFor.Of(request)),
            ["plan"] = PlanForm.Node(PlannedCuts.Of(plan)),
        };
        if (plan.Rounds.Count > 0)
            json["rounds"] = PlanForm.Node(plan.Rounds.Select(RoundWork.Of));
        return json;
    }
}

/// <summary>A plan as it was read, with what it was asked for.</summary>
/// <param name="Plan">The plan; nobody has executed it again.</param>
/// <param name="Request">What it was asked for.</param>
public sealed record ReadPlan(Plan Plan, CutRequest Request);

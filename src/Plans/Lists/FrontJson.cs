using System.Text.Json.Nodes;
using Nookwright.Cutting;

namespace Nookwright.Lists;

/// <summary>A front of plans as JSON, for scripts and machines: what each costs and what the next buys. Lengths are exact millimetres.</summary>
public static class FrontJson
{
    /// <summary>The version of this form.</summary>
    public const int Version = 1;

    /// <summary>The front as indented text.</summary>
    /// <param name="front">The front.</param>
    /// <param name="extraVisits">The choice: how many visits beyond the fewest are accepted.</param>
    public static string Write(PlanFront front, int extraVisits) =>
        ToJson(front, extraVisits).ToJsonString(PlanForm.Options) + "\n";

    /// <summary>The front as JSON.</summary>
    /// <param name="front">The front.</param>
    /// <param name="extraVisits">The choice: how many visits beyond the fewest are accepted.</param>
    public static JsonObject ToJson(PlanFront front, int extraVisits)
    {
        var chosen = front.Chosen(extraVisits);
        return new()
        {
            ["format"] = "nookwright-front",
            ["version"] = Version,
            ["units"] = "mm",
            ["sentence"] = front.Sentence,
            ["extraVisits"] = extraVisits,
            ["plans"] = new JsonArray([.. front.Plans.Select(p => Plan(p, front, p == chosen))]),
        };
    }

    private static JsonObject Plan(FrontPlan plan, PlanFront front, bool isChosen) =>
        new()
        {
            ["chosen"] = isChosen,
            ["visits"] = plan.Visits,
            ["extraVisits"] = plan.Visits - front.First.Visits,
            ["sheets"] = plan.Sheets,
            ["price"] = plan.Price,
            ["handling"] = plan.Handling,
            ["loose"] = plan.Score.Loose,
            ["mismatch"] = PlanForm.Node(plan.PredictedMismatch),
            ["proof"] = PlanForm.Node(plan.Plan.Proof),
            ["splits"] = PlanForm.Node(plan.Splits),
            ["next"] = plan.Next,
        };
}

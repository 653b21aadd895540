using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Finds the plans between the fewest visits and the least wood.</summary>
internal static class FrontSearch
{
    /// <summary>The front of a request.</summary>
    public static PlanFront Run(CutRequest request, Plan? first, IProgress<PlanFront>? progress, CancellationToken stop)
    {
        var visitsFirst = request with { Rules = request.Rules with { VisitsFirst = true } };
        List<Plan> plans = [first ?? Planner.Plan(visitsFirst, null, stop)];
        var front = FrontWriter.Of(plans, request);
        progress?.Report(front);
        return front;
    }
}

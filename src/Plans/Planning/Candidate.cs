using Nookwright.Cutting;
using Nookwright.Sawing;

namespace Nookwright.Planning;

/// <summary>A plan with what it is worth and the search it came from.</summary>
/// <param name="Plan">Executed by the virtual saw.</param>
/// <param name="Score">What it is worth.</param>
/// <param name="Search">Where to go on from.</param>
internal sealed record Candidate(Plan Plan, PlanScore Score, Search Search)
{
    /// <summary>The plan of a search as it stands. Throws when the virtual saw cannot execute it: that is our own mistake.</summary>
    public static Candidate Of(Job job, Search search)
    {
        var plan = PlanWriter.Write(job, search.Layout);
        var verdict = VirtualSaw.Run(plan, job.Request);
        if (!verdict.Accepted)
            throw new InvalidOperationException($"The planner made a plan that cannot be cut: {verdict.Why}");
        return new(plan, PlanScore.Of(plan, job.Request), search);
    }
}

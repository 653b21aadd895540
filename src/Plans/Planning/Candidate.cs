using Nookwright.Cutting;
using Nookwright.Sawing;

namespace Nookwright.Planning;

/// <summary>A plan with what it is worth and the layout it was written from.</summary>
/// <param name="Plan">Executed by the virtual saw.</param>
/// <param name="Score">What it is worth.</param>
/// <param name="Job">What it is a plan of.</param>
/// <param name="Layout">Where to go on from.</param>
internal sealed record Candidate(Plan Plan, PlanScore Score, Job Job, Layout Layout)
{
    /// <summary>True for one that keeps what a plan made before has: it gives way to a better one only when that is worth moving for.</summary>
    public bool IsKept { get; init; }

    /// <summary>The plan of a layout as it stands. Throws when the virtual saw cannot execute it: that is our own mistake.</summary>
    public static Candidate Of(Job job, Layout layout)
    {
        var plan = PlanWriter.Write(job, layout);
        var verdict = VirtualSaw.Run(plan, job.Request);
        if (!verdict.Accepted)
            throw new InvalidOperationException($"The planner made a plan that cannot be cut: {verdict.Why}");
        return new(plan, PlanScore.Of(plan, job.Request), job, layout);
    }
}

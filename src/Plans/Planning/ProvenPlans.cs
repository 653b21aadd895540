using Nookwright.Bounds;
using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Shows plans with the proof that is known when they are found.</summary>
internal sealed class ProvenPlans(IProgress<Plan> shown, WoodBounds bounds) : IProgress<Plan>
{
    /// <inheritdoc/>
    public void Report(Plan plan) => shown.Report(plan with { Proof = bounds.Prove(plan) });
}

using Nookwright.Cutting;

namespace Nookwright.Rounds;

/// <summary>What the last round of several was made from: its own plan, before it was placed on the sheets of all rounds.</summary>
/// <param name="Plan">The plan.</param>
internal sealed record RoundAlone(Plan Plan) : PlanOrigin
{
    /// <summary>The plan to plan a round on from: the round's own where there is one.</summary>
    public static Plan? Of(Plan? before) => before?.Origin is RoundAlone alone ? alone.Plan : before;
}

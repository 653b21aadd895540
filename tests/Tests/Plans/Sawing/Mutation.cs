using Nookwright.Cutting;

namespace Nookwright.Tests.Sawing;

/// <summary>A plan, or what it was made for, spoiled in one place.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Request">What it is held against.</param>
/// <param name="Cut">The cut that must be named; null where the plan as a whole, or a part, is to blame.</param>
/// <param name="Says">What the sentence must contain.</param>
internal sealed record Mutation(Plan Plan, CutRequest Request, int? Cut, string Says)
{
    /// <summary>A plan with its cuts and visits numbered anew, as if it had been written so.</summary>
    public static Plan Renumbered(Plan plan)
    {
        var number = 0;
        SawCut Next(SawCut cut) => cut with { Number = ++number };
        return plan with
        {
            Breakdown = [.. plan.Breakdown.Select(Next)],
            Visits = [.. plan.Visits.Select((v, i) => v with { Number = i + 1, Cuts = [.. v.Cuts.Select(Next)] })],
        };
    }

    /// <summary>A plan with each cut replaced by none, one or several; the numbers stay.</summary>
    public static Plan EachCut(Plan plan, Func<SawCut, IEnumerable<SawCut>> change) =>
        plan with
        {
            Breakdown = [.. plan.Breakdown.SelectMany(change)],
            Visits = [.. plan.Visits.Select(v => v with { Cuts = [.. v.Cuts.SelectMany(change)] })],
        };
}

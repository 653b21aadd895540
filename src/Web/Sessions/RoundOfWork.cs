using Nookwright.Cutting;

namespace Nookwright.Web.Sessions;

/// <summary>One round of the work at the saws, as it is shown: which sheets it takes up, how they are broken down, the visits.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Issued">The day the maker began to cut from it; null while it may still change.</param>
/// <param name="Sheets">The sheets it takes, and those of rounds before whose pieces it breaks down further.</param>
/// <param name="Breakdown">Its cuts with the track saw, in order.</param>
/// <param name="Visits">Its visits, in order.</param>
public sealed record RoundOfWork(
    int Number,
    DateOnly? Issued,
    IReadOnlyList<PlanSheet> Sheets,
    IReadOnlyList<SawCut> Breakdown,
    IReadOnlyList<Visit> Visits
)
{
    /// <summary>The rounds of a plan; a plan of which none is issued is one round, the first.</summary>
    public static IReadOnlyList<RoundOfWork> Of(Plan plan) =>
        plan.Rounds.Count > 0
            ? [.. plan.Rounds.Select(round => Of(plan, round))]
            : [new(1, null, plan.Sheets, plan.Breakdown, plan.Visits)];

    private static RoundOfWork Of(Plan plan, CutRound round)
    {
        var sheetOf = plan.Workpieces.ToDictionary(piece => piece.Id, piece => piece.Sheet);
        var touched = round.Plan.Breakdown.Select(cut => sheetOf[cut.On]).ToHashSet();
        touched.UnionWith(round.Plan.Sheets.Select(sheet => sheet.Number));
        return new(
            round.Number,
            round.Issued,
            [.. plan.Sheets.Where(sheet => touched.Contains(sheet.Number))],
            round.Plan.Breakdown,
            [.. plan.Visits.Where(visit => visit.Round == round.Number)]
        );
    }
}

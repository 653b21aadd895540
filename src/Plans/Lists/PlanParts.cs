using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Lists;

/// <summary>What a plan was asked for beside its parts, as it stands in JSON under <c>asked</c>.</summary>
internal sealed record AskedFor(
    LengthUnit Units,
    SawLimits Saws,
    CutRules Rules,
    IReadOnlyList<StockPiece> Stock,
    IReadOnlyList<CutMatch> Matches,
    IReadOnlyList<CutRun> Runs,
    IReadOnlyList<CutApart> Apart
)
{
    public static AskedFor Of(CutRequest request) =>
        new(request.Units, request.Saws, request.Rules, request.Stock, request.Matches, request.Runs, request.Apart);

    public CutRequest Request(IReadOnlyList<CutPart> parts) =>
        new(parts, Matches, Runs, Stock, Saws, Rules) { Units = Units, Apart = Apart };
}

/// <summary>The plan itself, as it stands in JSON under <c>plan</c>.</summary>
internal sealed record PlannedCuts(
    IReadOnlyList<PlanSheet> Sheets,
    IReadOnlyList<Workpiece> Workpieces,
    IReadOnlyList<SawCut> Breakdown,
    IReadOnlyList<Visit> Visits
)
{
    public static PlannedCuts Of(Plan plan) => new(plan.Sheets, plan.Workpieces, plan.Breakdown, plan.Visits);
}

/// <summary>A round of a plan, as it stands in JSON under <c>rounds</c>: its visits are told by their round.</summary>
internal sealed record RoundWork(int Round, DateOnly? Issued, IReadOnlyList<SawCut> Breakdown)
{
    public static RoundWork Of(CutRound round) => new(round.Number, round.Issued, round.Plan.Breakdown);
}

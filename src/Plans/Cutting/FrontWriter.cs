namespace Nookwright.Cutting;

/// <summary>Makes a front of plans: keeps those that are worth their visits, and says what each step buys.</summary>
internal static class FrontWriter
{
    /// <summary>The front of some plans of one request; the first of equals stays.</summary>
    /// <param name="plans">At least one, all executed by the virtual saw.</param>
    /// <param name="request">What they were asked for.</param>
    public static PlanFront Of(IEnumerable<Plan> plans, CutRequest request)
    {
        List<FrontPlan> kept = [];
        foreach (var plan in plans.Select(p => Weighed(p, request)).OrderBy(p => p.Visits).ThenBy(p => p.Score))
            if (kept.Count == 0 || IsWorthMore(plan.Score, kept[^1].Score))
                kept.Add(plan);
        return new([
            .. kept.Select(
                (p, i) => i + 1 < kept.Count ? p with { Next = FrontText.Next(p, kept[i + 1], request) } : p
            ),
        ]);
    }

    /// <summary>True when a plan of more visits has a place for more parts, or buys less.</summary>
    public static bool IsWorthMore(PlanScore more, PlanScore than) =>
        (more.Missing, more.Bought).CompareTo((than.Missing, than.Bought)) < 0;

    /// <summary>What a plan is worth with its visits counted, whatever its request puts first.</summary>
    public static PlanScore ScoreOf(Plan plan, CutRequest request) =>
        PlanScore.Of(plan, request with { Rules = request.Rules with { VisitsFirst = true, BoxByBox = false } });

    private static FrontPlan Weighed(Plan plan, CutRequest request)
    {
        var score = ScoreOf(plan, request);
        return new(plan, score, PriceOf(plan, request), score.Sheets, SplitSizes.Of(plan), null);
    }

    /// <summary>An offcut without a price is paid for already.</summary>
    private static decimal? PriceOf(Plan plan, CutRequest request)
    {
        var stock = request.Stock.ToDictionary(s => s.Id);
        var taken = plan.Sheets.Select(s => stock[s.Stock]).ToList();
        return taken.Any(s => !s.IsOffcut && s.Price is null) ? null : taken.Sum(s => s.Price ?? 0);
    }
}

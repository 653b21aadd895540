namespace Nookwright.Cutting;

/// <summary>The plans between "fewest visits" and "fewest sheets": what one more visit buys, and what it does to the fit.</summary>
/// <remarks>
/// Each plan makes more visits than the one before and buys less wood (or has a place for more parts); what must match is
/// kept together in all of them. The virtual saw has executed every one.
/// </remarks>
/// <param name="Plans">From the fewest visits, which is what is cut unless the maker says otherwise, to the least bought; at least one.</param>
public sealed record PlanFront(IReadOnlyList<FrontPlan> Plans)
{
    /// <summary>The plan with the fewest visits.</summary>
    public FrontPlan First => Plans[0];

    /// <summary>True when more visits buy nothing.</summary>
    public bool IsNothingToTrade => Plans.Count == 1;

    /// <summary>The front in a sentence, for people.</summary>
    public string Sentence =>
        IsNothingToTrade
            ? "Nothing to trade: no plan was found that buys less wood for more visits."
            : $"{Plans.Count} plans to choose from, from {First.Visits} visits with {FrontText.Count(First.Sheets, "sheet")} "
                + $"to {Plans[^1].Visits} visits with {FrontText.Count(Plans[^1].Sheets, "sheet")}.";

    /// <summary>The plan that buys least among those within so many visits of the fewest.</summary>
    /// <param name="extraVisits">How many visits beyond the fewest are accepted for less wood; 0 or more.</param>
    public FrontPlan Chosen(int extraVisits)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(extraVisits);
        return Plans.Last(p => p.Visits - First.Visits <= extraVisits);
    }
}

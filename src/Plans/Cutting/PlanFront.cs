namespace Nookwright.Cutting;

/// <summary>The plans between "fewest visits" and "fewest sheets": what one more visit buys, and what it does to the fit.</summary>
/// <remarks>
/// Each plan makes more visits than the one before and buys less wood (or has a place for more parts); what must match is
/// kept together in all of them. The virtual saw has executed every one. After an issue the plans differ in what is not
/// issued yet; their visits, sheets and prices are those of all rounds.
/// </remarks>
/// <param name="Plans">From the fewest visits, which is what is cut unless the maker says otherwise, to the least bought; at least one.</param>
public sealed record PlanFront(IReadOnlyList<FrontPlan> Plans)
{
    /// <summary>The plan with the fewest visits.</summary>
    public FrontPlan First => Plans[0];

    /// <summary>True when more visits buy nothing.</summary>
    public bool IsNothingToTrade => Plans.Count == 1;

    /// <summary>Why there is nothing to trade, where there is not.</summary>
    public NoTrade WhyNone { get; init; }

    /// <summary>The front in a sentence, for people, with materials by their ids.</summary>
    public string Sentence => Say(id => id);

    /// <summary>The front in a sentence or two, for people.</summary>
    /// <param name="nameOf">What a material is called, by its id.</param>
    public string Say(Func<string, string> nameOf) =>
        IsNothingToTrade ? NoTradeText.Of(WhyNone, First.Plan.Proof, nameOf) : FrontText.Choice(this);

    /// <summary>The plan that buys least among those within so many visits of the fewest.</summary>
    /// <param name="extraVisits">How many visits beyond the fewest are accepted for less wood; 0 or more.</param>
    public FrontPlan Chosen(int extraVisits)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(extraVisits);
        return Plans.Last(p => p.Visits - First.Visits <= extraVisits);
    }
}

namespace Nookwright.Cutting;

/// <summary>Why a front has one plan only.</summary>
public enum NoTrade
{
    /// <summary>The search was ended before it had looked.</summary>
    NotLooked,

    /// <summary>Less wood was looked for, every size free to come from as many visits as it takes, and not found.</summary>
    NotFound,

    /// <summary>No plan buys less: that is proven.</summary>
    Proven,

    /// <summary>Box by box, wood comes before visits already.</summary>
    BoxByBox,

    /// <summary>Nothing is bought: what is left to cut comes out of what is there.</summary>
    NothingBought,

    /// <summary>Nothing is left to plan: what can be cut now is issued.</summary>
    AllIssued,
}

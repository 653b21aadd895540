namespace Nookwright.Cutting;

/// <summary>One round of a plan: what is cut between one set of readings and the next.</summary>
/// <remarks>
/// Round 1 takes sheets. A later round also takes what the rounds before left: blanks that were held, and offcuts. All
/// rounds of a plan measure on the same sheets and count sheets, cuts and visits on from one to the next.
/// </remarks>
/// <param name="Number">From 1.</param>
/// <param name="Plan">What the round adds: its sheets, its workpieces, its rough cuts and its visits, and no other.</param>
/// <param name="Asked">What the round was asked for, with the sizes and saws of that time.</param>
/// <param name="Issued">The day the maker began to cut from it; null while it may still change.</param>
public sealed record CutRound(int Number, Plan Plan, CutRequest Asked, DateOnly? Issued)
{
    /// <summary>True when it never moves any more.</summary>
    public bool IsIssued => Issued is not null;
}

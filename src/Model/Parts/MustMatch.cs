namespace Nookwright.Parts;

/// <summary>Dimensions that a rule wants alike where the design lets them be: equal ones become a match group.</summary>
/// <param name="Id">The group's id.</param>
/// <param name="Sides">The dimensions.</param>
/// <param name="Because">Why, as a sentence.</param>
internal sealed record MustMatch(string Id, IReadOnlyList<PartSide> Sides, string Because)
{
    /// <summary>False for the members of several pieces, which match across pieces only; then one piece alone makes no group.</summary>
    public bool WithinOnePiece { get; init; } = true;
}

using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>The pinned sheets of a request that are kept, and why others are not.</summary>
/// <param name="Kept">Those that are kept; loose ones may have visits of their own where nothing must match.</param>
/// <param name="Findings">Why others are not.</param>
internal sealed record PinnedSheets(
    IReadOnlyList<(PinnedSheet Wish, bool IsLoose)> Kept,
    IReadOnlyList<Finding> Findings
)
{
    /// <summary>Ids of the parts on them.</summary>
    public IReadOnlySet<string> Parts { get; } = Kept.SelectMany(k => k.Wish.Parts).ToHashSet();

    /// <summary>All that can still be cut as they were.</summary>
    public static PinnedSheets Of(CutRequest request)
    {
        var kept = new List<PinnedSheet>();
        var findings = new List<Finding>();
        foreach (var pin in request.PinnedSheets)
            if (PinFindings.Of(pin, request, kept) is { } finding)
                findings.Add(finding);
            else
                kept.Add(pin);
        return new([.. kept.Select(pin => (pin, false))], findings);
    }

    /// <summary>With one of them loose, or not kept when it is loose already.</summary>
    public PinnedSheets Looser(PinnedSheet pin)
    {
        var isLoose = Kept.First(k => k.Wish == pin).IsLoose;
        return isLoose
            ? new([.. Kept.Where(k => k.Wish != pin)], [.. Findings, PinFindings.Order(pin)])
            : this with
            {
                Kept = [.. Kept.Select(k => k.Wish == pin ? (pin, true) : k)],
            };
    }
}

using System.Collections.Immutable;
using Nookwright.Trouble;

namespace Nookwright.Web.Sessions;

/// <summary>The cuts somebody has made and ticked, plan by plan; immutable.</summary>
/// <remarks>
/// A tick belongs to the cuts it was made among, told by their stamp: cut 12 of another plan is another cut. When an edit is
/// taken back, the plan of before has its ticks again.
/// </remarks>
/// <param name="ByStamp">The numbers of the cuts done, under the stamp of their plan and round.</param>
public sealed record CutsDone(ImmutableSortedDictionary<string, ImmutableSortedSet<int>> ByStamp)
{
    /// <summary>Nothing is done.</summary>
    public static CutsDone None { get; } =
        new(ImmutableSortedDictionary.Create<string, ImmutableSortedSet<int>>(StringComparer.Ordinal));

    /// <summary>Why it cannot be told what is done; null when it can.</summary>
    public Refusal? Unread { get; init; }

    /// <summary>True when the cut with this number was ticked.</summary>
    public bool Has(string stamp, int cut) => ByStamp.TryGetValue(stamp, out var cuts) && cuts.Contains(cut);

    /// <summary>With these cuts ticked too.</summary>
    public CutsDone With(string stamp, IEnumerable<int> cuts) => Put(stamp, Under(stamp).Union(cuts));

    /// <summary>With these cuts not ticked.</summary>
    public CutsDone Without(string stamp, IEnumerable<int> cuts) => Put(stamp, Under(stamp).Except(cuts));

    private ImmutableSortedSet<int> Under(string stamp) => ByStamp.GetValueOrDefault(stamp, []);

    private CutsDone Put(string stamp, ImmutableSortedSet<int> cuts) =>
        new(cuts.IsEmpty ? ByStamp.Remove(stamp) : ByStamp.SetItem(stamp, cuts));
}

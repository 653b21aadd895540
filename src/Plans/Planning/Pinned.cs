using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>A sheet that is kept as it was planned: the search does not see it, only the order of visits does.</summary>
/// <param name="Wish">What the maker wishes.</param>
/// <param name="Stock">What it is taken from.</param>
/// <param name="Cuts">The cuts of its visits, in the order they were made in.</param>
internal sealed record Pinned(PinnedSheet Wish, Stock Stock, IReadOnlyList<PinnedCut> Cuts)
{
    /// <summary>Pairs of settings of which the first must be visited before the second for every cut to find its piece.</summary>
    public IEnumerable<(int First, int Then)> Rules =>
        Cuts.Where(c => c.IsBound)
            .SelectMany(cut => Bound(cut).Select(first => (First: first.Setting, Then: cut.Setting)))
            .Where(rule => rule.First != rule.Then)
            .Distinct();

    /// <summary>True when no order of visits can make it: one would have to come before and after another, or two be one.</summary>
    public bool IsTorn =>
        Cuts.Any(c => c.IsTorn)
        || Cuts.Where(c => c.IsBound).Any(cut => Bound(cut).Any(b => b.Setting == cut.Setting && IsBetween(b, cut)));

    /// <summary>The visits of all cuts, those that no setting gives with the first that needs their pieces.</summary>
    /// <param name="sizing">The visits of the cuts that a setting gives.</param>
    public IReadOnlyList<int> Visits(Func<PinnedCut, int> sizing)
    {
        var visits = Cuts.Select(c => c.Setting >= 0 ? sizing(c) : int.MaxValue).ToArray();
        for (var i = visits.Length - 1; i >= 0; i--)
            if (Cuts[i].After is >= 0 and var giver && Cuts[giver].Setting < 0)
                visits[giver] = Math.Min(visits[giver], visits[i]);
        for (var i = 0; i < visits.Length; i++)
            if (visits[i] == int.MaxValue)
                visits[i] = Cuts[i].After is >= 0 and var giver ? visits[giver] : 0;
        return visits;
    }

    /// <summary>The cuts with a bound setting that a cut's piece comes from, the nearest first, past those without.</summary>
    private IEnumerable<PinnedCut> Bound(PinnedCut cut)
    {
        for (var at = cut.After; at >= 0; at = Cuts[at].After)
            if (Cuts[at].IsBound)
                return [Cuts[at]];
        return [];
    }

    private bool IsBetween(PinnedCut first, PinnedCut last)
    {
        for (var at = last.After; at >= 0 && Cuts[at] != first; at = Cuts[at].After)
            if (Cuts[at].Setting >= 0 && Cuts[at].Cut.Distance != last.Cut.Distance)
                return true;
        return false;
    }
}

/// <summary>A cut of a visit of a pinned sheet.</summary>
/// <param name="Cut">The cut.</param>
/// <param name="After">The place of the cut that gives its piece; -1 when the breakdown does.</param>
/// <param name="Sides">The sides of parts that it gives their size, as in <see cref="SettingPlan.Sides"/>.</param>
/// <param name="Setting">Their setting; -1 for a cut that no setting gives.</param>
/// <param name="IsBound">True when the setting has but one visit, and the cut is made in that.</param>
internal sealed record PinnedCut(SawCut Cut, int After, IReadOnlyList<int> Sides, int Setting, bool IsBound)
{
    /// <summary>How long it is, in nanometres.</summary>
    public required long Length { get; init; }

    /// <summary>True when no one visit can make it.</summary>
    public bool IsTorn { get; init; }
}

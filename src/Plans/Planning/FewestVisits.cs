namespace Nookwright.Planning;

/// <summary>The fewest visits that make all cuts of a graph: a beam search, exact where nothing had to be left aside.</summary>
/// <remarks>
/// A visit makes every cut of its distance that can be made: waiting with one never helps, since whatever can follow without
/// it can follow with it. For the same reason a distance that a visit finishes is visited at once. A state is the set of
/// cuts made; those of as many visits are compared by the distances and then by the cuts they leave.
/// </remarks>
internal sealed class FewestVisits(CutGraph graph)
{
    private int _most = int.MaxValue;

    /// <summary>True when the answer is the least there can be, and not only the least that was found.</summary>
    public bool IsExact { get; private set; }

    /// <summary>The cuts of each visit, in order; null when the groups cannot be kept whole whatever the order.</summary>
    /// <param name="width">How many states are followed side by side; 1 or more.</param>
    public IReadOnlyList<IReadOnlyList<int>>? Find(int width)
    {
        var best = Follow(1);
        if (width > 1 && (best is null || (best.Count > graph.DistanceCount && !IsExact)))
            best = Follow(width) ?? best;
        IsExact = graph.Filled.Count == 0 && (IsExact || best?.Count == graph.DistanceCount);
        return best;
    }

    private IReadOnlyList<IReadOnlyList<int>>? Follow(int width)
    {
        IsExact = true;
        List<CutProgress> level = [new(graph)];
        for (var visits = 0; level.Count > 0; visits++)
        {
            if (level.FirstOrDefault(s => s.Left == 0) is { } end)
            {
                _most = visits;
                return Visits(end);
            }
            level = Best(level.SelectMany(Next).Where(s => visits + 1 + s.DistancesLeft < _most), width);
        }
        return null;
    }

    /// <summary>What may come next: one visit where it is forced, else every visit that cuts something.</summary>
    private static List<CutProgress> Next(CutProgress state)
    {
        List<CutProgress> open = [];
        foreach (var distance in state.Ready())
        {
            if (state.Visit(distance) is not { } next)
                continue;
            if (next.IsDone(distance))
                return [next];
            open.Add(next);
        }
        return open;
    }

    private List<CutProgress> Best(IEnumerable<CutProgress> states, int width)
    {
        var known = new Dictionary<int, List<CutProgress>>();
        List<CutProgress> kept =
        [
            .. states.OrderBy(s => s.DistancesLeft).ThenBy(s => s.Left).Where(s => IsNew(s, known)),
        ];
        if (kept.Count <= width)
            return kept;
        IsExact = false;
        return kept[..width];
    }

    private static bool IsNew(CutProgress state, Dictionary<int, List<CutProgress>> known)
    {
        var print = state.Print();
        if (!known.TryGetValue(print, out var same))
            known[print] = same = [];
        if (same.Any(state.IsSame))
            return false;
        same.Add(state);
        return true;
    }

    private static List<IReadOnlyList<int>> Visits(CutProgress end)
    {
        List<IReadOnlyList<int>> visits = [];
        for (var at = end; at.Before is not null; at = at.Before)
            visits.Add(at.Taken);
        visits.Reverse();
        return visits;
    }
}

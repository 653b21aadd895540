namespace Nookwright.Planning;

/// <summary>How far the cuts of a graph have got after some visits.</summary>
internal sealed class CutProgress
{
    private readonly CutGraph _graph;
    private readonly int[] _waits;
    private readonly int[] _leftOfDistance;
    private readonly int[] _leftOfGroup;
    private readonly int[] _leftOfLine;
    private readonly ulong[] _done;
    private readonly List<int> _taken = [];

    private CutProgress(CutProgress before, int distance)
    {
        (Before, Distance, _graph) = (before, distance, before._graph);
        _waits = [.. before._waits];
        _leftOfDistance = [.. before._leftOfDistance];
        _leftOfGroup = [.. before._leftOfGroup];
        _leftOfLine = [.. before._leftOfLine];
        _done = [.. before._done];
        (Left, DistancesLeft) = (before.Left, before.DistancesLeft);
    }

    /// <summary>Nothing is cut yet.</summary>
    public CutProgress(CutGraph graph)
    {
        (_graph, Distance, Left) = (graph, -1, graph.Count);
        _waits = graph.Waits();
        _leftOfDistance = new int[graph.DistanceCount];
        _leftOfGroup = new int[graph.GroupCount];
        _leftOfLine = [.. graph.Filled.Select(l => l.Count)];
        _done = new ulong[(graph.Count + 63) / 64];
        for (var cut = 0; cut < graph.Count; cut++)
        {
            _leftOfDistance[graph.Distance(cut)]++;
            if (graph.Group(cut) is >= 0 and var group)
                _leftOfGroup[group]++;
        }
        DistancesLeft = graph.DistanceCount;
        foreach (var line in graph.Filled.Where(l => l.Count == 1 && _waits[l[0]] == 0))
            Finish(line[0], -1);
    }

    /// <summary>As it was before the last visit; null before the first.</summary>
    public CutProgress? Before { get; }

    /// <summary>The number of the distance of the last visit.</summary>
    public int Distance { get; }

    /// <summary>The cuts of the last visit.</summary>
    public IReadOnlyList<int> Taken => _taken;

    /// <summary>How many cuts are still to be made.</summary>
    public int Left { get; private set; }

    /// <summary>How many distances are still to be visited at least once.</summary>
    public int DistancesLeft { get; private set; }

    /// <summary>True when a distance is done with.</summary>
    public bool IsDone(int distance) => _leftOfDistance[distance] == 0;

    /// <summary>The distances some cut could be made at now, by the least rank of such a cut.</summary>
    public IEnumerable<int> Ready()
    {
        var ranks = new int[_graph.DistanceCount];
        Array.Fill(ranks, int.MaxValue);
        for (var cut = 0; cut < _graph.Count; cut++)
            if (_waits[cut] == 0 && !Has(cut))
                ranks[_graph.Distance(cut)] = Math.Min(ranks[_graph.Distance(cut)], _graph.Rank(cut));
        return Enumerable.Range(0, ranks.Length).Where(d => ranks[d] < int.MaxValue).OrderBy(d => ranks[d]);
    }

    /// <summary>After a visit that makes every cut of its distance that can be made; null when none can.</summary>
    /// <remarks>A group is cut whole or not at all, so that what cannot be finished in this visit is left for a later one.</remarks>
    public CutProgress? Visit(int distance)
    {
        var refused = _graph.GroupRules.Where(r => _leftOfGroup[r.First] > 0).Select(r => r.Then).ToHashSet();
        while (true)
        {
            var after = new CutProgress(this, distance);
            after.CutAll(distance, refused);
            var torn = after.Torn();
            if (torn.Count == 0)
                return after._taken.Count > 0 ? after : null;
            refused.UnionWith(torn);
        }
    }

    /// <summary>True when the same cuts are made.</summary>
    public bool IsSame(CutProgress other) => _done.AsSpan().SequenceEqual(other._done);

    /// <summary>Equal for progress that is the same.</summary>
    public int Print()
    {
        var print = new HashCode();
        foreach (var word in _done)
            print.Add(word);
        return print.ToHashCode();
    }

    private void CutAll(int distance, HashSet<int> refused)
    {
        var ready = new Stack<int>();
        for (var cut = _graph.Count - 1; cut >= 0; cut--)
            if (_waits[cut] == 0 && !Has(cut) && _graph.Distance(cut) == distance)
                ready.Push(cut);
        while (ready.TryPop(out var cut))
            if (!Has(cut) && !refused.Contains(_graph.Group(cut)))
            {
                _taken.Add(cut);
                Finish(cut, distance, ready);
            }
    }

    /// <summary>Groups that this visit has begun and not finished.</summary>
    private List<int> Torn() => [.. _taken.Select(_graph.Group).Where(g => g >= 0 && _leftOfGroup[g] > 0).Distinct()];

    private void Finish(int cut, int distance, Stack<int>? ready = null)
    {
        _done[cut >> 6] |= 1UL << (cut & 63);
        Left--;
        if (--_leftOfDistance[_graph.Distance(cut)] == 0)
            DistancesLeft--;
        if (_graph.Group(cut) is >= 0 and var group)
            _leftOfGroup[group]--;
        foreach (var then in _graph.After(cut))
            if (--_waits[then] == 0)
                Open(then, distance, ready);
        if (_graph.Line(cut) is >= 0 and var line && --_leftOfLine[line] == 1)
            foreach (var last in _graph.Filled[line])
                if (!Has(last))
                    Finish(last, distance, ready);
    }

    /// <summary>A line of one needs no cut as soon as its piece is there.</summary>
    private void Open(int cut, int distance, Stack<int>? ready)
    {
        if (_graph.Line(cut) is >= 0 and var line && _leftOfLine[line] == 1)
            Finish(cut, distance, ready);
        else if (_graph.Distance(cut) == distance)
            ready?.Push(cut);
    }

    private bool Has(int cut) => (_done[cut >> 6] >> (cut & 63) & 1) != 0;
}

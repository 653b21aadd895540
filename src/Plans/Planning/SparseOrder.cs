namespace Nookwright.Planning;

/// <summary>The order of thousands of settings with few rules between them.</summary>
/// <remarks>
/// The order is mended in place when a rule is added:
/// Pearce and Kelly, "A dynamic topological sort algorithm for directed acyclic graphs", ACM Journal of Experimental
/// Algorithmics 11 (2006). Invariant: <c>Rank(u) &lt; Rank(v)</c> for every rule u before v.
/// </remarks>
internal sealed class SparseOrder : SettingOrder
{
    private readonly int[] _rank;
    private readonly int[] _mark;
    private readonly List<Rule>[] _after;
    private readonly List<Rule>[] _before;
    private readonly Stack<int> _stack = new();
    private int _stamp;

    /// <summary>No rules yet; ranked as given.</summary>
    /// <param name="ranks">A permutation of 0 to the number of settings less one.</param>
    public SparseOrder(IReadOnlyList<int> ranks)
    {
        _rank = [.. ranks];
        _mark = new int[ranks.Count];
        _after = [.. ranks.Select(_ => new List<Rule>())];
        _before = [.. ranks.Select(_ => new List<Rule>())];
    }

    /// <inheritdoc/>
    public override int Rank(int setting) => _rank[setting];

    /// <inheritdoc/>
    public override bool Reaches(int first, int then)
    {
        if (first == then)
            return true;
        if (_rank[first] > _rank[then])
            return false;
        _stamp++;
        _stack.Clear();
        _stack.Push(first);
        while (_stack.TryPop(out var at))
            foreach (var rule in _after[at])
            {
                if (rule.Setting == then)
                    return true;
                if (_rank[rule.Setting] < _rank[then] && Visit(rule.Setting))
                    _stack.Push(rule.Setting);
            }
        return false;
    }

    /// <inheritdoc/>
    public override void Add(int first, int then)
    {
        if (first == then)
            return;
        if (!Raise(_after[first], then))
            _after[first].Add(new(then, 1));
        if (!Raise(_before[then], first))
            _before[then].Add(new(first, 1));
        if (_rank[first] > _rank[then])
            Mend(first, then);
    }

    /// <inheritdoc/>
    public override void Remove(int first, int then)
    {
        if (first == then)
            return;
        Lower(_after[first], then);
        Lower(_before[then], first);
    }

    private void Mend(int first, int then)
    {
        var forward = Collect(then, _after, rank => rank <= _rank[first]);
        if (forward.Contains(first))
            throw new InvalidOperationException("The rules of the visit order run in a circle.");
        var backward = Collect(first, _before, rank => rank >= _rank[then]);
        forward.Sort((a, b) => _rank[a].CompareTo(_rank[b]));
        backward.Sort((a, b) => _rank[a].CompareTo(_rank[b]));
        List<int> moved = [.. backward, .. forward];
        var places = moved.Select(s => _rank[s]).Order().ToList();
        for (var i = 0; i < moved.Count; i++)
            _rank[moved[i]] = places[i];
    }

    private List<int> Collect(int start, List<Rule>[] rules, Func<int, bool> isInside)
    {
        _stamp++;
        Visit(start);
        List<int> found = [start];
        for (var i = 0; i < found.Count; i++)
            foreach (var rule in rules[found[i]])
                if (isInside(_rank[rule.Setting]) && Visit(rule.Setting))
                    found.Add(rule.Setting);
        return found;
    }

    private bool Visit(int setting)
    {
        if (_mark[setting] == _stamp)
            return false;
        _mark[setting] = _stamp;
        return true;
    }

    private static bool Raise(List<Rule> rules, int setting)
    {
        var at = rules.FindIndex(r => r.Setting == setting);
        if (at >= 0)
            rules[at] = rules[at] with { Times = rules[at].Times + 1 };
        return at >= 0;
    }

    private static void Lower(List<Rule> rules, int setting)
    {
        var at = rules.FindIndex(r => r.Setting == setting);
        if (at < 0)
            throw new InvalidOperationException("A rule of the visit order was taken back twice.");
        if (rules[at].Times == 1)
            rules.RemoveAt(at);
        else
            rules[at] = rules[at] with { Times = rules[at].Times - 1 };
    }

    private readonly record struct Rule(int Setting, int Times);
}

namespace Nookwright.Planning;

/// <summary>The pieces that stand at the saw while the cuts of trees are made, so that visits can be put into a good order.</summary>
internal sealed class CutStands(CutGraph graph)
{
    private readonly List<(IReadOnlyList<int> Before, IReadOnlyList<int> Cuts, int Sheet)> _stands = [];
    private readonly List<IReadOnlyList<int>> _before = [];
    private readonly List<long> _lengths = [];

    /// <summary>The sheet that is noted.</summary>
    public int Sheet { get; set; }

    /// <summary>Notes a cut, in the order of their numbers.</summary>
    /// <param name="before">What must be cut before it.</param>
    /// <param name="length">How long the cut is.</param>
    public void Note(IReadOnlyList<int> before, long length)
    {
        _before.Add(before);
        _lengths.Add(length);
    }

    /// <summary>Notes a piece that is there after some cuts, and gone after its own.</summary>
    public void Add(IReadOnlyList<int> before, IReadOnlyList<int> cuts)
    {
        if (cuts.Count > 0)
            _stands.Add((before, cuts, Sheet));
    }

    /// <summary>The visits in an order that keeps loose pieces few.</summary>
    /// <param name="visits">The cuts of each visit, in an order that can be followed.</param>
    public IReadOnlyList<IReadOnlyList<int>> Ordered(IReadOnlyList<IReadOnlyList<int>> visits)
    {
        var made = Made(visits);
        var sheets = _stands.GroupBy(s => s.Sheet).ToDictionary(g => g.Key, g => Last(g.SelectMany(s => s.Cuts), made));
        var stands = _stands.Select(s => new VisitStand(Last(s.Before, made), Last(s.Cuts, made))
        {
            Sheet = sheets[s.Sheet],
        });
        var lengths = visits.Select(v => v.Max(cut => _lengths[cut]));
        return [.. new VisitOrder([.. stands], Rules(visits, made), [.. lengths]).Find().Select(v => visits[v])];
    }

    /// <summary>The visits after which each cut is made; what remains of a piece is there when its siblings are off.</summary>
    private HashSet<int>[] Made(IReadOnlyList<IReadOnlyList<int>> visits)
    {
        var made = new HashSet<int>[graph.Count];
        for (var visit = 0; visit < visits.Count; visit++)
            foreach (var cut in visits[visit])
                made[cut] = [visit];
        // A cut is numbered after all that it waits for.
        for (var cut = 0; cut < made.Length; cut++)
            made[cut] ??= Last([.. _before[cut], .. graph.Filled[graph.Line(cut)].Where(c => c != cut)], made);
        return made;
    }

    private static HashSet<int> Last(IEnumerable<int> cuts, HashSet<int>[] made) =>
        [.. cuts.SelectMany(cut => made[cut])];

    private HashSet<int>[] Rules(IReadOnlyList<IReadOnlyList<int>> visits, HashSet<int>[] made)
    {
        HashSet<int>[] befores = [.. visits.Select(v => Last(v.SelectMany(cut => _before[cut]), made))];
        foreach (var (first, then) in graph.GroupRules)
        {
            var earlier = Last(OfGroup(first), made);
            foreach (var visit in OfGroup(then).SelectMany(cut => made[cut]).ToHashSet())
                befores[visit].UnionWith(earlier);
        }
        for (var visit = 0; visit < befores.Length; visit++)
            befores[visit].Remove(visit);
        return befores;
    }

    private IEnumerable<int> OfGroup(int group) => Enumerable.Range(0, graph.Count).Where(c => graph.Group(c) == group);
}

namespace Nookwright.Planning;

/// <summary>The sizing cuts of some trees, and which of them must be made before which: what an order of visits is made for.</summary>
/// <remarks>Vertices are cuts, numbered from nought as they were added. Only "this one before that one" and the distances count here.</remarks>
internal sealed class CutGraph
{
    private readonly List<int> _distances = [];
    private readonly List<int> _groups = [];
    private readonly List<int> _ranks = [];
    private readonly List<int> _lines = [];
    private readonly HashSet<(int First, int Then)> _groupRules = [];
    private readonly List<List<int>> _after = [];
    private readonly List<int> _waits = [];
    private readonly List<IReadOnlyList<int>> _filled = [];
    private readonly Dictionary<long, int> _known = [];
    private readonly Dictionary<int, int> _knownGroups = [];

    /// <summary>How many cuts there are.</summary>
    public int Count => _distances.Count;

    /// <summary>How many different distances they have.</summary>
    public int DistanceCount => _known.Count;

    /// <summary>How many groups there are.</summary>
    public int GroupCount => _knownGroups.Count;

    /// <summary>Lines of siblings that fill their piece.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Filled => _filled;

    /// <summary>Adds a cut.</summary>
    /// <param name="distance">The distance the saw stands at.</param>
    /// <param name="group">Cuts of one group are made in one visit; -1 for none. All have one distance.</param>
    /// <param name="rank">Where nothing else decides, the smaller rank is visited first.</param>
    /// <param name="before">The cuts that must be made before it.</param>
    /// <returns>Its number.</returns>
    public int Add(long distance, int group, int rank, IEnumerable<int> before)
    {
        var cut = Count;
        _distances.Add(Number(_known, distance));
        _groups.Add(group < 0 ? -1 : Number(_knownGroups, group));
        _ranks.Add(rank);
        _lines.Add(-1);
        _after.Add([]);
        _waits.Add(0);
        foreach (var first in before.Distinct())
            Require(first, cut);
        return cut;
    }

    /// <summary>One cut must be made before another.</summary>
    public void Require(int first, int then)
    {
        _after[first].Add(then);
        _waits[then]++;
    }

    /// <summary>All cuts of one group are made at an earlier visit than those of another; groups without cuts are left out.</summary>
    public void RequireGroup(int first, int then)
    {
        if (_knownGroups.TryGetValue(first, out var one) && _knownGroups.TryGetValue(then, out var other))
            _groupRules.Add((one, other));
    }

    /// <summary>These siblings fill their piece: whichever is left when the others are off needs no cut.</summary>
    public void Fill(IReadOnlyList<int> siblings)
    {
        foreach (var cut in siblings)
            _lines[cut] = _filled.Count;
        _filled.Add(siblings);
    }

    /// <summary>The number of a cut's distance.</summary>
    public int Distance(int cut) => _distances[cut];

    /// <summary>The number of a cut's group; -1 for none.</summary>
    public int Group(int cut) => _groups[cut];

    /// <summary>Its rank.</summary>
    public int Rank(int cut) => _ranks[cut];

    /// <summary>Pairs of groups, the first of which is cut at an earlier visit.</summary>
    public IReadOnlyCollection<(int First, int Then)> GroupRules => _groupRules;

    /// <summary>The line it helps to fill; -1 for none.</summary>
    public int Line(int cut) => _lines[cut];

    /// <summary>The cuts that wait for it.</summary>
    public IReadOnlyList<int> After(int cut) => _after[cut];

    /// <summary>For how many cuts each waits.</summary>
    public int[] Waits() => [.. _waits];

    private static int Number<T>(Dictionary<T, int> known, T key)
        where T : notnull => known.TryGetValue(key, out var number) ? number : known[key] = known.Count;
}

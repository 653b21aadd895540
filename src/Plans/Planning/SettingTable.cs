using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Planning;

/// <summary>Which setting each side of each part is cut at: as a <see cref="SettingPlan"/> says, with more where runs force it.</summary>
internal sealed class SettingTable
{
    private static readonly MatchedSide[] Both = [MatchedSide.Length, MatchedSide.Width];

    private readonly CutRequest _request;
    private readonly List<PlannedSetting> _settings;
    private readonly int[] _sides;
    private readonly bool[] _matched;
    private readonly List<List<int>> _groups = [];

    public SettingTable(CutRequest request, SettingPlan plan)
    {
        _request = request;
        _settings = [.. plan.Settings];
        _sides = [.. plan.Sides];
        _matched = new bool[_sides.Length];
        ReadMatches();
    }

    /// <summary>The settings, by number.</summary>
    public IReadOnlyList<PlannedSetting> Settings => _settings;

    /// <summary>The setting of each side, as in <see cref="SettingPlan.Sides"/>.</summary>
    public IReadOnlyList<int> Sides => _sides;

    /// <summary>True when a setting has one visit and a place in the order.</summary>
    public bool IsKept(int setting) => setting >= 0 && _settings[setting].IsKept;

    /// <summary>The setting of a side; -1 for a held part.</summary>
    public int Of(int part, MatchedSide side) => _sides[Key(part, side)];

    /// <summary>True when the side must match another.</summary>
    public bool IsMatched(int part, MatchedSide side) => _matched[Key(part, side)];

    /// <summary>Gives these sides, and all that must match them, a setting of their own at the same distance.</summary>
    public void Separate(IEnumerable<(int Part, MatchedSide Side)> sides)
    {
        var moved = Closure(sides.Select(s => Key(s.Part, s.Side)));
        var separated = _settings[_sides[moved.First()]];
        foreach (var key in moved)
            _sides[key] = _settings.Count;
        _settings.Add(separated);
    }

    private void ReadMatches()
    {
        var index = _request.Parts.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
        foreach (var match in _request.Matches)
        {
            var sides = match.Sides.SelectMany(s => Keys(index[s.Part], s.Side)).ToList();
            foreach (var together in sides.Where(k => _sides[k] >= 0).GroupBy(SizeOf))
                AddGroup(match.Id, [.. together]);
        }
    }

    /// <summary>Of a square, nobody can tell which side is meant once it is cut: both must match.</summary>
    private IEnumerable<int> Keys(int part, MatchedSide side)
    {
        var isSquare = _request.Parts[part].Length == _request.Parts[part].Width;
        return (isSquare ? Both : side.Each()).Select(s => Key(part, s));
    }

    private void AddGroup(string match, List<int> keys)
    {
        if (keys.Any(key => _sides[key] != _sides[keys[0]] || !IsKept(_sides[key])))
            throw new InvalidOperationException($"{match} must match, and its sides are given several visits.");
        _groups.Add(keys);
        foreach (var key in keys)
            _matched[key] = true;
    }

    private long SizeOf(int key) => _settings[_sides[key]].Distance;

    private HashSet<int> Closure(IEnumerable<int> keys)
    {
        var closure = keys.ToHashSet();
        for (var before = -1; before != closure.Count; )
        {
            before = closure.Count;
            foreach (var group in _groups.Where(g => g.Any(closure.Contains)))
                closure.UnionWith(group);
        }
        return closure;
    }

    private static int Key(int part, MatchedSide side) => SettingPlan.Key(part, side);
}

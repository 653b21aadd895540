using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Planning;

/// <summary>Which setting each side of each part is cut at: one setting for each distinct dimension, unless runs force more.</summary>
internal sealed class SettingTable
{
    private static readonly MatchedSide[] Both = [MatchedSide.Length, MatchedSide.Width];

    private readonly CutRequest _request;
    private readonly List<long> _distances = [];
    private readonly int[] _sides;
    private readonly bool[] _matched;
    private readonly List<List<int>> _groups = [];

    public SettingTable(CutRequest request)
    {
        _request = request;
        _sides = new int[request.Parts.Count * 2];
        _matched = new bool[_sides.Length];
        Number();
        ReadMatches();
    }

    /// <summary>The distance of each setting, in nanometres.</summary>
    public IReadOnlyList<long> Distances => _distances;

    /// <summary>The setting of a side; -1 for a held part.</summary>
    public int Of(int part, MatchedSide side) => _sides[Key(part, side)];

    /// <summary>True when the side must match another.</summary>
    public bool IsMatched(int part, MatchedSide side) => _matched[Key(part, side)];

    /// <summary>Gives these sides, and all that must match them, a setting of their own at the same distance.</summary>
    public void Separate(IEnumerable<(int Part, MatchedSide Side)> sides)
    {
        var moved = Closure(sides.Select(s => Key(s.Part, s.Side)));
        var distance = _distances[_sides[moved.First()]];
        foreach (var key in moved)
            _sides[key] = _distances.Count;
        _distances.Add(distance);
    }

    private void Number()
    {
        var known = new Dictionary<Length, int>();
        for (var part = 0; part < _request.Parts.Count; part++)
            foreach (var side in Both)
                _sides[Key(part, side)] = _request.Parts[part].IsHeld ? -1 : Setting(known, part, side);
    }

    private int Setting(Dictionary<Length, int> known, int part, MatchedSide side)
    {
        var size = _request.Parts[part].Size(side);
        if (known.TryGetValue(size, out var setting))
            return setting;
        _distances.Add(size.Nanometres);
        return known[size] = _distances.Count - 1;
    }

    private void ReadMatches()
    {
        var index = _request.Parts.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
        foreach (var match in _request.Matches)
        {
            var sides = match.Sides.SelectMany(s => Sides(index[s.Part], s.Side)).ToList();
            foreach (var bySize in sides.Where(k => _sides[k] >= 0).GroupBy(k => _sides[k]))
                AddGroup([.. bySize]);
        }
    }

    /// <summary>Of a square, nobody can tell which side is meant once it is cut: both must match.</summary>
    private IEnumerable<int> Sides(int part, MatchedSide side)
    {
        var isSquare = _request.Parts[part].Length == _request.Parts[part].Width;
        return (isSquare ? Both : side.Each()).Select(s => Key(part, s));
    }

    private void AddGroup(List<int> keys)
    {
        _groups.Add(keys);
        foreach (var key in keys)
            _matched[key] = true;
    }

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

    private static int Key(int part, MatchedSide side) => (part * 2) + (side == MatchedSide.Length ? 0 : 1);
}

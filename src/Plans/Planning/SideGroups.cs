using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Planning;

/// <summary>Sides that can only be cut together: those of a match group with one size, and the heights of a run.</summary>
/// <remarks>Groups that share a side are one. Of a square, nobody can tell which side is meant once it is cut: both belong.</remarks>
internal sealed class SideGroups
{
    private static readonly MatchedSide[] Both = [MatchedSide.Length, MatchedSide.Width];

    private readonly CutRequest _request;
    private readonly int[] _parent;
    private readonly bool[] _isGrouped;

    public SideGroups(CutRequest request)
    {
        _request = request;
        _parent = [.. Enumerable.Range(0, request.Parts.Count * 2)];
        _isGrouped = new bool[_parent.Length];
        var index = request.Parts.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
        foreach (var match in request.Matches)
            Join(match.Sides.SelectMany(s => Sides(index[s.Part], s.Side)));
        foreach (var run in request.Runs.Where(r => r.Parts.Count > 0))
            JoinHeights(run, [.. run.Parts.Select(p => index[p])]);
    }

    /// <summary>The number of a side's group; null when nothing holds it.</summary>
    public int? Of(int part, MatchedSide side)
    {
        var key = SettingPlan.Key(part, side);
        return _isGrouped[key] ? Root(key) : null;
    }

    private IEnumerable<(int Part, MatchedSide Side)> Sides(int part, MatchedSide side)
    {
        var isSquare = _request.Parts[part].Length == _request.Parts[part].Width;
        return (isSquare ? Both : side.Each()).Select(s => (part, s));
    }

    private void JoinHeights(CutRun run, List<int> members)
    {
        var height = RunFindings.Height(run, members, _request);
        if (members.All(m => !_request.Parts[m].IsHeld))
            Join(members.SelectMany(m => Sides(m, height)));
    }

    private void Join(IEnumerable<(int Part, MatchedSide Side)> sides)
    {
        foreach (var size in sides.Where(s => !_request.Parts[s.Part].IsHeld).GroupBy(Size))
        {
            var first = -1;
            foreach (var (part, side) in size)
            {
                var key = SettingPlan.Key(part, side);
                _isGrouped[key] = true;
                first = first < 0 ? key : first;
                _parent[Root(key)] = Root(first);
            }
        }
    }

    private Measure.Length Size((int Part, MatchedSide Side) side) => _request.Parts[side.Part].Size(side.Side);

    private int Root(int key)
    {
        while (_parent[key] != key)
            key = _parent[key] = _parent[_parent[key]];
        return key;
    }
}

using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Planning;

/// <summary>Settings for finishing one piece's parts before the next piece's are begun.</summary>
/// <remarks>
/// Each dimension has one kept setting in each piece that needs it, and all settings of a piece come before those of the next.
/// Pieces follow each other as their first parts do in the request; parts of no piece come last, together. What must match
/// across pieces stays whole: it is cut with the earliest of them, so that a later piece may find some of its parts with a
/// side cut already. A run's strip is ripped no later than the first piece that is crosscut from it.
/// </remarks>
internal sealed class BoxByBox
{
    private static readonly MatchedSide[] Both = [MatchedSide.Length, MatchedSide.Width];

    private readonly CutRequest _request;
    private readonly int[] _boxes;

    private BoxByBox(CutRequest request)
    {
        _request = request;
        _boxes = new int[request.Parts.Count * 2];
        NumberByPiece();
        KeepGroupsWhole();
        RipRunsFirst();
    }

    /// <summary>The settings of a request, piece by piece.</summary>
    public static SettingPlan Of(CutRequest request)
    {
        var boxes = new BoxByBox(request)._boxes;
        var plan = SettingPlan.By(request, (part, side) => (boxes[SettingPlan.Key(part, side)], true));
        return plan with { Rules = [.. Rules(plan, boxes)] };
    }

    private void NumberByPiece()
    {
        var pieces = _request.Parts.Select(p => p.Piece).OfType<string>().Distinct().ToList();
        for (var part = 0; part < _request.Parts.Count; part++)
            foreach (var side in Both)
                _boxes[SettingPlan.Key(part, side)] = _request.Parts[part].Piece is { } piece
                    ? pieces.IndexOf(piece)
                    : pieces.Count;
    }

    private void KeepGroupsWhole()
    {
        var groups = new SideGroups(_request);
        var sides = Enumerable.Range(0, _request.Parts.Count).SelectMany(part => Both.Select(side => (part, side)));
        foreach (var group in sides.GroupBy(s => groups.Of(s.part, s.side)).Where(g => g.Key is not null))
        {
            List<int> keys = [.. group.Select(s => SettingPlan.Key(s.part, s.side))];
            Put(keys, keys.Min(key => _boxes[key]));
        }
    }

    /// <summary>A height that is given a box earlier than before may be a width in another run: again until nothing moves.</summary>
    private void RipRunsFirst()
    {
        var index = _request.Parts.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
        for (var isMoved = true; isMoved; )
        {
            isMoved = false;
            foreach (var run in _request.Runs.Where(r => r.Parts.Count > 0))
            {
                List<int> members = [.. run.Parts.Select(p => index[p])];
                var first = Both.SelectMany(side => members.Select(m => _boxes[SettingPlan.Key(m, side)])).Min();
                var height = RunFindings.Height(run, members, _request);
                List<int> heights = [.. members.Select(m => SettingPlan.Key(m, height))];
                isMoved |= heights.Any(key => _boxes[key] != first);
                Put(heights, first);
            }
        }
    }

    private void Put(IEnumerable<int> keys, int box)
    {
        foreach (var key in keys)
            _boxes[key] = box;
    }

    /// <summary>Every setting of a box before every one of the next box that has any.</summary>
    private static IEnumerable<(int First, int Then)> Rules(SettingPlan plan, int[] boxes)
    {
        var settings = plan
            .Sides.Select((setting, key) => (Setting: setting, Box: boxes[key]))
            .Where(s => s.Setting >= 0)
            .Distinct()
            .GroupBy(s => s.Box, s => s.Setting)
            .OrderBy(g => g.Key)
            .Select(g => g.ToList())
            .ToList();
        return settings
            .Zip(settings.Skip(1))
            .SelectMany(pair => pair.First.SelectMany(f => pair.Second.Select(t => (f, t))));
    }
}

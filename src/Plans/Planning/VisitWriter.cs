using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Writes the visits: at each, every cut of its setting that any piece waits for.</summary>
internal sealed class VisitWriter(Script script, SettingOrder order)
{
    private readonly List<Stand> _stands = [];
    private readonly Job _job = script.Job;

    /// <summary>Brings a chunk to the table saw.</summary>
    public void Bring(Wood chunk, Node root) => Become(chunk, root);

    /// <summary>Writes all visits.</summary>
    public void Write()
    {
        while (_stands.Count > 0)
        {
            var setting = Next();
            script.Visit(_job.Distances[setting]);
            for (var i = 0; i < _stands.Count; i++)
                CutAll(_stands[i], setting);
            script.EndVisit();
            _stands.RemoveAll(s => s.IsDone);
        }
    }

    /// <summary>With one visit per dimension, the first in their order; else the one that leaves nothing for a second visit, or cuts most.</summary>
    private int Next()
    {
        var ready = _stands.SelectMany(s => s.Ready()).CountBy(s => s).ToList();
        if (_job.VisitsFirst)
            return ready.MinBy(s => order.Rank(s.Key)).Key;
        var all = _stands.SelectMany(s => s.Coming()).CountBy(s => s).ToDictionary();
        return ready
            .OrderByDescending(s => all[s.Key] == s.Value)
            .ThenByDescending(s => s.Value)
            .ThenByDescending(s => _job.Distances[s.Key])
            .ThenBy(s => s.Key)
            .First()
            .Key;
    }

    private void CutAll(Stand stand, int setting)
    {
        while (!stand.IsDone && stand.Ready().Contains(setting))
            if (stand.Line is not null)
                CutMember(stand);
            else if (
                stand.Pending.FirstOrDefault(c => c.Turn?.Along is not null && c.Settings.Contains(setting)) is { } run
            )
                PartRun(stand, run);
            else
                CutChild(stand, stand.Pending.First(c => c.Setting == setting));
    }

    private void CutChild(Stand stand, Node child)
    {
        var node = stand.Node!;
        stand.Pending.Remove(child);
        if (stand.Wood.Size(node.Axis) == child.Across)
        {
            stand.IsDone = true;
            Become(stand.Wood, child);
            return;
        }
        var (gives, leaves) = script.Cut(CutKind.Sizing, stand.Wood, node.Axis, child.Across);
        Name(stand.Wood, gives, leaves);
        gives.Use = WorkpieceUse.Strip;
        Become(gives, child);
        GoOn(stand, leaves);
    }

    /// <summary>What is left of a piece takes its place; when nothing more is cut from it, its rest does, or it is left over.</summary>
    private void GoOn(Stand stand, Wood? leaves)
    {
        if (leaves is null)
        {
            stand.IsDone = true;
            return;
        }
        leaves.Use = stand.Wood.Use == WorkpieceUse.Sheet ? WorkpieceUse.Chunk : stand.Wood.Use;
        stand.Wood = leaves;
        if (stand.Pending.Count > 0)
            return;
        stand.IsDone = true;
        if (stand.Node?.Rest is { IsRough: false } rest)
            Become(leaves, rest);
        else
            leaves.Leave();
    }

    /// <summary>Takes a run off the strip it lies in, and its segments apart, so that each waits for its own visits.</summary>
    private void PartRun(Stand stand, Node run)
    {
        stand.Pending.Remove(run);
        var axis = stand.Node!.Axis;
        var line = run.Turn!.Along!;
        var wood = stand.Wood;
        if (stand.Pending.Count > 0 || stand.Node.Rest is not null)
        {
            var (gives, leaves) = script.Cut(CutKind.Parting, stand.Wood, axis, run.Across);
            Name(stand.Wood, gives, leaves);
            gives.Use = WorkpieceUse.Strip;
            GoOn(stand, leaves);
            wood = gives;
        }
        else
            stand.IsDone = true;
        PartSegments(wood, axis, line);
    }

    private void PartSegments(Wood wood, SheetAxis axis, RunLine line)
    {
        for (var i = 0; i < line.Segments.Count; i++)
        {
            var segment = line.Segments[i];
            Wood? rest = null;
            if (i < line.Segments.Count - 1)
            {
                var length = segment.Sum(m => m.Size) + (segment.Count * _job.Saws.Kerf);
                var (gives, leaves) = script.Cut(CutKind.Parting, wood, axis, length);
                Name(wood, gives, leaves);
                (gives.Use, leaves!.Use) = (WorkpieceUse.Strip, WorkpieceUse.Strip);
                (wood, rest) = (gives, leaves);
            }
            _stands.Add(new(wood, segment, axis));
            wood = rest ?? wood;
        }
    }

    private void CutMember(Stand stand)
    {
        var member = stand.Line![stand.Cut++];
        if (stand.Wood.Size(stand.Axis) == member.Size)
        {
            Finish(stand.Wood, member.Part);
            stand.IsDone = true;
            return;
        }
        var (gives, leaves) = script.Cut(CutKind.Sizing, stand.Wood, stand.Axis, member.Size);
        Name(stand.Wood, gives, leaves);
        Finish(gives, member.Part);
        if (leaves is null || stand.Cut == stand.Line.Count)
        {
            leaves?.Leave();
            stand.IsDone = true;
            return;
        }
        leaves.Use = WorkpieceUse.Strip;
        stand.Wood = leaves;
    }

    private void Become(Wood wood, Node node)
    {
        if (node.Item is { Run: null } item)
            Finish(wood, item.Parts[0]);
        else
            _stands.Add(new(wood, node));
    }

    private void Finish(Wood wood, int part) =>
        (wood.Use, wood.Part) = (WorkpieceUse.Part, _job.Request.Parts[part].Id);

    /// <summary>The third piece off chunk S2-C1 is S2-C1-3, and what is left then S2-C1/3.</summary>
    private static void Name(Wood on, Wood gives, Wood? leaves)
    {
        var number = on.Given + 1;
        gives.Id = gives.Stem = $"{on.Stem}-{number}";
        if (leaves is null)
            return;
        leaves.Id = $"{on.Stem}/{number}";
        (leaves.Stem, leaves.Given) = (on.Stem, number);
    }
}

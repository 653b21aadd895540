using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Writes the visits: at each, every cut that is planned for it.</summary>
internal sealed class VisitWriter(Script script, SettingOrder order)
{
    private readonly List<(Wood Chunk, Node Root)> _brought = [];
    private readonly List<PinnedWriter> _pinned = [];
    private readonly List<Stand> _stands = [];
    private readonly Job _job = script.Job;
    private TreeCuts _cuts = null!;
    private int _visit = -1;

    /// <summary>Brings a chunk to the table saw.</summary>
    public void Bring(Wood chunk, Node root) => _brought.Add((chunk, root));

    /// <summary>Brings the chunks of a pinned sheet.</summary>
    public void Bring(PinnedWriter sheet) => _pinned.Add(sheet);

    /// <summary>Writes all visits.</summary>
    public void Write()
    {
        _cuts = TreeCuts.Of(_brought.Select(b => (b.Root, b.Chunk.Sheet)), _job, order);
        foreach (var sheet in _pinned)
            sheet.Settle(_cuts);
        foreach (var (chunk, root) in _brought)
            Become(chunk, root);
        for (_visit = 0; _visit < _cuts.Visits.Count; _visit++)
        {
            script.Visit(_cuts.Visits[_visit]);
            for (var i = 0; i < _stands.Count; i++)
                Work(_stands[i]);
            foreach (var sheet in _pinned)
                sheet.Write(_visit);
            script.EndVisit();
            _stands.RemoveAll(s => s.IsDone);
        }
        if (_stands.Any(s => !s.IsDone))
            throw new InvalidOperationException("A piece waits at the table saw, and no visit is left.");
    }

    private void Work(Stand stand)
    {
        Settle(stand);
        while (!stand.IsDone && stand.Line is not null && _cuts.VisitOf(stand.Line[stand.Cut]) == _visit)
            CutMember(stand);
        while (stand.Pending.Find(c => c.Setting >= 0 && _cuts.VisitOf(c) == _visit) is { } child)
            CutChild(stand, child);
    }

    /// <summary>Running grain is parted off its strip at the first visit that cuts anything of the piece it lies in, and what is left of a full piece is its last child.</summary>
    private void Settle(Stand stand)
    {
        while (!stand.IsDone && IsWorkedOn(stand) && stand.Pending.Find(c => c.Turn?.Along is not null) is { } run)
            PartRun(stand, run);
        while (!stand.IsDone && _visit >= 0 && stand.Pending.Find(c => c.IsBlock) is { } block)
            PartBlock(stand, block);
        if (!stand.IsDone && stand.Pending is [{ Setting: >= 0 } last] && stand.Wood.Size(stand.Axis) == last.Across)
            Remain(stand, last);
    }

    private bool IsWorkedOn(Stand stand) =>
        _visit >= 0 && (stand.Node is null || stand.Node.All().Any(n => Cuts(n).Contains(_visit)));

    private IEnumerable<int> Cuts(Node node) =>
        node.Turn?.Along is { } line ? line.Segments.SelectMany(s => s).Select(_cuts.VisitOf)
        : node.Setting >= 0 ? [_cuts.VisitOf(node)]
        : [];

    private void Remain(Stand stand, Node last)
    {
        stand.Pending.Clear();
        stand.IsDone = true;
        Become(stand.Wood, last);
    }

    private void CutChild(Stand stand, Node child)
    {
        stand.Pending.Remove(child);
        var (gives, leaves) = script.Cut(CutKind.Sizing, stand.Wood, stand.Axis, child.Across);
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
        {
            Settle(stand);
            return;
        }
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

    /// <summary>Takes a block off whose size no setting gives.</summary>
    private void PartBlock(Stand stand, Node block)
    {
        stand.Pending.Remove(block);
        if (stand.Wood.Size(stand.Axis) == block.Across)
        {
            stand.IsDone = true;
            Become(stand.Wood, block);
            return;
        }
        var (gives, leaves) = script.Cut(CutKind.Parting, stand.Wood, stand.Axis, block.Across);
        Name(stand.Wood, gives, leaves);
        gives.Use = WorkpieceUse.Chunk;
        Become(gives, block);
        GoOn(stand, leaves);
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
        {
            var stand = new Stand(wood, node);
            _stands.Add(stand);
            Settle(stand);
        }
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

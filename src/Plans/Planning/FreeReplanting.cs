using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Takes trees over into a job where every distance may be visited as often as it takes, but for what must be cut together.</summary>
internal sealed class FreeReplanting : Replanting
{
    private FreeReplanting(Trees from, Job to)
        : base(from, to) { }

    /// <summary>Settings that are free but for what must be cut together; no size comes about without one.</summary>
    public static SettingPlan Settings(CutRequest request) => SettingPlan.Free(request) with { CutsAll = true };

    /// <summary>A search that goes on from trees.</summary>
    public static Search Of(Trees from, int seed)
    {
        var search = new Search(JobOf(from), seed);
        new FreeReplanting(from, search.Job).Take(search.Layout, _ => true);
        return search;
    }

    /// <summary>A search that goes on from trees, the sheets of one material taken from other trees.</summary>
    public static Search Mixed(Trees from, Trees other, string material, int seed)
    {
        var search = new Search(JobOf(from), seed);
        new FreeReplanting(from, search.Job).Take(search.Layout, m => m != material);
        new FreeReplanting(other, search.Job).Take(search.Layout, m => m == material);
        return search;
    }

    private static Job JobOf(Trees from) => JobReader.Read(from.Job.Request, Settings(from.Job.Request));

    /// <summary>A part's own; a strip's is that of what takes its whole size and must be cut with others, else a free one.</summary>
    protected override int? SettingOf(Node node, Node parent)
    {
        if (node.Item is not null)
            return Now(node).Setting(parent.Axis);
        var distance = From.Job.Distances[node.Setting];
        var wanted = node.Children.Where(c => c.Item is not null).Select(c => Now(c).Setting(parent.Axis));
        return wanted.Where(s => To.IsKept(s) && To.Distances[s] == distance).DefaultIfEmpty(AnyOf(distance)).First();
    }

    /// <summary>Sides that must be cut together do not share a strip with others that must, at another setting.</summary>
    protected override Turn? TurnOf(Node leaf, int setting, Node strip)
    {
        var now = Now(leaf);
        if (leaf.Turn!.Along is not null && !IsSameRun(leaf.Turn, now))
            return null;
        var across = now.Setting(strip.Axis.Other());
        return strip.Setting < 0 || !To.IsKept(across) || across == strip.Setting ? now : null;
    }

    private Turn Now(Node leaf) =>
        To.Items[leaf.Item!.Id]
            .Turns.First(t =>
                (t.X, t.Y, t.Figure) == (leaf.Turn!.X, leaf.Turn.Y, leaf.Turn.Figure)
                || (t.Along?.Axis is { } axis && axis == leaf.Turn.Along?.Axis)
            );

    private int AnyOf(long distance) =>
        Enumerable.Range(0, To.Settings.Count).Where(s => To.Distances[s] == distance).OrderBy(To.IsKept).First();
}

using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Puts items into trees of sizing cuts and takes them out again, keeping the order of visits free of circles.</summary>
internal sealed class Growth(Job job, SettingOrder order)
{
    private readonly long _kerf = job.Saws.Kerf;

    /// <summary>Puts an item in its spot.</summary>
    public void Put(Item item, Spot spot)
    {
        var node = spot.Node;
        if (spot.Joining == Joining.Turned)
            node.Turn90();
        if (spot.Joining is Joining.SmoothRest or Joining.RoughRest)
            node = AddRest(node, spot.Joining == Joining.RoughRest);
        if (spot.Turn.Along is { } line && line.Axis == node.Axis)
            AddRun(node, item, spot.Turn);
        else
            AddStrip(node, item, spot.Turn);
    }

    /// <summary>Takes a node out with all below, and whatever cannot stay without it; returns the items that are free again.</summary>
    public List<Item> TakeOut(Node node)
    {
        var items = node.Leaves().Select(l => l.Item!).ToList();
        DropRules(node);
        Unlink(node, items);
        return items;
    }

    /// <summary>Takes back the rules of a tree.</summary>
    public void DropRules(Node tree)
    {
        foreach (var (first, then) in tree.All().SelectMany(n => n.Rules))
            order.Remove(first, then);
    }

    /// <summary>Brings back the rules of a tree.</summary>
    public void BringRules(Node tree)
    {
        foreach (var (first, then) in tree.All().SelectMany(n => n.Rules))
            order.Add(first, then);
    }

    /// <summary>The settings that must be visited before a child of this node is cut.</summary>
    public static IReadOnlyList<int> Before(Node node) =>
        node.IsRough ? []
        : node.IsRest ? SettingsOfChildren(node.Parent!)
        : node.Setting >= 0 ? [node.Setting]
        : [];

    /// <summary>The settings of all children of a node.</summary>
    public static IReadOnlyList<int> SettingsOfChildren(Node node) =>
        [.. node.Children.SelectMany(c => c.Settings).Distinct()];

    private Node AddRest(Node node, bool isRough)
    {
        var gap = isRough ? job.Saws.RoughGap : _kerf;
        var span = Span.Beyond(node, gap);
        node.Rest = new()
        {
            Parent = node,
            Axis = span.Axis,
            Along = span.Room,
            Across = span.Across,
            OpenAlong = span.OpenAlong,
            OpenAcross = span.OpenAcross,
            IsRough = isRough,
        };
        return node.Rest;
    }

    private void AddRun(Node node, Item item, Turn turn)
    {
        var length = turn.Size(node.Axis);
        var room = Span.Of(node, _kerf).Room;
        // A kerf of slack lets the run be parted from what follows; a run that fills the strip alone needs none.
        var size = length + _kerf <= room ? length + _kerf : length;
        var child = NewChild(node, size, -1);
        (child.Item, child.Turn) = (item, turn);
    }

    private void AddStrip(Node node, Item item, Turn turn)
    {
        var before = Before(node);
        var strip = NewChild(node, turn.Size(node.Axis), turn.Setting(node.Axis));
        strip.Rules = Rules(before, strip.Setting);
        if (IsWhole(node, turn))
            (strip.Item, strip.Turn) = (item, turn);
        else if (turn.Along is not null)
            AddRun(strip, item, turn);
        else
            AddEnd(strip, item, turn);
        foreach (var (first, then) in strip.Rules)
            order.Add(first, then);
    }

    private void AddEnd(Node strip, Item item, Turn turn)
    {
        var end = NewChild(strip, turn.Size(strip.Axis), turn.Setting(strip.Axis));
        (end.Item, end.Turn) = (item, turn);
        end.Rules = Rules([strip.Setting], end.Setting);
        foreach (var (first, then) in end.Rules)
            order.Add(first, then);
    }

    private bool IsWhole(Node node, Turn turn) =>
        turn.Along is null
        && turn.Size(node.Axis.Other()) == node.Across
        && Spots.TakesWhole(Span.Of(node, _kerf), turn, job);

    private (int First, int Then)[] Rules(IReadOnlyList<int> before, int setting) =>
        job.VisitsFirst ? [.. before.Where(b => b != setting).Select(b => (b, setting))] : [];

    private Node NewChild(Node node, long size, int setting)
    {
        var child = new Node
        {
            Parent = node,
            Axis = node.Axis.Other(),
            Along = node.Across,
            Across = size,
            OpenAlong = node.OpenAcross,
            Setting = setting,
        };
        node.Used += size + (node.Children.Count > 0 ? _kerf : 0);
        node.Children.Add(child);
        return child;
    }

    private void Unlink(Node node, List<Item> items)
    {
        var parent = node.Parent;
        if (parent is null)
            Clear(node);
        else if (parent.Rest == node)
            parent.Rest = null;
        else
        {
            parent.Children.Remove(node);
            parent.Used -= node.Across + (parent.Children.Count > 0 ? _kerf : 0);
            DropLooseRest(parent, items);
            if (parent.Children.Count == 0)
                Unlink(Bare(parent), items);
        }
    }

    /// <summary>A node that has lost its last child takes its own rules with it.</summary>
    private Node Bare(Node node)
    {
        DropRules(node);
        node.Rules = [];
        return node;
    }

    /// <summary>A smooth rest stands on its siblings' cuts, and a rough one on there being siblings at all.</summary>
    private void DropLooseRest(Node node, List<Item> items)
    {
        if (node.Rest is null || (node.Rest.IsRough && node.Children.Count > 0))
            return;
        items.AddRange(node.Rest.Leaves().Select(l => l.Item!));
        DropRules(node.Rest);
        node.Rest = null;
    }

    private static void Clear(Node root)
    {
        root.Children.Clear();
        root.Rest = null;
        root.Used = 0;
    }
}

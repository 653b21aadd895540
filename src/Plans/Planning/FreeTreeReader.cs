using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Reads a free tree out of the search's cells as strips, and as blocks that are parted at a pencil line.</summary>
internal sealed class FreeTreeReader(Job job, Cell[] cells)
{
    private readonly long _kerf = job.Saws.Kerf;

    /// <summary>The tree of a region.</summary>
    public Node Read(int root)
    {
        ref var cell = ref cells[root];
        var node = new Node
        {
            Axis = cell.Axis,
            Along = cell.Along,
            Across = cell.Across,
            OpenAlong = cell.OpenAlong,
            OpenAcross = cell.OpenAcross,
            IsRough = true,
        };
        AddChildren(node, root);
        return node;
    }

    private void AddChildren(Node node, int at)
    {
        for (var child = cells[at].First; child >= 0; child = cells[child].Next)
        {
            ref var cell = ref cells[child];
            var strip = NewChild(node, cell.LeastAcross, SettingOf(child, node.Axis));
            if (cell.Item < 0)
                AddChildren(strip, child);
            else
                AddEnd(strip, job.Items[cell.Item], job.Items[cell.Item].Turns[cell.Turn]);
        }
    }

    private void AddEnd(Node strip, Item item, Turn turn)
    {
        var end = NewChild(strip, turn.Size(strip.Axis), turn.Setting(strip.Axis));
        (end.Item, end.Turn) = (item, turn);
    }

    /// <summary>The setting that gives a cell its size: of an item as wide as it; -1 when what is in it adds up to that.</summary>
    private int SettingOf(int at, SheetAxis axis)
    {
        ref var cell = ref cells[at];
        if (cell.Item >= 0)
            return job.Items[cell.Item].Turns[cell.Turn].Setting(axis);
        for (var child = cell.First; child >= 0; child = cells[child].Next)
            if (cells[child].LeastAlong == cell.LeastAcross && cells[child].Item >= 0)
                return SettingOf(child, axis);
        return -1;
    }

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
}

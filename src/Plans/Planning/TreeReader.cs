namespace Nookwright.Planning;

/// <summary>Reads the tree of a region out of the search's cells.</summary>
internal static class TreeReader
{
    /// <summary>The tree from a cell on.</summary>
    public static Node Read(Job job, Cell[] cells, int at, Node? parent)
    {
        ref var cell = ref cells[at];
        var item = cell.Item < 0 ? null : job.Items[cell.Item];
        var node = new Node
        {
            Parent = parent,
            Axis = cell.Axis,
            Along = cell.Along,
            Across = cell.Across,
            Used = cell.Used,
            Setting = cell.Setting,
            OpenAlong = cell.OpenAlong,
            OpenAcross = cell.OpenAcross,
            IsRough = cell.IsRough,
            Item = item,
            Turn = item?.Turns[cell.Turn],
        };
        for (var child = cell.First; child >= 0; child = cells[child].Next)
            node.Children.Insert(0, Read(job, cells, child, node));
        if (cell.Rest >= 0)
            node.Rest = Read(job, cells, cell.Rest, node);
        return node;
    }
}

namespace Nookwright.Planning;

/// <summary>Writes trees into the cells of a sheet, as <see cref="TreeReader"/> reads them.</summary>
/// <param name="job">The job the cells are for.</param>
/// <param name="sheet">A sheet with nothing in it.</param>
internal sealed class TreeWriter(Job job, SheetLayout sheet)
{
    /// <summary>Writes a region's tree.</summary>
    /// <param name="root">The region's number.</param>
    /// <param name="node">Its tree, with the settings of this job.</param>
    public void Write(int root, Node node)
    {
        Place(root, node);
        WriteBelow(root, node);
    }

    private void WriteBelow(int at, Node node)
    {
        foreach (var child in node.Children)
        {
            var cell = Add(at, child);
            sheet.Cells[cell].Next = sheet.Cells[at].First;
            sheet.Cells[at].First = cell;
            sheet.Cells[at].Children++;
            sheet.Cells[at].IsFull |= child.Turn?.Along is not null && child.Across == child.Turn.Size(node.Axis);
        }
        if (node.Rest is not { } rest)
            return;
        var beyond = Add(at, rest);
        sheet.Cells[beyond].IsRest = true;
        sheet.Cells[at].Rest = beyond;
    }

    private int Add(int parent, Node node)
    {
        var at = sheet.NewCell();
        sheet.Cells[at].Parent = parent;
        sheet.Cells[at].Setting = node.Setting;
        Place(at, node);
        if (node.Item is { } item)
            Fill(at, job.Items[item.Id], node.Turn!.Number);
        WriteBelow(at, node);
        return at;
    }

    private void Fill(int at, Item item, int turn)
    {
        (sheet.Cells[at].Item, sheet.Cells[at].Turn) = (item.Id, turn);
        sheet.Filled += item.Area;
        sheet.Count++;
    }

    private void Place(int at, Node node)
    {
        ref var cell = ref sheet.Cells[at];
        (cell.Axis, cell.Along, cell.Across) = (node.Axis, node.Along, node.Across);
        (cell.OpenAlong, cell.OpenAcross, cell.IsRough) = (node.OpenAlong, node.OpenAcross, node.IsRough);
    }
}

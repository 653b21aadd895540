using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Puts items into the trees of a sheet and takes them out again; <see cref="Sizing"/> then draws up what follows.</summary>
internal sealed class Growth(Job job) : IGrowth
{
    private readonly long _kerf = job.Saws.Kerf;

    /// <inheritdoc/>
    public void Put(SheetLayout sheet, Item item, in Spot spot)
    {
        var at = spot.Cell;
        if (spot.Joining == Joining.Turned)
            TurnRound(ref sheet.Cells[at]);
        if (spot.Joining is Joining.SmoothRest or Joining.RoughRest)
            at = AddRest(sheet, at, spot.Joining == Joining.RoughRest);
        if (spot.Turn.Along is { } line && line.Axis == sheet.Cells[at].Axis)
            AddRun(sheet, at, item, spot.Turn);
        else
            AddStrip(sheet, at, item, spot.Turn);
        sheet.Filled += item.Area;
        sheet.Count++;
    }

    /// <inheritdoc/>
    public void TakeOut(SheetLayout sheet, int cell, List<Item> free)
    {
        var cells = sheet.Cells;
        var parent = cells[cell].Parent;
        if (parent < 0)
            ClearRoot(sheet, cell, free);
        else if (cells[cell].IsRest)
        {
            cells[parent].Rest = -1;
            Drop(sheet, cell, free);
        }
        else
        {
            CellLinks.Unlink(cells, parent, cell);
            Drop(sheet, cell, free);
            if (cells[parent].Children == 0)
                Bare(sheet, parent, free);
        }
    }

    /// <summary>A cell that has lost its last child goes too; a root takes over what lay beyond its children.</summary>
    private void Bare(SheetLayout sheet, int at, List<Item> free)
    {
        ref var cell = ref sheet.Cells[at];
        if (cell.Parent >= 0)
            TakeOut(sheet, at, free);
        else if (cell.Rest >= 0)
            TakeOver(sheet, at);
    }

    private static void TakeOver(SheetLayout sheet, int root)
    {
        var cells = sheet.Cells;
        var rest = cells[root].Rest;
        TurnRound(ref cells[root]);
        cells[root].First = cells[rest].First;
        cells[root].Children = cells[rest].Children;
        cells[root].Rest = cells[rest].Rest;
        cells[root].IsFull = cells[rest].IsFull;
        for (var child = cells[root].First; child >= 0; child = cells[child].Next)
            cells[child].Parent = root;
        if (cells[root].Rest >= 0)
            cells[cells[root].Rest].Parent = root;
        sheet.Free(rest);
    }

    private void ClearRoot(SheetLayout sheet, int root, List<Item> free)
    {
        DropContents(sheet, root, free);
        ref var cell = ref sheet.Cells[root];
        (cell.First, cell.Rest, cell.Children, cell.Used, cell.IsFull) = (-1, -1, 0, 0, false);
    }

    private void Drop(SheetLayout sheet, int at, List<Item> free)
    {
        if (sheet.Cells[at].Item is >= 0 and var id)
        {
            var item = job.Items[id];
            free.Add(item);
            sheet.Filled -= item.Area;
            sheet.Count--;
        }
        DropContents(sheet, at, free);
        sheet.Free(at);
    }

    private void DropContents(SheetLayout sheet, int at, List<Item> free)
    {
        var cells = sheet.Cells;
        for (var child = cells[at].First; child >= 0; )
        {
            var next = cells[child].Next;
            Drop(sheet, child, free);
            child = next;
        }
        if (cells[at].Rest >= 0)
            Drop(sheet, cells[at].Rest, free);
    }

    private static void TurnRound(ref Cell cell)
    {
        cell.Axis = cell.Axis.Other();
        (cell.Along, cell.Across) = (cell.Across, cell.Along);
        (cell.OpenAlong, cell.OpenAcross) = (cell.OpenAcross, cell.OpenAlong);
    }

    private int AddRest(SheetLayout sheet, int at, bool isRough)
    {
        var rest = sheet.NewCell();
        var cells = sheet.Cells;
        cells[at].Rest = rest;
        ref var cell = ref cells[rest];
        cell.Parent = at;
        cell.Axis = cells[at].Axis.Other();
        cell.Along = cells[at].Across;
        cell.Across = cells[at].Along - cells[at].Used - (isRough ? job.Saws.RoughGap : _kerf);
        (cell.OpenAlong, cell.OpenAcross) = (cells[at].OpenAcross, cells[at].OpenAlong);
        (cell.IsRough, cell.IsRest) = (isRough, true);
        return rest;
    }

    private void AddRun(SheetLayout sheet, int at, Item item, Turn turn)
    {
        ref var cell = ref sheet.Cells[at];
        var length = turn.Size(cell.Axis);
        var room = cell.Along - cell.LeastAlong - (cell.Children > 0 ? _kerf : 0);
        // A kerf of slack lets the run be parted from what follows; a run that fills the strip alone needs none.
        var hasSlack = length + _kerf <= room;
        cell.IsFull = !hasSlack;
        AddLeaf(sheet, at, hasSlack ? length + _kerf : length, -1, item, turn);
    }

    private void AddStrip(SheetLayout sheet, int at, Item item, Turn turn)
    {
        ref var cell = ref sheet.Cells[at];
        var (size, setting) = (turn.Size(cell.Axis), turn.Setting(cell.Axis));
        if (turn.Along is null && Spots.TakesWhole(cell, turn, job))
        {
            AddLeaf(sheet, at, size, setting, item, turn);
            return;
        }
        var strip = NewChild(sheet, at, size, setting);
        if (turn.Along is not null)
            AddRun(sheet, strip, item, turn);
        else
            AddLeaf(
                sheet,
                strip,
                turn.Size(sheet.Cells[strip].Axis),
                turn.Setting(sheet.Cells[strip].Axis),
                item,
                turn
            );
    }

    private static void AddLeaf(SheetLayout sheet, int at, long size, int setting, Item item, Turn turn)
    {
        var leaf = NewChild(sheet, at, size, setting);
        sheet.Cells[leaf].Item = item.Id;
        sheet.Cells[leaf].Turn = turn.Number;
    }

    private static int NewChild(SheetLayout sheet, int at, long size, int setting)
    {
        var child = sheet.NewCell();
        var cells = sheet.Cells;
        ref var cell = ref cells[child];
        cell.Parent = at;
        cell.Axis = cells[at].Axis.Other();
        cell.Along = cells[at].Across;
        cell.Across = size;
        cell.OpenAlong = cells[at].OpenAcross;
        cell.Setting = setting;
        cell.Next = cells[at].First;
        cells[at].First = child;
        cells[at].Children++;
        return child;
    }
}

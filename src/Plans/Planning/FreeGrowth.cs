using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Puts items into free trees and takes them out again.</summary>
/// <remarks>
/// Where nothing holds the order of visits, no size need come from a setting: a cell is as wide as what is in it. Items and
/// cells lie side by side along a cell's axis, each child that is no item turns the axis, and none has a single child but a
/// root. Such trees are all the guillotine patterns there are.
/// </remarks>
internal sealed class FreeGrowth(Job job) : IGrowth
{
    /// <inheritdoc/>
    public void Put(SheetLayout sheet, Item item, in Spot spot)
    {
        var at = spot.Joining switch
        {
            Joining.Wrap => Wrap(sheet, spot.Cell),
            Joining.Beyond => Beyond(sheet, spot.Cell),
            _ => spot.Cell,
        };
        var leaf = sheet.NewCell();
        sheet.Cells[leaf].Item = item.Id;
        sheet.Cells[leaf].Turn = spot.Turn.Number;
        Link(sheet.Cells, at, leaf);
        sheet.Filled += item.Area;
        sheet.Count++;
    }

    /// <inheritdoc/>
    public void TakeOut(SheetLayout sheet, int cell, List<Item> free)
    {
        var cells = sheet.Cells;
        var parent = cells[cell].Parent;
        if (parent < 0)
        {
            DropContents(sheet, cell, free);
            (cells[cell].First, cells[cell].Children) = (-1, 0);
            return;
        }
        CellLinks.Unlink(cells, parent, cell);
        Drop(sheet, cell, free);
        if (cells[parent].Children == 1)
            Flatten(sheet, parent);
    }

    /// <summary>A cell in the place of a child, with the child in it.</summary>
    private static int Wrap(SheetLayout sheet, int child)
    {
        var wrap = sheet.NewCell();
        var cells = sheet.Cells;
        var parent = cells[child].Parent;
        CellLinks.Unlink(cells, parent, child);
        Link(cells, parent, wrap);
        Link(cells, wrap, child);
        return wrap;
    }

    /// <summary>All that is in a root goes into one cell, so that something may lie beyond it; a single item may stay as it is.</summary>
    private static int Beyond(SheetLayout sheet, int root)
    {
        if (sheet.Cells[root].Children == 1)
        {
            TurnRound(ref sheet.Cells[root]);
            return root;
        }
        var inner = sheet.NewCell();
        var cells = sheet.Cells;
        Move(cells, root, inner);
        TurnRound(ref cells[root]);
        Link(cells, root, inner);
        return root;
    }

    private static void Move(Cell[] cells, int from, int to)
    {
        (cells[to].First, cells[to].Children) = (cells[from].First, cells[from].Children);
        (cells[from].First, cells[from].Children) = (-1, 0);
        for (var child = cells[to].First; child >= 0; child = cells[child].Next)
            cells[child].Parent = to;
    }

    /// <summary>A cell with a single child gives way to it; a child that is no item then lies along the parent's own axis.</summary>
    private static void Flatten(SheetLayout sheet, int at)
    {
        var cells = sheet.Cells;
        var child = cells[at].First;
        var isItem = cells[child].Item >= 0;
        if (cells[at].Parent is >= 0 and var parent)
        {
            CellLinks.Unlink(cells, parent, at);
            CellLinks.Unlink(cells, at, child);
            sheet.Free(at);
            if (isItem)
                Link(cells, parent, child);
            else
                Splice(sheet, child, parent);
        }
        else if (!isItem)
        {
            CellLinks.Unlink(cells, at, child);
            TurnRound(ref cells[at]);
            Move(cells, child, at);
            sheet.Free(child);
        }
    }

    private static void Splice(SheetLayout sheet, int cell, int into)
    {
        var cells = sheet.Cells;
        for (var child = cells[cell].First; child >= 0; )
        {
            var next = cells[child].Next;
            Link(cells, into, child);
            child = next;
        }
        sheet.Free(cell);
    }

    private static void Link(Cell[] cells, int parent, int child)
    {
        cells[child].Parent = parent;
        cells[child].Axis = cells[parent].Axis.Other();
        cells[child].Next = cells[parent].First;
        cells[parent].First = child;
        cells[parent].Children++;
    }

    private static void TurnRound(ref Cell cell)
    {
        cell.Axis = cell.Axis.Other();
        (cell.Along, cell.Across) = (cell.Across, cell.Along);
        (cell.OpenAlong, cell.OpenAcross) = (cell.OpenAcross, cell.OpenAlong);
    }

    private void Drop(SheetLayout sheet, int at, List<Item> free)
    {
        if (sheet.Cells[at].Item is >= 0 and var id)
        {
            free.Add(job.Items[id]);
            sheet.Filled -= job.Items[id].Area;
            sheet.Count--;
        }
        DropContents(sheet, at, free);
        sheet.Free(at);
    }

    private void DropContents(SheetLayout sheet, int at, List<Item> free)
    {
        for (var child = sheet.Cells[at].First; child >= 0; )
        {
            var next = sheet.Cells[child].Next;
            Drop(sheet, child, free);
            child = next;
        }
    }
}

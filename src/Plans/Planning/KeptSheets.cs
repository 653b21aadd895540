namespace Nookwright.Planning;

/// <summary>The sheets of a plan made before, with what an edit has changed taken out, as sheets of the job as it is now.</summary>
internal sealed class KeptSheets
{
    private readonly Job _job;
    private readonly Kinship _kinship;
    private readonly Layout _before;
    private readonly PlannedTrees _trees;
    private readonly int[] _taken;

    public KeptSheets(PlannedTrees trees, Job job, Kinship kinship)
    {
        (_job, _kinship, _trees) = (job, kinship, trees);
        _before = new(trees.Job);
        _before.Restore(trees.Picture);
        _taken = new int[job.Stocks.Count];
    }

    /// <summary>The sheets that still hold something, in their order.</summary>
    public List<SheetLayout> Take()
    {
        var order = SettingOrder.Of(_job);
        foreach (var (first, then) in _job.FirstRules)
            order.Add(first, then);
        return [.. _before.Sheets.ToList().Select(s => Kept(s, order)).OfType<SheetLayout>()];
    }

    private SheetLayout? Kept(SheetLayout sheet, SettingOrder order)
    {
        if (_kinship.Of(sheet.Stock) is not { } stock || _taken[stock.Index] >= stock.Quantity)
            return null;
        if (sheet.Rough.Leaves().Any(l => l.Held is { } held && _kinship.Of(held) is null))
            return null;
        TakeOutChanged(sheet);
        if (sheet.Count == 0 && !sheet.HasHeld)
            return null;
        var rules = sheet
            .Rules.ToArray()
            .Select(r => (First: _kinship.Of(r.First)!.Value, Then: _kinship.Of(r.Then)!.Value));
        foreach (var (first, then) in rules)
        {
            if (!order.Allows(first, then))
                return null;
            order.Add(first, then);
        }
        _taken[stock.Index]++;
        return sheet.As(stock, sheet.Rough.As(held => _kinship.Of(held)!), Now);
    }

    /// <summary>Takes out every cell whose item has changed, or whose setting no part has any more, with all that is in it.</summary>
    private void TakeOutChanged(SheetLayout sheet)
    {
        while (
            Enumerable.Range(0, sheet.RootCount).Select(r => Changed(sheet.Cells, r)).FirstOrDefault(c => c >= 0, -1)
                is >= 0
                    and var cell
        )
            _before.TakeOut(sheet, cell);
    }

    /// <summary>The first changed cell from here on, or -1.</summary>
    private int Changed(Cell[] cells, int at)
    {
        ref var cell = ref cells[at];
        if (cell.Item >= 0 && _kinship.Of(_trees.Job.Items[cell.Item]) is null)
            return at;
        if (_kinship.Of(cell.Setting) is null)
            return at;
        for (var child = cell.First; child >= 0; child = cells[child].Next)
            if (Changed(cells, child) is >= 0 and var found)
                return found;
        return cell.Rest >= 0 ? Changed(cells, cell.Rest) : -1;
    }

    private Cell Now(Cell cell)
    {
        if (cell.Item >= 0)
            cell.Item = _kinship.Of(_trees.Job.Items[cell.Item])?.Id ?? -1;
        cell.Setting = _kinship.Of(cell.Setting) ?? -1;
        return cell;
    }
}

namespace Nookwright.Planning;

/// <summary>All sheets as planned so far, and what is still without a place.</summary>
internal sealed class Layout
{
    private readonly Job _job;
    private readonly int[] _taken;
    private readonly IGrowth _growth;
    private readonly ISizing _sizing;

    public Layout(Job job)
    {
        (_job, Order) = (job, SettingOrder.Of(job));
        _taken = new int[job.Stocks.Count];
        _growth = job.HasOrder ? new Growth(job) : new FreeGrowth(job);
        _sizing = job.HasOrder ? new Sizing(job, Order) : new FreeSizing(job);
        foreach (var (first, then) in job.FirstRules)
            Order.Add(first, then);
    }

    public SettingOrder Order { get; }

    public List<SheetLayout> Sheets { get; private set; } = [];

    /// <summary>Items without a place.</summary>
    public List<Item> Waiting { get; } = [];

    /// <summary>Held blanks without a place.</summary>
    public List<Item> WaitingBlanks { get; } = [];

    /// <summary>True when one more of a kind of sheet can be had.</summary>
    public bool HasMore(Stock stock) => _taken[stock.Index] < stock.Quantity;

    /// <summary>Adds a fresh sheet.</summary>
    public void Add(SheetLayout sheet)
    {
        _taken[sheet.Stock.Index]++;
        Sheets.Add(sheet);
        _sizing.Refresh(sheet);
    }

    /// <summary>True when the rules that a sheet's cuts bring in close no circle with those of the others.</summary>
    public bool Takes(SheetLayout sheet)
    {
        var trial = sheet.Copy();
        new Sizing(_job, SettingOrder.Of(_job)).Refresh(trial);
        var added = 0;
        foreach (var (first, then) in trial.Rules)
        {
            if (!Order.Allows(first, then))
                break;
            Order.Add(first, then);
            added++;
        }
        foreach (var (first, then) in trial.Rules[..added])
            Order.Remove(first, then);
        return added == trial.RuleCount;
    }

    /// <summary>Puts the sheet added last back on the pile, with nothing cut from it.</summary>
    public void DropLast()
    {
        Close(Sheets[^1], true);
        Sheets.RemoveAt(Sheets.Count - 1);
    }

    /// <summary>Puts an item in its spot.</summary>
    public void Put(Item item, in Spot spot)
    {
        _growth.Put(spot.Sheet!, item, spot);
        _sizing.Refresh(spot.Sheet!);
    }

    /// <summary>Takes a cell out of a sheet; its items wait.</summary>
    public void TakeOut(SheetLayout sheet, int cell)
    {
        _growth.TakeOut(sheet, cell, Waiting);
        _sizing.Refresh(sheet);
    }

    /// <summary>Takes all items out of a sheet.</summary>
    public void Clear(SheetLayout sheet)
    {
        for (var root = 0; root < sheet.RootCount; root++)
            _growth.TakeOut(sheet, root, Waiting);
        _sizing.Refresh(sheet);
    }

    /// <summary>Puts a sheet back on the pile, or takes it off again: it stays in its place among the sheets, closed.</summary>
    public void Close(SheetLayout sheet, bool isClosed)
    {
        if (sheet.IsClosed == isClosed)
            return;
        sheet.IsClosed = isClosed;
        _taken[sheet.Stock.Index] += isClosed ? -1 : 1;
    }

    /// <summary>Forgets sheets that hold nothing any more.</summary>
    public void CloseEmpty()
    {
        foreach (var sheet in Sheets.Where(IsIdle))
            Close(sheet, true);
        Sheets.RemoveAll(s => s.IsClosed);
    }

    /// <summary>A picture to come back to.</summary>
    public Picture Copy() => new([.. Sheets.Where(s => !s.IsClosed).Select(s => s.Copy())], [.. Waiting]);

    /// <summary>Becomes like another layout of the same job.</summary>
    public void TakeOver(Layout other)
    {
        Restore(other.Copy());
        WaitingBlanks.Clear();
        WaitingBlanks.AddRange(other.WaitingBlanks);
    }

    /// <summary>Replaces all sheets by a picture of them.</summary>
    public void Restore(Picture picture)
    {
        foreach (var sheet in Sheets)
            _sizing.DropRules(sheet);
        Sheets = [.. picture.Sheets.Select(s => s.Copy())];
        Array.Clear(_taken);
        foreach (var sheet in Sheets)
        {
            _sizing.BringRules(sheet);
            _taken[sheet.Stock.Index]++;
        }
        Waiting.Clear();
        Waiting.AddRange(picture.Waiting);
    }

    /// <summary>Makes some sheets what their pictures say, and drops those opened since there were so many.</summary>
    public void StepBack(IReadOnlyList<(SheetLayout Sheet, SheetLayout Picture)> pictures, int count)
    {
        foreach (var (sheet, _) in pictures)
            _sizing.DropRules(sheet);
        for (var i = count; i < Sheets.Count; i++)
        {
            _sizing.DropRules(Sheets[i]);
            Close(Sheets[i], true);
        }
        Sheets.RemoveRange(count, Sheets.Count - count);
        foreach (var (sheet, picture) in pictures)
        {
            Close(sheet, picture.IsClosed);
            sheet.CopyFrom(picture);
            _sizing.BringRules(sheet);
        }
    }

    private static bool IsIdle(SheetLayout sheet) => sheet.Count == 0 && !sheet.HasHeld;
}

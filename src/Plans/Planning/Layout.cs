namespace Nookwright.Planning;

/// <summary>All sheets as planned so far, and what is still without a place.</summary>
internal sealed class Layout
{
    private readonly int[] _taken;

    public Layout(Job job, SettingOrder order)
    {
        Order = order;
        _taken = new int[job.Stocks.Count];
        Growth = new(job, order);
        foreach (var (first, then) in job.RunRules)
            order.Add(first, then);
    }

    public SettingOrder Order { get; }

    public Growth Growth { get; }

    public List<SheetLayout> Sheets { get; private set; } = [];

    /// <summary>Items without a place.</summary>
    public List<Item> Waiting { get; } = [];

    /// <summary>Held blanks without a place.</summary>
    public List<Item> WaitingBlanks { get; } = [];

    /// <summary>True when one more of a kind of sheet can be had.</summary>
    public bool HasMore(Stock stock) => _taken[stock.Index] < stock.Quantity;

    /// <summary>Puts an item in a spot of a sheet.</summary>
    public void Put(Item item, SheetLayout sheet, Spot spot)
    {
        Growth.Put(item, spot);
        sheet.Filled += item.Area;
        sheet.Count++;
    }

    /// <summary>Takes a node out of a sheet; its items wait.</summary>
    public void TakeOut(SheetLayout sheet, Node node)
    {
        foreach (var item in Growth.TakeOut(node))
        {
            sheet.Filled -= item.Area;
            sheet.Count--;
            Waiting.Add(item);
        }
    }

    /// <summary>Takes all items out of a sheet.</summary>
    public void Clear(SheetLayout sheet)
    {
        foreach (var root in sheet.Roots)
            TakeOut(sheet, root);
    }

    public void Add(SheetLayout sheet)
    {
        _taken[sheet.Stock.Index]++;
        Sheets.Add(sheet);
    }

    /// <summary>Puts sheets back on the pile that hold nothing any more.</summary>
    public void CloseEmpty()
    {
        foreach (var sheet in Sheets.Where(IsIdle))
            _taken[sheet.Stock.Index]--;
        Sheets.RemoveAll(IsIdle);
    }

    /// <summary>A picture of the sheets, to come back to.</summary>
    public List<SheetLayout> Copy() => [.. Sheets.Select(s => s.Copy())];

    /// <summary>Replaces all sheets by an earlier picture of them.</summary>
    public void Restore(List<SheetLayout> picture, IEnumerable<Item> waiting)
    {
        Swap(Sheets, picture);
        Sheets = picture;
        Waiting.Clear();
        Waiting.AddRange(waiting);
    }

    /// <summary>Replaces some sheets by earlier pictures of them, and drops sheets opened since.</summary>
    public void StepBack(IReadOnlyDictionary<SheetLayout, SheetLayout> pictures, int count, IEnumerable<Item> waiting)
    {
        var newer = Sheets.Skip(count).ToList();
        var changed = Sheets.Take(count).Where(pictures.ContainsKey).ToList();
        Swap([.. newer, .. changed], [.. changed.Select(s => pictures[s])]);
        Sheets.RemoveRange(count, Sheets.Count - count);
        for (var i = 0; i < Sheets.Count; i++)
            if (pictures.TryGetValue(Sheets[i], out var picture))
                Sheets[i] = picture;
        Waiting.Clear();
        Waiting.AddRange(waiting);
    }

    private void Swap(IReadOnlyList<SheetLayout> old, IReadOnlyList<SheetLayout> next)
    {
        foreach (var root in old.SelectMany(s => s.Roots))
            Growth.DropRules(root);
        foreach (var root in next.SelectMany(s => s.Roots))
            Growth.BringRules(root);
        foreach (var sheet in old)
            _taken[sheet.Stock.Index]--;
        foreach (var sheet in next)
            _taken[sheet.Stock.Index]++;
    }

    private static bool IsIdle(SheetLayout sheet) => sheet.Count == 0 && !sheet.HasHeld;
}

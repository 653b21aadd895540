namespace Nookwright.Planning;

/// <summary>Opens a fresh sheet for an item: offcuts before any sheet that is bought.</summary>
internal sealed class Opening(Job job, Layout layout, Spots spots, Random random)
{
    private readonly Breakdown _breakdown = new(job, random);

    /// <summary>Puts an item on a fresh sheet that costs less than this; false when there is none.</summary>
    public bool Put(Item item, long costBelow)
    {
        foreach (var stock in Candidates(item))
            if (job.CostOf(stock) < costBelow && TryPut(item, stock))
                return true;
        return false;
    }

    private IEnumerable<Stock> Candidates(Item item) =>
        job
            .Stocks.Where(s => s.Material == item.Material && layout.HasMore(s))
            .OrderBy(s => !s.Piece.IsOffcut)
            .ThenBy(s => s.Piece.IsOffcut ? s.Area : (double)job.CostOf(s) / s.Area)
            .ThenByDescending(s => s.Area);

    private bool TryPut(Item item, Stock stock)
    {
        var turns = ItemFindings.Turns(item, stock).ToList();
        var start = turns.Count == 0 ? 0 : random.Next(turns.Count);
        for (var i = 0; i < turns.Count; i++)
        {
            var rough = _breakdown.Open(stock, turns[(start + i) % turns.Count]);
            if (rough is not null && TryPut(item, SheetLayout.Open(stock, rough, job.Saws)))
                return true;
        }
        return false;
    }

    private bool TryPut(Item item, SheetLayout sheet)
    {
        layout.Add(sheet);
        var spot = spots.Better(item, sheet, Spot.None);
        if (spot.Sheet is not null)
            layout.Put(item, spot);
        else
            layout.DropLast();
        return spot.Sheet is not null;
    }
}

namespace Nookwright.Planning;

/// <summary>Puts a better plan together from sheets that the search has laid out, where there is one.</summary>
/// <remarks>
/// The search throws away well filled sheets whenever the others do not come out with them; some choice of them, from
/// different times, may be a plan that costs less.
/// </remarks>
/// <param name="job">The job.</param>
/// <param name="chooser">Chooses among the sheets.</param>
internal sealed class ExactFinish(Job job, ISheetChooser chooser)
{
    // So many the solver weighs in about a second.
    private const int Most = 800;

    /// <summary>A picture that costs less; null when none was found.</summary>
    /// <param name="best">The best known.</param>
    /// <param name="pools">Sheets of one material.</param>
    /// <param name="material">The material.</param>
    /// <param name="stop">Ends it early.</param>
    public Picture? Better(Picture best, IReadOnlyList<SheetPool> pools, string material, CancellationToken stop)
    {
        var ours = best.Sheets.Where(s => s.Stock.Material == material).ToList();
        var others = best.Sheets.Where(s => s.Stock.Material != material).ToList();
        if (stop.IsCancellationRequested || ours.Any(s => s.HasHeld) || best.Waiting.Any(i => i.Material == material))
            return null;
        foreach (var sheet in ours)
            pools[0].Keep(sheet);
        var pool = pools.SelectMany(p => p.Fullest().Take(Most / pools.Count)).ToList();
        var choice = chooser.Choose(Question(pool, pools[0], ours, others), stop);
        return choice is null ? null : Together(choice, pool, pools[0], others, best.Waiting);
    }

    private SheetQuestion Question(
        List<SheetLayout> pool,
        SheetPool kinds,
        List<SheetLayout> ours,
        List<SheetLayout> others
    ) =>
        new(
            [
                .. pool.Select(s => new PooledSheet(
                    s.Stock.Index,
                    job.CostOf(s.Stock),
                    kinds.Yields(s),
                    [.. s.Rules.ToArray().Distinct()]
                )),
            ],
            [.. kinds.Kinds.Select(k => k.Count)],
            [.. job.Stocks.Select(s => s.Quantity)],
            [.. job.FirstRules.Concat(others.SelectMany(s => s.Rules.ToArray())).Distinct()],
            ours.Sum(s => job.CostOf(s.Stock)),
            new HashSet<int>()
        );

    /// <summary>The chosen sheets with each item on one of them; what they yield beyond that is left out.</summary>
    private Picture Together(
        SheetChoice choice,
        List<SheetLayout> pool,
        SheetPool kinds,
        List<SheetLayout> others,
        IReadOnlyList<Item> waiting
    )
    {
        var layout = new Layout(job);
        layout.Restore(new(others, []));
        var left = kinds.Kinds.Select(k => new Queue<Item>(k)).ToList();
        for (var i = 0; i < pool.Count; i++)
        for (var time = 0; time < choice.Counts[i]; time++)
            Add(layout, pool[i].Fresh(), left, kinds);
        layout.Waiting.Clear();
        layout.Waiting.AddRange(waiting);
        layout.CloseEmpty();
        return layout.Copy();
    }

    private static void Add(Layout layout, SheetLayout sheet, List<Queue<Item>> left, SheetPool kinds)
    {
        List<int> surplus = [];
        foreach (var cell in sheet.Items())
            if (left[kinds.Kind(sheet.Cells[cell].Item)].TryDequeue(out var item))
                sheet.Cells[cell].Item = item.Id;
            else
                surplus.Add(cell);
        layout.Add(sheet);
        foreach (var cell in surplus.Where(c => sheet.Items().Contains(c)))
            layout.TakeOut(sheet, cell);
    }
}

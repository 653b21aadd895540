namespace Nookwright.Planning;

/// <summary>Improves the sheets of one material: takes the emptiest away, and reworks the others until all has a place again.</summary>
internal sealed class RuinAndRecreate(
    Job job,
    Layout layout,
    Spots spots,
    Opening opening,
    Random random,
    string material
)
{
    // By trial on the hardest of the public instances, and kept where the sum of their bins fell; no source gives them for this search.
    private const int Memory = 200;
    private const double Blink = 0.02;
    private const double TogetherWeight = 0.02;
    private const int WindowSheets = 16;
    private const int WindowSteps = 2_000;

    private readonly Removal _removal = new(job, layout, random, material);
    private readonly List<SheetLayout> _sheets = [];
    private readonly List<SheetLayout> _window = [];
    private readonly List<Item> _waiting = [];
    private readonly List<Item> _waitingBefore = [];
    private readonly List<(SheetLayout Sheet, SheetLayout Picture)> _pictures = [];
    private readonly Stack<SheetLayout> _spare = new();
    private readonly double[] _memory = new double[Memory];
    private long _cost;
    private long _costBelow;
    private long _step;
    private bool _isUnderWay;
    private int _countBefore;

    /// <summary>What the sheets of the best layout so far cost; the largest number while an item has no place.</summary>
    public long BestCost { get; private set; }

    /// <summary>Gets to see every sheet on the way; null when nobody wants to.</summary>
    public SheetPool? Pool { get; set; }

    /// <summary>The best layout so far.</summary>
    public Picture Best { get; private set; } = null!;

    /// <summary>Begins with the layout as it stands.</summary>
    public void Start()
    {
        _waiting.AddRange(layout.Waiting.Where(i => i.Material == material));
        layout.Waiting.RemoveAll(i => i.Material == material);
        Gather();
        Keep();
        _isUnderWay = false;
    }

    /// <summary>Goes on from a layout that another search has found.</summary>
    public void Adopt(Picture picture)
    {
        _waiting.Clear();
        layout.Restore(picture);
        Start();
    }

    /// <summary>Ends with the best layout found.</summary>
    public void Finish()
    {
        layout.Restore(Best);
        _waiting.Clear();
    }

    /// <summary>Goes on for some steps, or until the sheets cost no more than the goal.</summary>
    public void Run(int steps, long goal, CancellationToken stop)
    {
        while (steps > 0 && BestCost > goal && !stop.IsCancellationRequested)
        {
            if (!_isUnderWay && !DropEmptiest())
                return;
            if (Refill(ref steps, stop))
            {
                layout.CloseEmpty();
                Gather();
                Keep();
            }
        }
    }

    /// <summary>Goes for a place for all that waits, on sheets that cost no more than this.</summary>
    public void Fill(long atMost)
    {
        _costBelow = atMost + 1;
        (_isUnderWay, _step) = (true, 0);
    }

    private void Keep()
    {
        Best = layout.Copy();
        Best = Best with { Waiting = [.. Best.Waiting, .. _waiting] };
        _cost = Cost();
        BestCost = _waiting.Count == 0 ? _cost : long.MaxValue;
    }

    private void Gather()
    {
        _sheets.Clear();
        _sheets.AddRange(layout.Sheets.Where(s => s.Stock.Material == material));
    }

    private long Cost()
    {
        long cost = 0;
        foreach (var sheet in _sheets)
            if (!sheet.IsClosed)
                cost += job.CostOf(sheet.Stock);
        return cost;
    }

    /// <summary>The next goal: everything on sheets that cost less. False when there is nothing that could be done without.</summary>
    private bool DropEmptiest()
    {
        var sheet = _sheets
            .Where(s => !s.HasHeld && job.CostOf(s.Stock) > 0)
            .MinBy(s => (double)s.Filled / s.Stock.Area);
        if (sheet is null)
            return false;
        _costBelow = _waiting.Count == 0 ? _cost : long.MaxValue;
        layout.Clear(sheet);
        Collect();
        layout.CloseEmpty();
        Gather();
        (_isUnderWay, _step) = (true, 0);
        return true;
    }

    /// <summary>What a change of the layout set free waits here.</summary>
    private void Collect()
    {
        for (var i = layout.Waiting.Count - 1; i >= 0; i--)
            if (layout.Waiting[i].Material == material)
            {
                _waiting.Add(layout.Waiting[i]);
                layout.Waiting.RemoveAt(i);
            }
    }

    private bool Refill(ref int steps, CancellationToken stop)
    {
        for (; steps > 0 && !stop.IsCancellationRequested; steps--)
        {
            if (_step % WindowSteps == 0)
                LookElsewhere();
            ref var limit = ref _memory[_step++ % Memory];
            limit = Step(limit);
            if (_waiting.Count > 0)
                continue;
            _isUnderWay = false;
            return true;
        }
        return false;
    }

    /// <summary>
    /// Of many sheets only some are worked on for a while, those with much free wood more often than full ones; all others
    /// stay as they are, and what they ask of the order of visits stands.
    /// </summary>
    private void LookElsewhere()
    {
        if (_sheets.Count <= WindowSheets && _step > 0)
            return;
        _window.Clear();
        _window.AddRange(_sheets.Count <= WindowSheets ? _sheets : _sheets.OrderByDescending(Lot).Take(WindowSheets));
        Array.Fill(_memory, Missing());
    }

    private double Lot(SheetLayout sheet) =>
        random.NextDouble() * (0.05 + ((double)(sheet.Stock.Area - sheet.Filled) / sheet.Stock.Area));

    /// <summary>Removes a few items, puts all back that find a place, and steps back when that is worse than some time ago.</summary>
    private double Step(double limit)
    {
        foreach (var (_, picture) in _pictures)
            _spare.Push(picture);
        _pictures.Clear();
        _waitingBefore.Clear();
        _waitingBefore.AddRange(_waiting);
        var (ours, here) = (_sheets.Count, _window.Count);
        var count = _countBefore = layout.Sheets.Count;
        var before = Missing();
        Ruin();
        Recreate();
        var after = Missing();
        if (after <= Math.Max(limit, before))
        {
            OfferChanged();
            ForgetClosed();
            return after;
        }
        layout.StepBack(_pictures, count);
        _sheets.RemoveRange(ours, _sheets.Count - ours);
        _window.RemoveRange(here, _window.Count - here);
        _waiting.Clear();
        _waiting.AddRange(_waitingBefore);
        return before;
    }

    private void OfferChanged()
    {
        if (Pool is not null)
            foreach (var (sheet, _) in _pictures)
                Pool.Offer(sheet);
    }

    /// <summary>The area without a place, less a little for free wood that lies together.</summary>
    private double Missing()
    {
        double missing = 0;
        foreach (var item in _waiting)
            missing += item.Area;
        foreach (var sheet in _window)
            if (!sheet.IsClosed)
                missing -= TogetherWeight * sheet.Together;
        return missing;
    }

    private void Ruin()
    {
        spots.Fit = random.Next(2) == 0 ? Fit.ShortSide : Fit.Area;
        _removal.Take(_window, Remember);
        Collect();
    }

    /// <summary>Sheets that were put back and that nobody will step back to.</summary>
    private void ForgetClosed()
    {
        if (!_window.Exists(s => s.IsClosed))
            return;
        foreach (var sheets in new[] { layout.Sheets, _sheets, _window })
            sheets.RemoveAll(s => s.IsClosed);
    }

    private void Remember(SheetLayout sheet)
    {
        foreach (var (known, _) in _pictures)
            if (known == sheet)
                return;
        for (var opened = _countBefore; opened < layout.Sheets.Count; opened++)
            if (layout.Sheets[opened] == sheet)
                return;
        var picture = _spare.TryPop(out var spare) ? spare : sheet.Copy();
        picture.CopyFrom(sheet);
        _pictures.Add((sheet, picture));
    }

    private void Recreate()
    {
        Shuffle();
        spots.Blink = Blink;
        var kept = 0;
        for (var i = 0; i < _waiting.Count; i++)
            if (!PutBest(_waiting[i]))
                _waiting[kept++] = _waiting[i];
        _waiting.RemoveRange(kept, _waiting.Count - kept);
        spots.Blink = 0;
    }

    /// <summary>Large before small by one of the measures, each item's weighed by lot.</summary>
    private void Shuffle()
    {
        var way = random.Next(ItemOrder.Ways);
        var keys = new (double Key, Item Item)[_waiting.Count];
        for (var i = 0; i < keys.Length; i++)
            keys[i] = (-ItemOrder.Measure(_waiting[i], way) * (0.6 + (0.8 * random.NextDouble())), _waiting[i]);
        Array.Sort(keys, (a, b) => a.Key.CompareTo(b.Key));
        for (var i = 0; i < keys.Length; i++)
            _waiting[i] = keys[i].Item;
    }

    private bool PutBest(Item item)
    {
        var best = Spot.None;
        foreach (var sheet in _window)
            if (!sheet.IsClosed && sheet.Stock.Area - sheet.Filled >= item.Area)
                best = spots.Better(item, sheet, best);
        if (best.Sheet is null)
            return PutOnNew(item);
        Remember(best.Sheet);
        layout.Put(item, best);
        return true;
    }

    private bool PutOnNew(Item item)
    {
        if (!opening.Put(item, _costBelow - Cost()))
            return false;
        _sheets.Add(layout.Sheets[^1]);
        _window.Add(layout.Sheets[^1]);
        return true;
    }
}

using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Lays all items of a job on as few sheets as it can: several constructions, then ruin and recreate with a goal.</summary>
/// <remarks>
/// After Gardeyn and Wauters, "A goal-driven ruin and recreate heuristic for the 2D variable-sized bin packing problem with
/// guillotine constraints", European Journal of Operational Research 2022: take the emptiest sheet away, then keep removing
/// a few parts and putting them back better until all have a place again; late acceptance (Burke and Bykov, European
/// Journal of Operational Research 2017). The order of visits is a hard rule of every insertion.
/// </remarks>
internal sealed class Search
{
    /// <summary>Steps of the search in one round of effort.</summary>
    public const int StepsPerRound = 80;

    private const int Memory = 40;

    private readonly Job _job;
    private readonly Random _random;
    private readonly Layout _layout;
    private readonly Spots _spots;
    private readonly Opening _opening;

    public Search(Job job, int seed)
    {
        _job = job;
        _random = new(seed);
        _layout = new(job, new SettingOrder(FirstRanks()));
        _spots = new(job, _layout.Order, _random);
        _opening = new(job, _layout, _spots, _random);
        new HeldBlanks(job, _layout, _random).Place();
    }

    public Layout Layout => _layout;

    /// <summary>Gives every item a place, as far as there is stock; one pass.</summary>
    /// <param name="way">In which order, and how spots are compared.</param>
    /// <param name="isRackFirst">True to use what offcuts can take before any sheet, which can cost a sheet: try both.</param>
    /// <param name="stop">Stops it.</param>
    public void Construct(int way, bool isRackFirst, CancellationToken stop)
    {
        _spots.Fit = way % 2 == 0 ? Fit.ShortSide : Fit.Area;
        foreach (var item in InOrder(_job.Items, way))
        {
            stop.ThrowIfCancellationRequested();
            if (!(isRackFirst && PutOnOffcut(item)) && !PutBest(item, long.MaxValue))
                _layout.Waiting.Add(item);
        }
    }

    /// <summary>What an offcut from the rack can take comes off it, so that what is bought stays whole for longer.</summary>
    private bool PutOnOffcut(Item item)
    {
        Spot? best = null;
        SheetLayout? at = null;
        foreach (var sheet in _layout.Sheets.Where(s => s.Stock.Piece.IsOffcut && s.Stock.Material == item.Material))
            if (_spots.Better(item, sheet, best) is var better && better != best)
                (best, at) = (better, sheet);
        if (best is null)
            return _opening.Put(item, StockCost.Free + 1);
        _layout.Put(item, at!, best.Value);
        return true;
    }

    /// <summary>Tries to do with less; true when it found a way, and the layout is then the better one.</summary>
    public bool Improve(string material, int rounds, long atLeast, CancellationToken stop)
    {
        var best = (Sheets: _layout.Copy(), Waiting: _layout.Waiting.ToList(), Cost: CostOf(material));
        if (best.Cost <= atLeast && best.Waiting.Count == 0)
            return false;
        var found = false;
        var left = rounds * StepsPerRound;
        while (left > 0 && best.Cost > atLeast && DropEmptiest(material))
        {
            if (!Refill(material, best.Cost, ref left, stop))
                break;
            best = (_layout.Copy(), _layout.Waiting.ToList(), CostOf(material));
            found = true;
        }
        _layout.Restore(best.Sheets, best.Waiting);
        return found;
    }

    private long CostOf(string material) =>
        _layout.Sheets.Where(s => s.Stock.Material == material).Sum(s => _job.CostOf(s.Stock));

    private bool DropEmptiest(string material)
    {
        var sheet = _layout
            .Sheets.Where(s => s.Stock.Material == material && !s.HasHeld && _job.CostOf(s.Stock) > 0)
            .MinBy(s => (double)s.Filled / s.Stock.Area);
        if (sheet is null)
            return false;
        _layout.Clear(sheet);
        _layout.CloseEmpty();
        return true;
    }

    private bool Refill(string material, long costBelow, ref int left, CancellationToken stop)
    {
        var memory = new double[Memory];
        Array.Fill(memory, Missing(material));
        for (var step = 0; left > 0; step++, left--)
        {
            stop.ThrowIfCancellationRequested();
            var missing = Step(material, costBelow, memory[step % Memory]);
            memory[step % Memory] = missing;
            if (_layout.Waiting.Any(i => i.Material == material))
                continue;
            _layout.CloseEmpty();
            return true;
        }
        return false;
    }

    /// <summary>Removes a few items, puts all back that find a place, and steps back when that is worse than some time ago.</summary>
    private double Step(string material, long costBelow, double limit)
    {
        var pictures = new Dictionary<SheetLayout, SheetLayout>();
        var waiting = _layout.Waiting.ToList();
        var count = _layout.Sheets.Count;
        var before = Missing(material);
        Ruin(material, pictures);
        Recreate(material, costBelow, pictures);
        var after = Missing(material);
        if (after <= Math.Max(limit, before))
            return after;
        _layout.StepBack(pictures, count, waiting);
        return before;
    }

    /// <summary>The area without a place, less a little for free wood that lies together.</summary>
    private double Missing(string material)
    {
        double together = 0;
        foreach (var sheet in _layout.Sheets)
            if (sheet.Stock.Material == material)
            {
                var free = (double)(sheet.Stock.Area - sheet.Filled);
                together += free * free / sheet.Stock.Area;
            }
        return _layout.Waiting.Where(i => i.Material == material).Sum(i => (double)i.Area) - (0.02 * together);
    }

    private void Ruin(string material, Dictionary<SheetLayout, SheetLayout> pictures)
    {
        var sheets = _layout.Sheets.Where(s => s.Stock.Material == material && s.Count > 0).ToList();
        _spots.Fit = _random.Next(2) == 0 ? Fit.ShortSide : Fit.Area;
        var wanted = 1 + _random.Next(8);
        for (var removed = 0; removed < wanted && sheets.Count > 0; )
        {
            var sheet = sheets[_random.Next(sheets.Count)];
            Remember(sheet, pictures);
            var count = sheet.Count;
            _layout.TakeOut(sheet, Pick(sheet, wanted - removed));
            removed += count - sheet.Count;
            if (sheet.Count == 0)
                sheets.Remove(sheet);
        }
    }

    private static void Remember(SheetLayout sheet, Dictionary<SheetLayout, SheetLayout> pictures)
    {
        if (!pictures.ContainsKey(sheet))
            pictures[sheet] = sheet.Copy();
    }

    /// <summary>A random leaf, or the tree around it while that is not more than asked.</summary>
    private Node Pick(SheetLayout sheet, int most)
    {
        var leaves = sheet.Leaves();
        var node = leaves[_random.Next(leaves.Count)];
        while (node.Parent is not null && _random.Next(2) == 0 && node.Parent.Leaves().Count <= most + 2)
            node = node.Parent;
        return node;
    }

    private void Recreate(string material, long costBelow, Dictionary<SheetLayout, SheetLayout> pictures)
    {
        var items = InOrder(_layout.Waiting.Where(i => i.Material == material), 2 + _random.Next(4)).ToList();
        _layout.Waiting.RemoveAll(i => i.Material == material);
        _spots.Blink = 0.02;
        foreach (var item in items)
            if (!PutBest(item, costBelow, pictures))
                _layout.Waiting.Add(item);
        _spots.Blink = 0;
    }

    private bool PutBest(Item item, long costBelow, Dictionary<SheetLayout, SheetLayout>? pictures = null)
    {
        Spot? best = null;
        SheetLayout? at = null;
        for (var i = Math.Max(0, _layout.Sheets.Count - Opening.SheetsLookedAt); i < _layout.Sheets.Count; i++)
        {
            var sheet = _layout.Sheets[i];
            if (sheet.Stock.Material != item.Material || sheet.Stock.Area - sheet.Filled < item.Area)
                continue;
            var better = _spots.Better(item, sheet, best);
            if (better != best)
                (best, at) = (better, sheet);
        }
        if (best is null)
            return _opening.Put(item, costBelow - (pictures is null ? 0 : CostOf(item.Material)));
        if (pictures is not null)
            at = Snapshot(at!, pictures);
        _layout.Put(item, at!, best.Value);
        return true;
    }

    private static SheetLayout Snapshot(SheetLayout sheet, Dictionary<SheetLayout, SheetLayout> pictures)
    {
        Remember(sheet, pictures);
        return sheet;
    }

    /// <summary>Runs first, since they need the most of one strip; then large before small, by a measure that differs from way to way.</summary>
    private IEnumerable<Item> InOrder(IEnumerable<Item> items, int way) =>
        items
            .Select(item => (item, Key: Measure(item, way % 4) * (way < 4 ? 1 : 0.6 + (0.8 * _random.NextDouble()))))
            .OrderByDescending(i => i.item.Run is not null && way < 2)
            .ThenByDescending(i => i.Key)
            .ThenBy(i => i.item.Id)
            .Select(i => i.item);

    private static double Measure(Item item, int way) =>
        way switch
        {
            0 => item.Area,
            1 => item.LongSide,
            2 => item.LongSide + item.ShortSide,
            _ => item.ShortSide,
        };

    /// <summary>Longer settings first: long rips and crosscuts while the pieces are large.</summary>
    private int[] FirstRanks()
    {
        var ranks = new int[_job.Distances.Count];
        var rank = 0;
        foreach (
            var setting in Enumerable.Range(0, ranks.Length).OrderByDescending(s => _job.Distances[s]).ThenBy(s => s)
        )
            ranks[setting] = rank++;
        return ranks;
    }
}

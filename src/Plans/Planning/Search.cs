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
    private readonly Job _job;
    private readonly Random _random;
    private readonly Layout _layout;
    private readonly Spots _spots;
    private readonly Opening _opening;

    public Search(Job job, int seed)
    {
        _job = job;
        _random = new(seed);
        _layout = new(job);
        _spots = new(job, _layout.Order, _random);
        _opening = new(job, _layout, _spots, _random);
    }

    /// <summary>Goes on from a layout that another search of the same job has made.</summary>
    public static Search From(Job job, int seed, Layout layout)
    {
        var search = new Search(job, seed);
        search._layout.TakeOver(layout);
        return search;
    }

    public Job Job => _job;

    public Layout Layout => _layout;

    /// <summary>Gives every item a place, as far as there is stock; one pass.</summary>
    /// <param name="way">In which order, and how spots are compared.</param>
    /// <param name="isRackFirst">True to use what offcuts can take before any sheet, which can cost a sheet: try both.</param>
    /// <param name="stop">Stops it.</param>
    public void Construct(int way, bool isRackFirst, CancellationToken stop)
    {
        new HeldBlanks(_job, _layout, _random).Place();
        _spots.Fit = way % 2 == 0 ? Fit.ShortSide : Fit.Area;
        foreach (var item in ItemOrder.Of(_job, way))
        {
            stop.ThrowIfCancellationRequested();
            if (!(isRackFirst && PutOnOffcut(item)) && !PutBest(item))
                _layout.Waiting.Add(item);
        }
    }

    /// <summary>Keeps sheets that were laid out before, and gives every item that is not on them a place, as far as there is stock.</summary>
    public void Continue(IReadOnlyList<SheetLayout> kept, CancellationToken stop)
    {
        foreach (var sheet in kept)
            _layout.Add(sheet);
        var held = kept.SelectMany(s => s.Rough.Leaves()).Select(l => l.Held).OfType<Item>().ToHashSet();
        new HeldBlanks(_job, _layout, _random).Place(_job.Blanks.Where(b => !held.Contains(b)));
        var placed = kept.SelectMany(s => s.ItemIds()).ToHashSet();
        foreach (var item in ItemOrder.Of(_job.Items.Where(i => !placed.Contains(i.Id)), 0))
        {
            stop.ThrowIfCancellationRequested();
            if (!PutBest(item))
                _layout.Waiting.Add(item);
        }
    }

    /// <summary>Begins to improve the sheets of one material.</summary>
    public RuinAndRecreate Rework(string material)
    {
        var ruin = new RuinAndRecreate(_job, _layout, _spots, _opening, _random, material);
        ruin.Start();
        return ruin;
    }

    /// <summary>What an offcut from the rack can take comes off it, so that what is bought stays whole for longer.</summary>
    private bool PutOnOffcut(Item item)
    {
        var best = Spot.None;
        foreach (var sheet in _layout.Sheets)
            if (sheet.Stock.Piece.IsOffcut && sheet.Stock.Material == item.Material)
                best = _spots.Better(item, sheet, best);
        if (best.Sheet is null)
            return _opening.Put(item, StockCost.Free + 1);
        _layout.Put(item, best);
        return true;
    }

    private bool PutBest(Item item)
    {
        var best = Spot.None;
        foreach (var sheet in _layout.Sheets)
            if (sheet.Stock.Material == item.Material && sheet.Stock.Area - sheet.Filled >= item.Area)
                best = _spots.Better(item, sheet, best);
        if (best.Sheet is null)
            return _opening.Put(item, long.MaxValue);
        _layout.Put(item, best);
        return true;
    }
}

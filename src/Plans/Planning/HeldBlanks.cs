using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Lays the blanks of held parts on sheets before anything else: they see rough cuts only.</summary>
internal sealed class HeldBlanks(Job job, Layout layout, Random random)
{
    private readonly Breakdown _breakdown = new(job, random);
    private readonly List<(Stock Stock, Rough Rough)> _open = [];
    private readonly int[] _taken = new int[job.Stocks.Count];

    /// <summary>Places all blanks that find room, largest first, and opens the rest of their sheets for sizing cuts.</summary>
    public void Place() => Place(job.Blanks);

    /// <summary>Places some of the blanks, each on fresh sheets.</summary>
    public void Place(IEnumerable<Item> blanks)
    {
        foreach (var stock in layout.Sheets.Select(s => s.Stock))
            _taken[stock.Index]++;
        foreach (var blank in blanks.OrderByDescending(b => b.Area).ThenBy(b => b.Id))
            if (!PlaceOnOpen(blank) && !PlaceOnNew(blank))
                layout.WaitingBlanks.Add(blank);
        foreach (var (stock, rough) in _open)
        {
            foreach (var leaf in rough.Leaves().Where(l => l.IsOpen).ToList())
                _breakdown.Reduce(leaf, stock);
            layout.Add(SheetLayout.Open(stock, rough, job.Saws));
        }
    }

    private bool PlaceOnOpen(Item blank)
    {
        var spots =
            from sheet in _open
            where sheet.Stock.Material == blank.Material
            from leaf in sheet.Rough.Leaves()
            where leaf.IsOpen
            from turn in ItemFindings.Turns(blank, sheet.Stock)
            where Takes(leaf, turn)
            orderby Math.Min(leaf.X.Size - turn.X, leaf.Y.Size - turn.Y)
            select (sheet.Stock, leaf, turn);
        var spot = spots.FirstOrDefault();
        if (spot.leaf is null)
            return false;
        Cut(spot.leaf, blank, spot.turn, spot.Stock);
        return true;
    }

    private bool PlaceOnNew(Item blank)
    {
        foreach (
            var stock in job
                .Stocks.Where(s => s.Material == blank.Material)
                .OrderBy(s => !s.Piece.IsOffcut)
                .ThenBy(s => !IsTakenAnyway(s))
                .ThenBy(s => s.Area)
        )
        {
            if (_taken[stock.Index] >= stock.Quantity)
                continue;
            if (PlaceOnFresh(blank, stock))
                return true;
        }
        return false;
    }

    private bool PlaceOnFresh(Item blank, Stock stock)
    {
        foreach (var turn in ItemFindings.Turns(blank, stock))
        {
            if (_breakdown.OpenForBlank(stock, raw => Takes(raw, turn)) is not var (sheet, leaf))
                continue;
            Cut(leaf, blank, turn, stock);
            _open.Add((stock, sheet));
            _taken[stock.Index]++;
            return true;
        }
        return false;
    }

    private bool Takes(Rough leaf, Turn turn) =>
        turn.X <= leaf.X.Room(job.Saws.Dressing) && turn.Y <= leaf.Y.Room(job.Saws.Dressing) && CanCut(leaf, turn);

    /// <summary>True when something else fits on no other kind of sheet, so that one of this kind is opened whatever happens.</summary>
    private bool IsTakenAnyway(Stock stock)
    {
        var others = job.Stocks.Where(s => s.Material == stock.Material && s.Index != stock.Index).ToList();
        bool FitsOn(Item item, Stock s) => ItemFindings.Fits(item, s, job.Saws, job.Request.Rules);
        return others.Count > 0
            && job.Items.Where(i => i.Material == stock.Material)
                .Any(i => FitsOn(i, stock) && !others.Any(s => FitsOn(i, s)));
    }

    private bool CanCut(Rough leaf, Turn turn) =>
        (turn.X == leaf.X.Size || leaf.Y.Size <= job.Saws.TrackLength || turn.Y < leaf.Y.Size)
        && (turn.Y == leaf.Y.Size || leaf.X.Size <= job.Saws.TrackLength || turn.X < leaf.X.Size)
        && Math.Min(leaf.X.Size, leaf.Y.Size) <= job.Saws.TrackLength;

    /// <summary>
    /// First the cut that leaves the larger piece whole, or the long side where a long part needs it, if the track reaches;
    /// then the other.
    /// </summary>
    private void Cut(Rough leaf, Item blank, Turn turn, Stock stock)
    {
        var (x, y) = (leaf.X.Size, leaf.Y.Size);
        var wantsX = IsTakenAnyway(stock) ? y > x : (double)(x - turn.X) * y >= (double)(y - turn.Y) * x;
        var lengthFirst = x > job.Saws.TrackLength || (wantsX && y <= job.Saws.TrackLength);
        SheetAxis[] axes = lengthFirst ? [SheetAxis.Length, SheetAxis.Width] : [SheetAxis.Width, SheetAxis.Length];
        foreach (var axis in axes)
        {
            if (leaf.Side(axis).Size == turn.Size(axis))
                continue;
            leaf.Split(axis, turn.Size(axis), job.Saws);
            leaf = leaf.First!;
        }
        leaf.Held = blank;
    }
}

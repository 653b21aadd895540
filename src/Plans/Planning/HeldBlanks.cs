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
                _breakdown.Reduce(leaf);
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
            where turn.X <= leaf.X && turn.Y <= leaf.Y && CanCut(leaf, turn)
            orderby Math.Min(leaf.X - turn.X, leaf.Y - turn.Y)
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
            var rough = new Rough(stock.X, stock.Y);
            var turn = ItemFindings
                .Turns(blank, stock)
                .FirstOrDefault(t => t.X <= rough.X && t.Y <= rough.Y && CanCut(rough, t));
            if (turn is null)
                continue;
            Cut(rough, blank, turn, stock);
            _open.Add((stock, rough));
            _taken[stock.Index]++;
            return true;
        }
        return false;
    }

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
        (turn.X == leaf.X || leaf.Y <= job.Saws.TrackLength || turn.Y < leaf.Y)
        && (turn.Y == leaf.Y || leaf.X <= job.Saws.TrackLength || turn.X < leaf.X)
        && Math.Min(leaf.X, leaf.Y) <= job.Saws.TrackLength;

    /// <summary>
    /// First the cut that leaves the larger piece whole, or the long side where a long part needs it, if the track reaches;
    /// then the other.
    /// </summary>
    private void Cut(Rough leaf, Item blank, Turn turn, Stock stock)
    {
        var kerf = job.Saws.TrackKerf;
        var wantsX = IsTakenAnyway(stock) ? leaf.Y > leaf.X : (leaf.X - turn.X) * leaf.Y >= (leaf.Y - turn.Y) * leaf.X;
        var lengthFirst = leaf.X > job.Saws.TrackLength || (wantsX && leaf.Y <= job.Saws.TrackLength);
        SheetAxis[] axes = lengthFirst ? [SheetAxis.Length, SheetAxis.Width] : [SheetAxis.Width, SheetAxis.Length];
        foreach (var axis in axes)
        {
            if (leaf.Size(axis) == turn.Size(axis))
                continue;
            leaf.Split(axis, turn.Size(axis), kerf);
            leaf = leaf.First!;
        }
        leaf.Held = blank;
    }
}

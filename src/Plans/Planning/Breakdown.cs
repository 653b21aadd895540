using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>How a sheet is broken down into pieces that one person can take to the table saw, bad areas parted off.</summary>
internal sealed class Breakdown(Job job, Random random)
{
    private readonly SawNumbers _saws = job.Saws;

    /// <summary>A fresh sheet with a region that takes this item turned this way; null when this way does not go.</summary>
    public Rough? Open(Stock stock, Turn turn)
    {
        if (!ItemFindings.CanSquare(stock, _saws))
            return null;
        var sheet = Rough.Of(stock, _saws);
        var parting = new BadParting(job, stock, random);
        if (parting.Leaf(sheet, raw => Takes(raw, stock, turn)) is not { } leaf || !Take(leaf, stock, turn))
            return null;
        Finish(sheet, stock, parting);
        return sheet;
    }

    /// <summary>A fresh sheet with a clear leaf that takes a held blank; null when there is none.</summary>
    public (Rough Sheet, Rough Leaf)? OpenForBlank(Stock stock, Func<Rough, bool> takes)
    {
        if (!ItemFindings.CanSquare(stock, _saws))
            return null;
        var sheet = Rough.Of(stock, _saws);
        var parting = new BadParting(job, stock, random);
        if (parting.Leaf(sheet, takes) is not { } leaf)
            return null;
        foreach (var other in sheet.Leaves().Where(l => l != leaf).ToList())
            parting.Clear(other);
        return (sheet, leaf);
    }

    /// <summary>Breaks an open raw piece down so that all of it can be handled, where the track reaches.</summary>
    public void Reduce(Rough raw, Stock stock)
    {
        if (_saws.CanHandle(raw, stock))
            return;
        var caps = new ChunkCaps(_saws, stock).Of(raw, 0, 0);
        if (caps.Count == 0)
            return; // Nothing is left of it once its edges are dressed.
        Reduce(raw, stock, caps[random.Next(caps.Count)], 0, 0);
    }

    private void Finish(Rough sheet, Stock stock, BadParting parting)
    {
        if (stock.Piece.Bad.Count == 0)
            return;
        foreach (var leaf in sheet.Leaves().ToList())
            parting.Clear(leaf);
        foreach (var leaf in sheet.Leaves().Where(l => l.IsOpen).ToList())
            Reduce(leaf, stock);
    }

    private bool Takes(Rough raw, Stock stock, Turn turn) =>
        turn.X <= raw.X.Usable
        && turn.Y <= raw.Y.Usable
        && (_saws.CanHandle(raw, stock) || Caps(raw, stock, turn).Count > 0);

    /// <summary>Breaks a clear raw piece down so that its first leaf takes the item.</summary>
    private bool Take(Rough raw, Stock stock, Turn turn)
    {
        if (_saws.CanHandle(raw, stock))
            return true;
        var caps = Caps(raw, stock, turn);
        var cap = caps[random.Next(caps.Count)];
        Reduce(raw, stock, cap, Need(raw.X, turn.X), Need(raw.Y, turn.Y));
        return true;
    }

    private List<(long X, long Y)> Caps(Rough raw, Stock stock, Turn turn)
    {
        var (needX, needY) = (Need(raw.X, turn.X), Need(raw.Y, turn.Y));
        bool Fits(RawSide side, long cap, long need) => side.Size <= cap || need <= cap;
        return
        [
            .. new ChunkCaps(_saws, stock)
                .Of(raw, needX, needY)
                .Where(c => Fits(raw.X, c.X, needX) && Fits(raw.Y, c.Y, needY)),
        ];
    }

    private long Need(RawSide side, long size) => size + side.Low + _saws.Dressing;

    private void Reduce(Rough raw, Stock stock, (long X, long Y) cap, long needX, long needY)
    {
        var axis = NextAxis(raw, cap);
        if (axis is null)
            return;
        var isX = axis == SheetAxis.Length;
        var at = Place(raw.Side(axis.Value), isX ? cap.X : cap.Y, isX ? needX : needY);
        raw.Split(axis.Value, at, _saws);
        Reduce(raw.First!, stock, cap, needX, needY);
        if (raw.Second is { } rest)
            Reduce(rest, stock);
    }

    private SheetAxis? NextAxis(Rough raw, (long X, long Y) cap)
    {
        List<SheetAxis> axes = [];
        if (raw.X.Size > cap.X && raw.Y.Size <= _saws.TrackLength)
            axes.Add(SheetAxis.Length);
        if (raw.Y.Size > cap.Y && raw.X.Size <= _saws.TrackLength)
            axes.Add(SheetAxis.Width);
        return axes.Count == 0 ? null : axes[random.Next(axes.Count)];
    }

    /// <summary>As large as can be handled; or halves; or a whole number of the item.</summary>
    private long Place(RawSide side, long cap, long need)
    {
        var most = Math.Min(cap, side.Room(_saws.Dressing));
        var half = (side.Size - _saws.TrackKerf) / 2;
        var one = need - side.Low - _saws.Dressing + _saws.Kerf;
        var many = need == 0 || most < need ? most : ((most - need) / one * one) + need;
        var choice = random.Next(3);
        return choice == 0 && half >= need && half <= most ? half
            : choice == 1 ? many
            : most;
    }
}

using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>How a sheet is broken down into pieces that one person can take to the table saw.</summary>
internal sealed class Breakdown(Job job, Random random)
{
    private readonly SawNumbers _saws = job.Saws;

    /// <summary>A fresh sheet with a region that takes this item turned this way; null when this way does not go.</summary>
    public Rough? Open(Stock stock, Turn turn)
    {
        var sheet = new Rough(stock.X, stock.Y);
        return Take(sheet, turn) ? sheet : null;
    }

    /// <summary>Breaks an open raw piece down so that its first region takes the item.</summary>
    public bool Take(Rough raw, Turn turn)
    {
        var margin = 2 * _saws.Dressing;
        var (needX, needY) = (turn.X + margin, turn.Y + margin);
        if (needX > raw.X || needY > raw.Y)
            return false;
        if (_saws.CanHandle(raw.X, raw.Y))
            return true;
        var caps = Caps().Where(c => needX <= c.X && needY <= c.Y).ToList();
        if (caps.Count == 0)
            return false;
        var cap = caps[random.Next(caps.Count)];
        Reduce(raw, cap, needX, needY);
        return true;
    }

    /// <summary>Breaks an open raw piece down so that all of it can be handled, where the track reaches.</summary>
    public void Reduce(Rough raw)
    {
        if (!_saws.CanHandle(raw.X, raw.Y))
            Reduce(raw, Caps()[random.Next(2)], 0, 0);
    }

    private void Reduce(Rough raw, (long X, long Y) cap, long needX, long needY)
    {
        var axis = NextAxis(raw, cap);
        if (axis is null)
            return;
        var isX = axis == SheetAxis.Length;
        raw.Split(axis.Value, Place(isX ? raw.X : raw.Y, isX ? cap.X : cap.Y, isX ? needX : needY), _saws.TrackKerf);
        Reduce(raw.First!, cap, needX, needY);
        if (raw.Second is { } rest)
            Reduce(rest);
    }

    private SheetAxis? NextAxis(Rough raw, (long X, long Y) cap)
    {
        List<SheetAxis> axes = [];
        if (raw.X > cap.X && raw.Y <= _saws.TrackLength)
            axes.Add(SheetAxis.Length);
        if (raw.Y > cap.Y && raw.X <= _saws.TrackLength)
            axes.Add(SheetAxis.Width);
        return axes.Count == 0 ? null : axes[random.Next(axes.Count)];
    }

    /// <summary>As large as can be handled; or halves; or a whole number of the item.</summary>
    private long Place(long size, long cap, long need)
    {
        var half = (size - _saws.TrackKerf) / 2;
        var one = need - (2 * _saws.Dressing) + _saws.Kerf;
        var many = need == 0 ? cap : ((cap - need) / one * one) + need;
        var choice = random.Next(3);
        return choice == 0 && half >= need && half <= cap ? half
            : choice == 1 ? many
            : cap;
    }

    /// <summary>The largest raw pieces to handle: long side along the sheet, or across it.</summary>
    private (long X, long Y)[] Caps()
    {
        var longer = _saws.ChunkLength + _saws.Dressing;
        if (_saws.Dressing > 0)
            longer = Math.Min(longer, _saws.TrackLength);
        var shorter = Math.Min(longer, _saws.ChunkWidth + _saws.Dressing);
        return [(longer, shorter), (shorter, longer)];
    }
}

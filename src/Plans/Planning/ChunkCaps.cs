namespace Nookwright.Planning;

/// <summary>The largest raw pieces one person handles at the table saw, by size and by weight.</summary>
internal sealed class ChunkCaps(SawNumbers saws, Stock stock)
{
    /// <summary>Long side along the sheet, or across it; where weight is the limit also as long, or as wide, as is needed.</summary>
    /// <param name="raw">What is broken down; its low edges will be dressed before it is handled.</param>
    /// <param name="needX">What is wanted of it along the sheet, or 0.</param>
    /// <param name="needY">What is wanted of it across, or 0.</param>
    public IReadOnlyList<(long X, long Y)> Of(Rough raw, long needX, long needY)
    {
        var ways = Lying(raw).Concat(Lighter(raw, needX, needY));
        return [.. ways.Distinct().Where(c => CanHandle(raw, c))];
    }

    private (long X, long Y)[] Lying(Rough raw)
    {
        var (x, y) = (Most(raw.X, saws.ChunkLength), Most(raw.Y, saws.ChunkLength));
        return [(x, Math.Min(y, Most(raw.Y, saws.ChunkWidth))), (Math.Min(x, Most(raw.X, saws.ChunkWidth)), y)];
    }

    private long Most(RawSide side, long handled) =>
        saws.Dressing > 0 ? Math.Min(handled + side.Low, saws.TrackLength) : handled + side.Low;

    /// <summary>For each size that could be given one way, as much the other way as the weight lets.</summary>
    private IEnumerable<(long X, long Y)> Lighter(Rough raw, long needX, long needY)
    {
        if (saws.ChunkKilograms is not { } limit || stock.Piece.KilogramsPerSquareMetre is not { } mass)
            return [];
        var area = (double)(limit / mass) * 1e18;
        long Other(RawSide side, RawSide other, long size) =>
            (long)Math.Min(area / Math.Max(1, Math.Min(size, side.Size) - side.Low), other.Size) + other.Low - 1;
        var lying = Lying(raw);
        var square = (long)Math.Sqrt(area);
        long[] along = [lying[0].X, lying[1].X, Math.Min(square, lying[0].X), needX];
        long[] across = [lying[0].Y, lying[1].Y, Math.Min(square, lying[1].Y), needY];
        return along
            .Where(x => x > 0)
            .Select(x => (x, Math.Min(lying[1].Y, Other(raw.X, raw.Y, x))))
            .Concat(across.Where(y => y > 0).Select(y => (Math.Min(lying[0].X, Other(raw.Y, raw.X, y)), y)));
    }

    /// <summary>A cap larger than the piece counts as the piece.</summary>
    private bool CanHandle(Rough raw, (long X, long Y) cap)
    {
        var (x, y) = (Math.Min(cap.X, raw.X.Size) - raw.X.Low, Math.Min(cap.Y, raw.Y.Size) - raw.Y.Low);
        return x > 0 && y > 0 && saws.CanHandle(x, y, stock);
    }
}

using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>A raw rectangle in the tree of one sheet's rough cuts: split by the track saw, or left as a region, a held blank, or spare.</summary>
/// <remarks>Settled once the sheet is opened; copies of a layout share it.</remarks>
internal sealed class Rough(RawSide x, RawSide y)
{
    /// <summary>Along the sheet.</summary>
    public RawSide X { get; } = x;

    /// <summary>Across it.</summary>
    public RawSide Y { get; } = y;

    /// <summary>Which way a split is measured.</summary>
    public SheetAxis Axis { get; private set; }

    /// <summary>The size of the first side of a split.</summary>
    public long At { get; private set; }

    public Rough? First { get; private set; }

    public Rough? Second { get; private set; }

    /// <summary>The held part or run it is kept for.</summary>
    public Item? Held { get; set; }

    /// <summary>The number of the region of sizing cuts in it, or -1.</summary>
    public int Region { get; set; } = -1;

    /// <summary>True when nothing may be cut from it.</summary>
    public bool IsBad { get; set; }

    public bool IsOpen => First is null && Held is null && Region < 0 && !IsBad;

    /// <summary>A whole sheet; one out of square is squared first, and this is what is left of it then.</summary>
    public static Rough Of(Stock stock, SawNumbers saws)
    {
        var trusts = stock.Piece.TrustsEdges;
        var (low, high) = trusts ? (0, Math.Min(RawSide.Hair, saws.Dressing)) : (saws.Dressing, saws.Dressing);
        if (!stock.Piece.OutOfSquare.IsPositive)
            return new(new(0, stock.X, low, high), new(0, stock.Y, low, high));
        // Even the least squaring is a cut with its kerf.
        var end = Math.Max(saws.Dressing + stock.Piece.OutOfSquare.Nanometres, saws.TrackKerf + RawSide.Hair);
        return new(new(end, stock.X - end, 0, end), new(low, stock.Y - low, 0, high));
    }

    public RawSide Side(SheetAxis axis) => axis == SheetAxis.Length ? X : Y;

    /// <summary>The same rough cuts, kept for the items of another job.</summary>
    public Rough As(Func<Item, Item> now) =>
        new(X, Y)
        {
            Axis = Axis,
            At = At,
            First = First?.As(now),
            Second = Second?.As(now),
            Held = Held is null ? null : now(Held),
            Region = Region,
        };

    /// <summary>The leaves, low ones first.</summary>
    public IEnumerable<Rough> Leaves() => First is null ? [this] : First.Leaves().Concat(Second?.Leaves() ?? []);

    /// <summary>Cuts it at a distance from its low edge; what the kerf leaves beyond may be nothing.</summary>
    public void Split(SheetAxis axis, long at, SawNumbers saws)
    {
        (Axis, At) = (axis, at);
        var side = Side(axis);
        First = With(axis, side.Before(at, saws.Dressing));
        if (side.Size - at - saws.TrackKerf > 0)
            Second = With(axis, side.Beyond(at + saws.TrackKerf, saws.Dressing));
    }

    private Rough With(SheetAxis axis, RawSide side) => axis == SheetAxis.Length ? new(side, Y) : new(X, side);
}

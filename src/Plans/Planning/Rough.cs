using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>A raw rectangle in the tree of one sheet's rough cuts: split by the track saw, or left as a region, a held blank, or spare.</summary>
/// <remarks>Sizes are of the raw wood, dressing margins included. Settled once the sheet is opened; copies of a layout share it.</remarks>
internal sealed class Rough(long x, long y)
{
    public long X { get; } = x;

    public long Y { get; } = y;

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

    public bool IsOpen => First is null && Held is null && Region < 0;

    public long Size(SheetAxis axis) => axis == SheetAxis.Length ? X : Y;

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
    public void Split(SheetAxis axis, long at, long kerf)
    {
        (Axis, At) = (axis, at);
        First = axis == SheetAxis.Length ? new(at, Y) : new(X, at);
        var rest = Size(axis) - at - kerf;
        if (rest > 0)
            Second = axis == SheetAxis.Length ? new(rest, Y) : new(X, rest);
    }
}

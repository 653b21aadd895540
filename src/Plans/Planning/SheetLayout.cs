using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>One sheet as planned: its rough cuts, and a tree of sizing cuts for each region.</summary>
internal sealed class SheetLayout
{
    private SheetLayout(Stock stock, Rough rough, List<Node> roots) => (Stock, Rough, Roots) = (stock, rough, roots);

    public Stock Stock { get; }

    public Rough Rough { get; }

    /// <summary>The regions' trees, by number.</summary>
    public List<Node> Roots { get; }

    /// <summary>The area of all items in it, held blanks left out.</summary>
    public long Filled { get; set; }

    /// <summary>How many items are in it, held blanks left out.</summary>
    public int Count { get; set; }

    public bool HasHeld => Rough.Leaves().Any(l => l.Held is not null);

    /// <summary>A sheet with nothing in it but held blanks; every raw piece that can be handled becomes a region.</summary>
    public static SheetLayout Open(Stock stock, Rough rough, SawNumbers saws)
    {
        var roots = new List<Node>();
        foreach (var leaf in rough.Leaves().Where(l => l.IsOpen && saws.CanHandle(l, stock)))
        {
            if (leaf.X.Usable <= 0 || leaf.Y.Usable <= 0)
                continue;
            leaf.Region = roots.Count;
            roots.Add(NewRoot(leaf.X.Usable, leaf.Y.Usable));
        }
        return new(stock, rough, roots);
    }

    public SheetLayout Copy() =>
        new(Stock, Rough, [.. Roots.Select(r => r.Copy(null))]) { Filled = Filled, Count = Count };

    public List<Node> Leaves() => [.. Roots.SelectMany(r => r.Leaves())];

    private static Node NewRoot(long x, long y) =>
        new()
        {
            Axis = SheetAxis.Width,
            Along = y,
            Across = x,
            OpenAlong = true,
            OpenAcross = true,
            IsRough = true,
        };
}

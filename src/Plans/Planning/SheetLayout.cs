using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>One sheet as planned so far: its rough cuts, and a tree of sizing cuts for each region.</summary>
/// <remarks>The first cells are the roots of the regions.</remarks>
internal sealed class SheetLayout
{
    private readonly int _roots;
    private Cell[] _cells;
    private int _top;
    private int _spare = -1;
    private Span[] _spans = new Span[8];
    private int[] _befores = new int[8];
    private (int First, int Then)[] _rules = [];

    private SheetLayout(Stock stock, Rough rough, int roots)
    {
        (Stock, Rough, _roots, _top) = (stock, rough, roots, roots);
        _cells = new Cell[Math.Max(8, roots)];
        HasHeld = rough.Leaves().Any(l => l.Held is not null);
    }

    public Stock Stock { get; }

    public Rough Rough { get; }

    public bool HasHeld { get; }

    /// <summary>The cells, gone ones among them.</summary>
    public Cell[] Cells => _cells;

    /// <summary>One past the last cell.</summary>
    public int Top => _top;

    public int RootCount => _roots;

    /// <summary>The area of all items in it, held blanks left out.</summary>
    public long Filled { get; set; }

    /// <summary>How many items are in it, held blanks left out.</summary>
    public int Count { get; set; }

    /// <summary>What its free wood is worth: large pieces more than the same in small ones.</summary>
    public double Together { get; set; }

    /// <summary>True while it is put back on the pile, on trial.</summary>
    public bool IsClosed { get; set; }

    /// <summary>The places that offer wood.</summary>
    public ReadOnlySpan<Span> Spans => _spans.AsSpan(0, SpanCount);

    public int SpanCount { get; private set; }

    /// <summary>Settings that spans refer to: what is visited before or after what they would take.</summary>
    public ReadOnlySpan<int> Befores => _befores.AsSpan(0, BeforeCount);

    public int BeforeCount { get; private set; }

    /// <summary>The rules of the visit order that its cuts bring in.</summary>
    public ReadOnlySpan<(int First, int Then)> Rules => _rules.AsSpan(0, RuleCount);

    public int RuleCount { get; private set; }

    /// <summary>The largest side any span offers along the sheet.</summary>
    public long MostX { get; private set; }

    /// <summary>The same across.</summary>
    public long MostY { get; private set; }

    /// <summary>The regions' trees, for writing the plan down.</summary>
    public IReadOnlyList<Node> Roots(Job job) =>
        [
            .. Enumerable
                .Range(0, _roots)
                .Select(root =>
                    job.HasOrder ? TreeReader.Read(job, _cells, root, null) : new FreeTreeReader(job, _cells).Read(root)
                ),
        ];

    /// <summary>A sheet with nothing in it but held blanks; every raw piece that can be handled becomes a region.</summary>
    public static SheetLayout Open(Stock stock, Rough rough, SawNumbers saws)
    {
        var roots = new List<Cell>();
        foreach (var leaf in rough.Leaves().Where(l => l.IsOpen && saws.CanHandle(l, stock)))
        {
            if (leaf.X.Usable <= 0 || leaf.Y.Usable <= 0)
                continue;
            leaf.Region = roots.Count;
            roots.Add(NewRoot(leaf.X.Usable, leaf.Y.Usable));
        }
        var sheet = new SheetLayout(stock, rough, roots.Count);
        roots.CopyTo(sheet._cells);
        return sheet;
    }

    /// <summary>The same sheet once more.</summary>
    public SheetLayout Copy()
    {
        var copy = new SheetLayout(Stock, Rough, _roots);
        copy.CopyFrom(this);
        return copy;
    }

    /// <summary>The same sheet, broken down the same way, with nothing in its regions yet.</summary>
    public SheetLayout Emptied()
    {
        var empty = new SheetLayout(Stock, Rough, _roots);
        for (var root = 0; root < _roots; root++)
            empty._cells[root] = NewRoot(0, 0);
        return empty;
    }

    /// <summary>The same trees on a sheet of another job, with cells that name its items and settings; its rules come with the next sizing.</summary>
    public SheetLayout As(Stock stock, Rough rough, Func<Cell, Cell> now)
    {
        var copy = new SheetLayout(stock, rough, _roots);
        copy.CopyFrom(this);
        for (var i = 0; i < copy._top; i++)
            copy._cells[i] = now(copy._cells[i]);
        copy.RuleCount = 0;
        return copy;
    }

    /// <summary>The same sheet once more, its rules not yet in anybody's order.</summary>
    public SheetLayout Fresh()
    {
        var fresh = Copy();
        fresh.SwapRules([], 0, out _);
        return fresh;
    }

    /// <summary>The cells that are items.</summary>
    public List<int> Items()
    {
        List<int> items = [];
        for (var cell = 0; cell < _top; cell++)
            if (_cells[cell].Item >= 0)
                items.Add(cell);
        return items;
    }

    /// <summary>Becomes like another picture of the same sheet; any other may serve as the picture.</summary>
    public void CopyFrom(SheetLayout other)
    {
        Fit(ref _cells, other._top);
        Fit(ref _spans, other.SpanCount);
        Fit(ref _befores, other.BeforeCount);
        Fit(ref _rules, other.RuleCount);
        Array.Copy(other._cells, _cells, other._top);
        Array.Copy(other._spans, _spans, other.SpanCount);
        Array.Copy(other._befores, _befores, other.BeforeCount);
        Array.Copy(other._rules, _rules, other.RuleCount);
        (_top, _spare) = (other._top, other._spare);
        (SpanCount, BeforeCount, RuleCount) = (other.SpanCount, other.BeforeCount, other.RuleCount);
        (Filled, Count, Together, IsClosed) = (other.Filled, other.Count, other.Together, other.IsClosed);
        (MostX, MostY) = (other.MostX, other.MostY);
    }

    /// <summary>The ids of its items, held blanks left out.</summary>
    public IEnumerable<int> ItemIds() => _cells.Take(_top).Select(cell => cell.Item).Where(item => item >= 0);

    /// <summary>A new cell, linked to nothing.</summary>
    public int NewCell()
    {
        var at = _spare;
        if (at >= 0)
            _spare = _cells[at].Next;
        else
        {
            Fit(ref _cells, _top + 1);
            at = _top++;
        }
        _cells[at] = new()
        {
            Parent = -1,
            First = -1,
            Next = -1,
            Rest = -1,
            Setting = -1,
            Item = -1,
        };
        return at;
    }

    /// <summary>Gives a cell back that nothing refers to any more.</summary>
    public void Free(int cell)
    {
        _cells[cell].Item = -1;
        _cells[cell].Next = _spare;
        _spare = cell;
    }

    /// <summary>Forgets all spans.</summary>
    public void StartSpans() => (SpanCount, BeforeCount, MostX, MostY, Together) = (0, 0, 0, 0, 0);

    public void Add(in Span span)
    {
        Fit(ref _spans, SpanCount + 1);
        _spans[SpanCount++] = span;
        MostX = Math.Max(MostX, span.X);
        MostY = Math.Max(MostY, span.Y);
    }

    public void AddBefore(int setting)
    {
        Fit(ref _befores, BeforeCount + 1);
        _befores[BeforeCount++] = setting;
    }

    /// <summary>Marks all settings noted from a place on: a free cut comes between.</summary>
    public void MarkThrough(int from)
    {
        for (var i = from; i < BeforeCount; i++)
            _befores[i] = Before.Through(_befores[i]);
    }

    /// <summary>Takes other rules; returns those it had.</summary>
    public (int First, int Then)[] SwapRules((int First, int Then)[] rules, int count, out int had)
    {
        var old = _rules;
        had = RuleCount;
        (_rules, RuleCount) = (rules, count);
        return old;
    }

    private static void Fit<T>(ref T[] array, int count)
    {
        if (array.Length < count)
            Array.Resize(ref array, Math.Max(count, array.Length * 2));
    }

    private static Cell NewRoot(long x, long y) =>
        new()
        {
            Parent = -1,
            First = -1,
            Next = -1,
            Rest = -1,
            Setting = -1,
            Item = -1,
            Axis = SheetAxis.Width,
            Along = y,
            Across = x,
            OpenAlong = true,
            OpenAcross = true,
            IsRough = true,
        };
}

namespace Nookwright.Planning;

/// <summary>Well filled sheets of one material that a search came by, for the exact finish to choose from.</summary>
internal sealed class SheetPool
{
    // More than the finish can weigh, so that the fullest can be picked; fewer than take long to gather.
    private const int Most = 2000;

    // How much emptier than the average of a better plan a sheet may be: some are, or none could be fuller.
    private const double Slack = 0.1;

    private readonly Job _job;
    private readonly Dictionary<int, int> _kinds = [];
    private readonly HashSet<ulong> _known = [];
    private readonly List<SheetLayout> _sheets = [];
    private readonly double _leastFill;

    /// <param name="job">The job.</param>
    /// <param name="material">The material.</param>
    /// <param name="sheets">How many sheets are known to do: a better plan has one less.</param>
    public SheetPool(Job job, string material, int sheets)
    {
        _job = job;
        var items = job.Items.Where(i => i.Material == material).ToList();
        foreach (var alike in items.GroupBy(KindOf))
        {
            foreach (var item in alike)
                _kinds[item.Id] = Kinds.Count;
            Kinds.Add([.. alike]);
        }
        var largest = job.Stocks.Where(s => s.Material == material).Max(s => (double)s.Area);
        _leastFill = (items.Sum(i => (double)i.Area) / largest / Math.Max(1, sheets - 1)) - Slack;
    }

    /// <summary>The items, those that can stand for each other together.</summary>
    public List<IReadOnlyList<Item>> Kinds { get; } = [];

    /// <summary>The sheets, the fullest first, but so that each kind of item is on as many of the first as the others.</summary>
    public List<SheetLayout> Fullest()
    {
        var ranked = _sheets
            .Select(s => (Sheet: s, Yields: Yields(s)))
            .OrderByDescending(s => (double)s.Sheet.Filled / s.Sheet.Stock.Area)
            .ToList();
        var turns = Enumerable
            .Range(0, Kinds.Count)
            .Select(kind => ranked.Where(s => s.Yields[kind] > 0).Select(s => s.Sheet).ToList())
            .ToList();
        var longest = turns.Select(t => t.Count).DefaultIfEmpty(0).Max();
        return
        [
            .. Enumerable.Range(0, longest).SelectMany(i => turns.Where(t => i < t.Count).Select(t => t[i])).Distinct(),
        ];
    }

    /// <summary>The number of an item's kind.</summary>
    public int Kind(int item) => _kinds[item];

    /// <summary>Keeps a picture of a sheet that is filled well and unlike those that are kept.</summary>
    public void Offer(SheetLayout sheet)
    {
        if (_sheets.Count < Most && sheet.Filled >= _leastFill * sheet.Stock.Area)
            Keep(sheet);
    }

    /// <summary>Keeps a picture of a sheet, however it is filled, unless there is one like it.</summary>
    public void Keep(SheetLayout sheet)
    {
        if (_known.Add(Print(sheet)))
            _sheets.Add(sheet.Copy());
    }

    /// <summary>Equal for sheets that yield the same and bring in the same rules; hardly ever for others.</summary>
    private ulong Print(SheetLayout sheet)
    {
        var print = Mixed((ulong)sheet.Stock.Index);
        for (var cell = 0; cell < sheet.Top; cell++)
            if (sheet.Cells[cell].Item is >= 0 and var item)
                print += Mixed(1_000 + (ulong)_kinds[item]);
        foreach (var (first, then) in sheet.Rules)
            print += Mixed(((ulong)(first + 1) << 32) + (ulong)then);
        return print;
    }

    /// <summary>SplitMix64's way of spreading a number's bits (Steele, Lea and Flood, "Fast splittable pseudorandom number generators", 2014).</summary>
    private static ulong Mixed(ulong number)
    {
        number += 0x9E3779B97F4A7C15;
        number = (number ^ (number >> 30)) * 0xBF58476D1CE4E5B9;
        number = (number ^ (number >> 27)) * 0x94D049BB133111EB;
        return number ^ (number >> 31);
    }

    /// <summary>How many of each kind a sheet yields.</summary>
    public int[] Yields(SheetLayout sheet)
    {
        var yields = new int[Kinds.Count];
        foreach (var cell in sheet.Items())
            yields[_kinds[sheet.Cells[cell].Item]]++;
        return yields;
    }

    /// <summary>Runs stand for themselves alone.</summary>
    private string KindOf(Item item) =>
        item.Run is not null
            ? item.Run
            : string.Join(';', item.Turns.Select(t => (t.X, t.Y, t.SetX, t.SetY, t.MatchX, t.MatchY, t.Figure)));
}

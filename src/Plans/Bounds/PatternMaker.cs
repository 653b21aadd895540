namespace Nookwright.Bounds;

/// <summary>Finds the most valuable way to cut up the sheets of a question that take the same things the same way round.</summary>
/// <remarks>
/// On two levels, as in the shop: the track saw breaks a sheet down into chunks one person can handle, and blanks; the table
/// saw cuts the chunks.
/// </remarks>
internal sealed class PatternMaker
{
    private readonly WoodQuestion _question;
    private readonly AxisGrid _x;
    private readonly AxisGrid _y;
    private readonly GuillotineTable _fine;
    private readonly GuillotineTable? _rough;
    private readonly IReadOnlyList<(int Want, int X, int Y)> _turns;
    private readonly IReadOnlyList<(int X, int Y)> _chunks;
    private readonly int[] _worths;

    /// <param name="question">The question.</param>
    /// <param name="sheets">Places of the sheets meant; all of them take the same things the same way round.</param>
    /// <param name="most">How many cut points a way at most.</param>
    public PatternMaker(WoodQuestion question, IReadOnlyList<int> sheets, int most)
    {
        (_question, Sheets) = (question, sheets);
        var kinds = sheets.Select(s => question.Sheets[s]).ToList();
        var largest = kinds[0] with { X = kinds.Max(k => k.X), Y = kinds.Max(k => k.Y) };
        _x = AxisGrid.Of(Sizes(largest, t => t.X, largest.X), most);
        _y = AxisGrid.Of(Sizes(largest, t => t.Y, largest.Y), most);
        _fine = new(_x.Fine, _y.Fine, 0, 0);
        var hasRough = question.HasRough || question.Chunk is not null;
        _rough = hasRough ? new(_x.Rough, _y.Rough, _x.Gap, _y.Gap) : null;
        _turns =
        [
            .. question.Wants.SelectMany((w, i) => w.Turns(largest).Select(t => (i, _x.Steps(t.X), _y.Steps(t.Y)))),
        ];
        _chunks = [.. Chunks(largest).Select(c => (_x.Steps(c.X), _y.Steps(c.Y)))];
        _worths = new int[question.Wants.Count];
    }

    /// <summary>Places of the sheets meant.</summary>
    public IReadOnlyList<int> Sheets { get; }

    /// <summary>True when no size was rounded.</summary>
    public bool IsExact => _x.IsExact && _y.IsExact;

    /// <summary>About how many steps of reckoning pricing takes.</summary>
    public double Effort => _fine.Effort + (_rough?.Effort ?? 0);

    /// <summary>False for a want that the grid makes nothing of one way: any number would fit, so it must be worth nothing.</summary>
    public bool CanPrice(int want) => _turns.Where(t => t.Want == want).All(t => t.X > 0 && t.Y > 0);

    /// <summary>The most a sheet can be worth by area alone, when wants are worth so much each.</summary>
    public double MostWorth(IReadOnlyList<double> worths) =>
        Sheets.Max(s => (double)X(s) * Y(s))
        * _turns.Where(t => t.X > 0 && t.Y > 0).Select(t => worths[t.Want] / ((double)t.X * t.Y)).Append(0).Max();

    /// <summary>Works out what sheets yield at most when wants are worth so much each.</summary>
    public void Price(IReadOnlyList<int> worths)
    {
        for (var i = 0; i < _worths.Length; i++)
            _worths[i] = worths[i];
        _fine.Clear();
        foreach (var (want, x, y) in _turns)
            if (!_question.Wants[want].IsRough)
                _fine.Offer(x, y, _worths[want]);
        _fine.Fill();
        if (_rough is not null)
            PriceRough(_rough);
    }

    /// <summary>The most one sheet yields.</summary>
    public int Worth(int sheet) => (_rough ?? _fine).Worth(X(sheet), Y(sheet));

    /// <summary>A way to cut up a sheet that yields it, then the best ones that begin with other cuts.</summary>
    /// <param name="sheet">The sheet's place in the question.</param>
    /// <param name="others">How many others at most.</param>
    public IEnumerable<Pattern> Best(int sheet, int others) =>
        (_rough ?? _fine)
            .Cuttings(X(sheet), Y(sheet), others)
            .Select(uncut => new Pattern(sheet, _rough is null ? CountFine(uncut) : CountRough(uncut)));

    private int[] CountFine(IEnumerable<(int X, int Y)> uncut)
    {
        var counts = new int[_worths.Length];
        foreach (var (x, y) in uncut)
            counts[Of(x, y, isRough: false)!.Value]++;
        return counts;
    }

    private int[] CountRough(IEnumerable<(int X, int Y)> uncut)
    {
        var counts = new int[_worths.Length];
        foreach (var (x, y) in uncut)
            if (Of(x, y, isRough: true) is { } blank && _worths[blank] == _rough!.Worth(x, y))
                counts[blank]++;
            else
                counts = [.. counts.Zip(CountChunk(x, y), (a, b) => a + b)];
        return counts;
    }

    private int[] CountChunk(int x, int y)
    {
        var chunk = Chunk(x, y);
        return CountFine(_fine.Cuttings(chunk.X, chunk.Y, others: 0).First());
    }

    private int X(int sheet) => _x.Steps(_question.Sheets[sheet].X);

    private int Y(int sheet) => _y.Steps(_question.Sheets[sheet].Y);

    private void PriceRough(GuillotineTable rough)
    {
        rough.Clear();
        foreach (var x in _x.Rough.At)
        foreach (var y in _y.Rough.At)
            rough.Offer(x, y, _chunks.Max(c => _fine.Worth(Math.Min(x, c.X), Math.Min(y, c.Y))));
        foreach (var (want, x, y) in _turns)
            if (_question.Wants[want].IsRough)
                rough.Offer(x, y, _worths[want]);
        rough.Fill();
    }

    private (int X, int Y) Chunk(int x, int y) =>
        _chunks.Select(c => (X: Math.Min(x, c.X), Y: Math.Min(y, c.Y))).MaxBy(c => _fine.Worth(c.X, c.Y));

    /// <summary>The most valuable thing that lies uncut in a place of these sizes.</summary>
    private int? Of(int x, int y, bool isRough)
    {
        var points = isRough ? (X: _x.Rough, Y: _y.Rough) : (X: _x.Fine, Y: _y.Fine);
        int? best = null;
        foreach (var (want, turnX, turnY) in _turns)
            if (
                _question.Wants[want].IsRough == isRough
                && points.X.Below(turnX) == points.X.Below(x)
                && points.Y.Below(turnY) == points.Y.Below(y)
            )
                if (best is null || _worths[want] > _worths[best.Value])
                    best = want;
        return best;
    }

    private IEnumerable<(long X, long Y)> Chunks(SheetKind largest)
    {
        if (_question.Chunk is not var (longer, shorter))
            return [(largest.X, largest.Y)];
        return [(longer, shorter), (shorter, longer)];
    }

    private AxisSizes Sizes(SheetKind largest, Func<(long X, long Y), long> way, long extent)
    {
        var things = _question.Wants.Select(w => (w.IsRough, Sizes: Ways(w), w.Count)).Where(t => t.Sizes.Count > 0);
        var byKind = things.ToLookup(t => t.IsRough, t => (t.Sizes, t.Count));
        var region = Math.Min(extent, _question.Chunk?.Longer ?? extent);
        return new(extent, region, _question.Gap, [.. byKind[false]], [.. byKind[true]]);

        IReadOnlyList<long> Ways(Want want) => [.. want.Turns(largest).Select(way).Distinct()];
    }
}

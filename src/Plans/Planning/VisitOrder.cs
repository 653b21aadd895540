namespace Nookwright.Planning;

/// <summary>Puts visits whose cuts are settled into an order that keeps loose pieces few: a beam search over those that can be next.</summary>
/// <remarks>
/// Of two orders the better has fewer pieces about at most, then fewer added up over all visits, then its long cuts earlier,
/// while the piece is still big and lies safely. Orders that have made the same visits are one state, so that the search is
/// exact where no state had to be left aside.
/// </remarks>
internal sealed class VisitOrder
{
    private const int MostStates = 48;
    private const int Work = 4_000_000;
    private const long Millimetre = 1_000_000;

    private readonly IReadOnlyList<VisitStand> _stands;
    private readonly IReadOnlyList<IReadOnlySet<int>> _befores;
    private readonly IReadOnlyList<long> _lengths;
    private readonly List<int>[] _touched;
    private readonly int _width;

    /// <summary>The visits, and what stands at the saw between them.</summary>
    /// <param name="stands">Pieces at the saw, by the visits they come from and are done with.</param>
    /// <param name="befores">For each visit, those that must come before it.</param>
    /// <param name="lengths">For each visit its longest cut, in nanometres.</param>
    public VisitOrder(
        IReadOnlyList<VisitStand> stands,
        IReadOnlyList<IReadOnlySet<int>> befores,
        IReadOnlyList<long> lengths
    )
    {
        (_stands, _befores, _lengths) = (stands, befores, lengths);
        _touched = Touched(stands, befores.Count);
        var work = befores.Count * (1 + _touched.Sum(t => (long)t.Count));
        _width = (int)Math.Clamp(Work / (work + 1), 1, MostStates);
    }

    /// <summary>The visits in their new order.</summary>
    public IReadOnlyList<int> Find()
    {
        List<State> level = [State.Nothing(_befores.Count)];
        for (var made = 0; made < _befores.Count; made++)
            level = Best(level.SelectMany(s => Next(s, made)));
        return level[0].Order();
    }

    /// <summary>For each visit the pieces that may come about or be done with when it is made.</summary>
    private static List<int>[] Touched(IReadOnlyList<VisitStand> stands, int visits)
    {
        var touched = new List<int>[visits];
        for (var visit = 0; visit < visits; visit++)
            touched[visit] = [];
        for (var stand = 0; stand < stands.Count; stand++)
            foreach (var visit in stands[stand].Visits())
                touched[visit].Add(stand);
        return touched;
    }

    private IEnumerable<Step> Next(State state, int made)
    {
        for (var visit = 0; visit < _befores.Count; visit++)
        {
            if (state.Done[visit] || !_befores[visit].All(b => state.Done[b]))
                continue;
            var loose = state.Loose + Change(state.Done, visit);
            var late = (made + 1) * (_lengths[visit] / Millimetre);
            var cost = state.Cost;
            yield return new(
                state,
                visit,
                loose,
                new(Math.Max(cost.Most, loose), cost.Total + loose, cost.Late + late)
            );
        }
    }

    /// <summary>How many more pieces lie about once a visit is made too.</summary>
    private int Change(bool[] done, int visit)
    {
        var before = _touched[visit].Count(s => _stands[s].LiesAbout(done));
        done[visit] = true;
        var after = _touched[visit].Count(s => _stands[s].LiesAbout(done));
        done[visit] = false;
        return after - before;
    }

    private List<State> Best(IEnumerable<Step> steps)
    {
        List<State> best = [];
        foreach (var step in steps.OrderBy(s => s.Cost))
        {
            if (best.Count == _width)
                break;
            var state = step.Made();
            if (!best.Exists(s => s.Done.AsSpan().SequenceEqual(state.Done)))
                best.Add(state);
        }
        return best;
    }

    /// <summary>A visit that could be next.</summary>
    private readonly record struct Step(State From, int Visit, int Loose, OrderCost Cost)
    {
        public State Made()
        {
            bool[] done = [.. From.Done];
            done[Visit] = true;
            return new(From, Visit, done, Loose, Cost);
        }
    }

    /// <summary>The visits made so far, and how many pieces lie about after them.</summary>
    private sealed record State(State? From, int Visit, bool[] Done, int Loose, OrderCost Cost)
    {
        public static State Nothing(int visits) => new(null, -1, new bool[visits], 0, default);

        public List<int> Order()
        {
            List<int> order = [];
            for (var at = this; at.From is not null; at = at.From)
                order.Add(at.Visit);
            order.Reverse();
            return order;
        }
    }

    private readonly record struct OrderCost(int Most, long Total, long Late) : IComparable<OrderCost>
    {
        public int CompareTo(OrderCost other) => (Most, Total, Late).CompareTo((other.Most, other.Total, other.Late));
    }
}

/// <summary>A piece at the saw, by visits.</summary>
/// <param name="From">It is there when all of these have been made.</param>
/// <param name="Until">It is gone when all of these have been made.</param>
internal sealed record VisitStand(IReadOnlyCollection<int> From, IReadOnlyCollection<int> Until)
{
    /// <summary>The visits that need a piece of its sheet, which is broken down for the first of them; null for a piece that is there at once.</summary>
    public IReadOnlyCollection<int>? Sheet { get; init; }

    /// <summary>True when it lies about after some visits.</summary>
    public bool LiesAbout(bool[] done) =>
        (Sheet is null || Sheet.Any(v => done[v])) && From.All(v => done[v]) && !Until.All(v => done[v]);

    /// <summary>The visits that may change whether it lies about; a sheet is begun at the latest when the piece comes off it.</summary>
    public IEnumerable<int> Visits()
    {
        var isBegunBefore = Sheet is null || From.Any(Sheet.Contains);
        return From.Concat(Until).Concat(isBegunBefore ? [] : Sheet!).Distinct();
    }
}

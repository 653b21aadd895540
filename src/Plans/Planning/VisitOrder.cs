namespace Nookwright.Planning;

/// <summary>Puts visits whose cuts are settled into an order that keeps loose pieces few: a beam search over those that can be next.</summary>
/// <remarks>
/// Of two orders the better has fewer pieces about at most, then fewer added up over all visits, then its long cuts earlier,
/// while the piece is still big and lies safely. Orders that have made the same visits are one state, so that the search is
/// exact where no state had to be left aside.
/// </remarks>
/// <param name="stands">Pieces at the saw, by the visits they come from and are done with.</param>
/// <param name="befores">For each visit, those that must come before it.</param>
/// <param name="lengths">For each visit its longest cut, in nanometres.</param>
internal sealed class VisitOrder(
    IReadOnlyList<VisitStand> stands,
    IReadOnlyList<IReadOnlySet<int>> befores,
    IReadOnlyList<long> lengths
)
{
    private const int MostStates = 48;
    private const int Work = 4_000_000;
    private const long Millimetre = 1_000_000;

    private int Count => befores.Count;

    /// <summary>The visits in their new order.</summary>
    public IReadOnlyList<int> Find()
    {
        var width = Math.Clamp(Work / ((Count * Count * (stands.Count + 1)) + 1), 1, MostStates);
        List<State> level = [new([], new bool[Count], new(0, 0, 0))];
        for (var made = 0; made < Count; made++)
            level = Best(level.SelectMany(Next), width);
        return level[0].Order;
    }

    private IEnumerable<State> Next(State state) =>
        Enumerable
            .Range(0, Count)
            .Where(v => !state.Done[v] && befores[v].All(b => state.Done[b]))
            .Select(state.With)
            .Select(Weighed);

    private State Weighed(State state)
    {
        var loose = stands.Count(s => s.LiesAbout(state.Done));
        var late = state.Order.Count * (lengths[state.Order[^1]] / Millimetre);
        var cost = state.Cost;
        return state with { Cost = new(Math.Max(cost.Most, loose), cost.Total + loose, cost.Late + late) };
    }

    private static List<State> Best(IEnumerable<State> states, int width)
    {
        var known = new HashSet<string>();
        return [.. states.OrderBy(s => s.Cost).Where(s => known.Add(s.Print())).Take(width)];
    }

    private sealed record State(IReadOnlyList<int> Order, bool[] Done, OrderCost Cost)
    {
        public State With(int visit)
        {
            bool[] done = [.. Done];
            done[visit] = true;
            return new([.. Order, visit], done, Cost);
        }

        public string Print() => string.Concat(Done.Select(d => d ? '1' : '0'));
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
}

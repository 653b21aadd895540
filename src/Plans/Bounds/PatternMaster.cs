using Google.OrTools.LinearSolver;

namespace Nookwright.Bounds;

/// <summary>The linear program of column generation: patterns, as fractions of sheets, that cover all wants at the least cost.</summary>
/// <remarks>
/// After Gilmore and Gomory, "Multistage cutting stock problems of two and more dimensions", Operations Research 13, 1965.
/// Solved by a general solver in floating point: its prices only steer the search, and a bound is reckoned from them anew in
/// whole numbers.
/// </remarks>
internal sealed class PatternMaster : IDisposable
{
    // Measured: what the solver takes for a row in one of its iterations, and for an entry each time it is asked.
    private const double StepsPerRow = 200;
    private const double StepsPerEntry = 40;

    private const double SolverSlack = 1e-9;

    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Constraint[] _cover;
    private readonly Constraint?[] _stock;
    private readonly Variable[] _short;
    private readonly Variable[] _spare;
    private readonly double[] _costs;
    private double[] _prices;
    private double[] _rents;
    private long _entries;

    /// <param name="question">The question.</param>
    /// <param name="costs">What a sheet of each kind costs, the dearest one.</param>
    public PatternMaster(WoodQuestion question, double[] costs)
    {
        _costs = costs;
        _cover = [.. question.Wants.Select(w => _solver.MakeConstraint(w.Count, double.PositiveInfinity))];
        _stock =
        [
            .. question.Sheets.Select(s =>
                s.Quantity is { } q ? _solver.MakeConstraint(double.NegativeInfinity, q) : null
            ),
        ];
        _prices = new double[_cover.Length];
        _rents = [.. costs.Select(c => c + 1)]; // Before there are prices, every pattern gains.
        _solver.Objective().SetMinimization();
        _short = [.. _cover.Select(row => AddColumn(row, 1))];
        _spare = [.. _cover.Select(row => AddColumn(row, -1))];
    }

    /// <summary>The cost of the best cover by the patterns so far; of patterns alone when <see cref="IsWhole"/>.</summary>
    public double Cost => _solver.Objective().Value();

    /// <summary>True when the last solution bought nothing at a price from outside and sold nothing.</summary>
    public bool IsWhole => _short.Concat(_spare).All(v => v.SolutionValue() < SolverSlack);

    /// <summary>About how many steps of reckoning the last solution took.</summary>
    /// <remarks>The solver counts its iterations; they are the same each time.</remarks>
    public double Effort => (_solver.Iterations() * (double)_cover.Length * StepsPerRow) + (_entries * StepsPerEntry);

    /// <summary>What one more of each want would cost.</summary>
    public double[] Prices => _prices;

    /// <summary>Keeps the next prices near some others: what is short can be bought for a little more, what is spare sold for a little less.</summary>
    /// <param name="prices">Prices by which no pattern, of sheets there is no end of, is worth more than its sheet.</param>
    /// <param name="most">How far from each at most.</param>
    public void KeepNear(IReadOnlyList<double> prices, IReadOnlyList<double> most)
    {
        for (var i = 0; i < _cover.Length; i++)
        {
            _solver.Objective().SetCoefficient(_short[i], prices[i] + most[i]);
            _solver.Objective().SetCoefficient(_spare[i], -Math.Max(0, prices[i] - most[i]));
        }
    }

    /// <summary>What a pattern would save, by the prices of the last solution, if it were used once; above nought it is worth adding.</summary>
    public double Gain(Pattern pattern)
    {
        var worth = _rents[pattern.Sheet] - _costs[pattern.Sheet];
        for (var i = 0; i < _prices.Length; i++)
            worth += pattern.Counts[i] * _prices[i];
        return worth;
    }

    /// <summary>Adds a pattern.</summary>
    public void Add(Pattern pattern)
    {
        var column = AddColumn();
        _solver.Objective().SetCoefficient(column, _costs[pattern.Sheet]);
        for (var i = 0; i < _cover.Length; i++)
            if (pattern.Counts[i] > 0)
            {
                _cover[i].SetCoefficient(column, pattern.Counts[i]);
                _entries++;
            }
        _stock[pattern.Sheet]?.SetCoefficient(column, 1);
    }

    /// <summary>Solves it; false when the solver gives up.</summary>
    public bool Solve()
    {
        if (_solver.Solve() != Solver.ResultStatus.OPTIMAL)
            return false;
        _prices = [.. _cover.Select(row => Math.Max(0, row.DualValue()))];
        _rents = [.. _stock.Select(row => Math.Min(0, row?.DualValue() ?? 0))];
        return true;
    }

    /// <inheritdoc/>
    public void Dispose() => _solver.Dispose();

    private Variable AddColumn(Constraint row, int coefficient)
    {
        var column = AddColumn();
        row.SetCoefficient(column, coefficient);
        return column;
    }

    private Variable AddColumn() => _solver.MakeNumVar(0, double.PositiveInfinity, "");
}

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
    private const double StepsPerRow = 500;
    private const double StepsPerEntry = 100;

    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Constraint[] _cover;
    private readonly Constraint?[] _stock;
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
        (_prices, _rents) = (new double[_cover.Length], new double[_stock.Length]);
        _solver.Objective().SetMinimization();
        var tooDear = 2.0 * question.Wants.Sum(w => w.Count);
        foreach (var row in _cover)
            row.SetCoefficient(AddColumn(tooDear), 1);
    }

    /// <summary>The cost of the best cover by the patterns so far.</summary>
    public double Cost => _solver.Objective().Value();

    /// <summary>About how many steps of reckoning the last solution took.</summary>
    /// <remarks>The solver counts its iterations; they are the same each time, and on any machine.</remarks>
    public double Effort => (_solver.Iterations() * (double)_cover.Length * StepsPerRow) + (_entries * StepsPerEntry);

    /// <summary>What one more of each want would cost.</summary>
    public double[] Prices => _prices;

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
        var column = AddColumn(_costs[pattern.Sheet]);
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

    private Variable AddColumn(double cost)
    {
        var column = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(column, cost);
        return column;
    }
}

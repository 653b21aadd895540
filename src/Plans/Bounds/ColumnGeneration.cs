namespace Nookwright.Bounds;

/// <summary>Column generation on one question, step by step; each step gives worths that are a bound by themselves.</summary>
/// <remarks>
/// Gilmore and Gomory's method. Prices are taken half way between the master's and the best known so far, which keeps them
/// from swinging (P. Wentges, "Weighted Dantzig-Wolfe decomposition for linear mixed-integer programming", International
/// Transactions in Operational Research 4, 1997).
/// </remarks>
internal sealed class ColumnGeneration : IDisposable
{
    private const double LeastGain = 1e-7;
    private const double MostWorth = 1 << 29;

    // Beside the best pattern for a sheet these cost next to nothing, and a fifth of the rounds then does (measured).
    private const int OtherPatterns = 30;

    private readonly WoodQuestion _question;
    private readonly IReadOnlyList<PatternMaker> _makers;
    private readonly PatternMaster _master;
    private readonly double _dearest;
    private readonly bool[] _canPrice;
    private double[] _centre;
    private double _best;

    /// <param name="question">The question; some sheet in it costs something.</param>
    /// <param name="makers">Find patterns for the sheets.</param>
    /// <param name="prices">Prices of wants to begin with, in costs of the dearest sheet.</param>
    public ColumnGeneration(WoodQuestion question, IReadOnlyList<PatternMaker> makers, double[] prices)
    {
        (_question, _makers, _centre) = (question, makers, prices);
        _dearest = question.Sheets.Max(s => s.Cost);
        _canPrice = [.. question.Wants.Select((_, i) => makers.All(m => m.CanPrice(i)))];
        _master = new(question, [.. question.Sheets.Select(s => s.Cost / _dearest)]);
    }

    /// <summary>Prices of wants that gave the best bound, in costs of the dearest sheet.</summary>
    public double[] Prices => _centre;

    /// <summary>The cost of the best cover by fractions of sheets known so far; the bound cannot rise above it.</summary>
    public double Ceiling { get; private set; } = double.PositiveInfinity;

    /// <summary>About how many steps of reckoning it has taken so far, those of the solver among them.</summary>
    public double Effort { get; private set; }

    /// <summary>Bounds, one after the other, until they can rise no more.</summary>
    public IEnumerable<Worths> Steps()
    {
        yield return Price(_centre, out _);
        while (Solve())
        {
            Ceiling = _master.Cost * _dearest;
            var prices = _master.Prices;
            yield return Price([.. prices.Zip(_centre, (a, b) => (a + b) / 2)], out var isBetter);
            if (isBetter)
                continue;
            yield return Price(prices, out isBetter);
            if (!isBetter)
                yield break;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _master.Dispose();

    private bool Solve()
    {
        var isSolved = _master.Solve();
        Effort += _master.Effort;
        return isSolved;
    }

    /// <summary>Finds the best patterns by these prices and adds those that gain.</summary>
    private Worths Price(double[] prices, out bool isBetter)
    {
        var whole = Whole(prices);
        var capacities = new long[_question.Sheets.Count];
        isBetter = false;
        foreach (var maker in _makers)
        {
            maker.Price(whole);
            Effort += maker.Effort;
            foreach (var sheet in maker.Sheets)
            {
                capacities[sheet] = maker.Worth(sheet);
                isBetter |= Add(maker.Best(sheet, OtherPatterns));
            }
        }
        var worths = new Worths(_question.Wants.Select((w, i) => (long)w.Count * whole[i]).Sum(), capacities);
        Centre(prices, worths);
        return worths;
    }

    private bool Add(IEnumerable<Pattern> patterns)
    {
        var gains = patterns
            .DistinctBy(p => string.Join(' ', p.Counts))
            .Where(p => double.IsPositiveInfinity(Ceiling) || _master.Gain(p) > LeastGain)
            .ToList();
        gains.ForEach(_master.Add);
        return gains.Count > 0;
    }

    private void Centre(double[] prices, Worths worths)
    {
        var costs = _question.Sheets.Select(s => s.Cost).ToList();
        var value = LeastCost.Unrounded(worths, _question.Sheets, costs);
        if (value > _best)
            (_best, _centre) = (value, prices);
    }

    /// <summary>Prices as whole numbers, as fine as the table of worths can take without overflow.</summary>
    private int[] Whole(double[] prices)
    {
        var most = _makers.Max(m => m.MostWorth(prices));
        var scale = most <= 0 ? 0 : MostWorth / most;
        return [.. prices.Select((p, i) => _canPrice[i] ? (int)Math.Min(MostWorth, p * scale) : 0)];
    }
}

namespace Nookwright.Bounds;

/// <summary>Column generation on one question, step by step; each step gives worths that are a bound by themselves.</summary>
/// <remarks>
/// Gilmore and Gomory's method. Prices are kept from swinging in two ways: the master's stay in a box around the best known
/// so far (R. E. Marsten, W. W. Hogan and J. W. Blankenship, "The BOXSTEP method for large-scale optimization", Operations
/// Research 23, 1975), and prices half way between the two are tried first (P. Wentges, "Weighted Dantzig-Wolfe decomposition
/// for linear mixed-integer programming", International Transactions in Operational Research 4, 1997).
/// </remarks>
internal sealed class ColumnGeneration : IDisposable
{
    private const double LeastGain = 1e-7;
    private const double MostWorth = 1 << 29;

    // How far the master may go from the best prices known in one step, as a share of them.
    private const double Nearness = 0.2;

    // Beside the best pattern for a sheet these cost next to nothing, and an eighth of the rounds then does (measured).
    private const int OtherPatterns = 60;

    // Of the best gain: patterns with less only keep the solver busy.
    private const double LeastShare = 0.3;

    private readonly WoodQuestion _question;
    private readonly IReadOnlyList<PatternMaker> _makers;
    private readonly PatternMaster _master;
    private readonly double _dearest;
    private readonly bool[] _canPrice;
    private readonly double[] _start;
    private double[] _centre;
    private double _best;

    /// <param name="question">The question; some sheet in it costs something.</param>
    /// <param name="makers">Find patterns for the sheets.</param>
    /// <param name="prices">Prices of wants to begin with, in costs of the dearest sheet.</param>
    public ColumnGeneration(WoodQuestion question, IReadOnlyList<PatternMaker> makers, double[] prices)
    {
        (_question, _makers, _centre, _start) = (question, makers, prices, prices);
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
        for (var reached = 0.0; Solve(); )
        {
            if (_master.IsWhole)
                Ceiling = _master.Cost * _dearest;
            var prices = _master.Prices;
            yield return Price([.. prices.Zip(_centre, (a, b) => (a + b) / 2)], out var isBetter);
            if (isBetter)
                continue;
            yield return Price(prices, out isBetter);
            if (isBetter)
                continue;
            if (_master.IsWhole || _best <= reached)
                yield break;
            reached = _best;
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _master.Dispose();

    private bool Solve()
    {
        _master.KeepNear(_centre, [.. _centre.Zip(_start, (now, first) => Nearness * Math.Max(now, first))]);
        var isSolved = _master.Solve();
        Effort += _master.Effort;
        return isSolved;
    }

    /// <summary>Finds the best patterns by these prices and adds those that gain.</summary>
    private Worths Price(double[] prices, out bool isBetter)
    {
        var scale = Scale(prices);
        int[] whole = [.. prices.Select((p, i) => _canPrice[i] ? (int)Math.Min(MostWorth, p * scale) : 0)];
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
        Centre(prices, worths, scale);
        return worths;
    }

    private bool Add(IEnumerable<Pattern> patterns)
    {
        var gains = patterns.Select(p => (Pattern: p, Gain: _master.Gain(p))).Where(p => p.Gain > LeastGain).ToList();
        var least = gains.Select(p => p.Gain).DefaultIfEmpty().Max() * LeastShare;
        foreach (
            var (pattern, _) in gains.Where(p => p.Gain >= least).DistinctBy(p => string.Join(' ', p.Pattern.Counts))
        )
            _master.Add(pattern);
        return gains.Count > 0;
    }

    private void Centre(double[] prices, Worths worths, double scale)
    {
        var costs = _question.Sheets.Select(s => s.Cost).ToList();
        var value = LeastCost.Unrounded(worths, _question.Sheets, costs);
        if (value > _best)
            (_best, _centre) = (value, Payable(prices, worths, scale));
    }

    /// <summary>The same prices, less or more by one factor, so that a sheet of which there is no end costs just what it yields.</summary>
    private double[] Payable(double[] prices, Worths worths, double scale)
    {
        var factor = _question
            .Sheets.Select((s, i) => (s.Quantity, Cost: s.Cost / _dearest, Yield: worths.Capacity[i] / scale))
            .Where(s => s.Quantity is null && s.Yield > 0)
            .Select(s => s.Cost / s.Yield)
            .DefaultIfEmpty(1)
            .Min();
        return [.. prices.Select(p => p * factor)];
    }

    /// <summary>What makes prices whole numbers as fine as the table of worths can take without overflow.</summary>
    private double Scale(double[] prices)
    {
        var most = _makers.Max(m => m.MostWorth(prices));
        return most <= 0 ? 0 : MostWorth / most;
    }
}

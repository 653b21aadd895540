using Nookwright.Cutting;

namespace Nookwright.Bounds;

/// <summary>Finds out how little of one material a plan can do with: at once by quick bounds, then better step by step.</summary>
internal sealed class BoundFinder
{
    // Cut points a way: quick and coarse first, then as fine as there is time for.
    private static readonly int[] Fineness = [320, 800, 2000];

    // A grid that is too fine to be priced this often in what time is left would not come to a better bound.
    private const int FewestPricings = 10;

    // Beyond this many kinds of things the linear program takes longer than anybody waits.
    private const int MostKinds = 400;

    private readonly WoodQuestion _question;
    private readonly IReadOnlyList<long> _costs;
    private readonly IReadOnlyList<long> _bought;
    private readonly IReadOnlyList<IReadOnlySet<int>> _needs;
    private volatile WoodBound _bound = new(0, 0, BoundWay.Area);

    /// <param name="request">What is asked; parts that cannot be made at all are taken out of it before.</param>
    /// <param name="material">The material's id.</param>
    public BoundFinder(CutRequest request, string material)
    {
        _question = WoodQuestion.Of(request, material);
        _costs = [.. _question.Sheets.Select(s => s.Cost)];
        _bought = [.. _question.Sheets.Select(s => s.IsOffcut ? 0L : 1L)];
        _needs = _question.Needs();
        if (_question.Wants.Count == 0)
            return;
        Take(QuickBounds.ByArea(_question), BoundWay.Area);
        Take(QuickBounds.ByDualFeasible(_question), BoundWay.DualFeasible);
    }

    /// <summary>The best bound so far; may be read while another thread sharpens it.</summary>
    public WoodBound Bound => _bound;

    /// <summary>Sharpens the bound by column generation; each step tells about how many steps of reckoning it took.</summary>
    /// <param name="steps">About how many steps of reckoning it may take.</param>
    public IEnumerable<double> Sharpen(double steps = double.PositiveInfinity)
    {
        if (_question.Wants.Count is 0 or > MostKinds || _costs.All(c => c == 0))
            yield break;
        var prices = AreaPrices();
        foreach (var most in Fineness)
        {
            var makers = Makers(most);
            var isExact = makers.All(m => m.IsExact);
            if (most > Fineness[0] && makers.Sum(m => m.Effort) * FewestPricings > steps)
                yield break;
            using var columns = new ColumnGeneration(_question, makers, prices);
            var taken = 0.0;
            foreach (var worths in columns.Steps())
            {
                Take(worths, isExact ? BoundWay.Columns : BoundWay.CoarseColumns);
                yield return columns.Effort - taken;
                taken = columns.Effort;
                if (taken > steps || IsAtCeiling(columns.Ceiling))
                    break;
            }
            steps -= taken;
            if (isExact || steps <= 0)
                yield break;
            prices = columns.Prices;
        }
    }

    private void Take(Worths worths, BoundWay way)
    {
        long Whole(IReadOnlyList<long> costs) =>
            WholeSheets.Cover(LeastCost.Of(worths, _question.Sheets, costs), _question.Sheets, costs, _needs);
        _bound = _bound.Or(new(Whole(_costs), (int)Whole(_bought), way));
    }

    /// <summary>True when not even the fractions of sheets that are known to do could ask for more; a billionth is the solver's own slack.</summary>
    private bool IsAtCeiling(double ceiling)
    {
        const double Slack = 1e-9;
        return ceiling < long.MaxValue / 2
            && WholeSheets.Cover((long)Math.Ceiling(ceiling * (1 - Slack)), _question.Sheets, _costs, _needs)
                <= _bound.Cost;
    }

    private double[] AreaPrices()
    {
        var dearest = _question.Sheets.Max(s => s.Cost);
        var rate = _question.Sheets.Where(s => s.Cost > 0).Min(s => s.Cost / ((double)s.X * s.Y)) / dearest;
        return [.. _question.Wants.Select(w => w.Length * (double)w.Width * rate)];
    }

    /// <summary>One for all kinds of sheet that take the same things the same way round.</summary>
    private List<PatternMaker> Makers(int most)
    {
        var pinned = _question.Wants.Select(w => w.From).ToHashSet();
        return
        [
            .. Enumerable
                .Range(0, _question.Sheets.Count)
                .Where(s => _question.Wants.Any(w => w.Turns(_question.Sheets[s]).Any()))
                .GroupBy(s => (_question.Sheets[s].HasFigure, pinned.Contains(_question.Sheets[s].Id) ? s : -1))
                .Select(g => new PatternMaker(_question, [.. g], most)),
        ];
    }
}

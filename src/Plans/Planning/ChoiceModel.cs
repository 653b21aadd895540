using Google.OrTools.Sat;

namespace Nookwright.Planning;

/// <summary>A question about sheets as a model of whole numbers.</summary>
internal sealed class ChoiceModel
{
    private readonly SheetQuestion _question;
    private readonly List<BoolVar> _taken = [];
    private readonly Dictionary<(int Setting, bool IsSecond), IntVar> _places = [];
    private readonly Dictionary<int, BoolVar> _repeats = [];
    private readonly Dictionary<(int, bool, int, bool), BoolVar> _rules = [];
    private readonly int _most;

    public ChoiceModel(SheetQuestion question)
    {
        _question = question;
        _most = 2 * Settings().Count();
        foreach (var setting in Settings())
            AddSetting(setting);
        foreach (var sheet in question.Pool)
            AddSheet(sheet);
        RequireItems();
        RequireStock();
        foreach (var (first, then) in question.Rules)
            RequireAll(first, then);
        SetAim();
    }

    public CpModel Model { get; } = new();

    /// <summary>How often each sheet is taken.</summary>
    public List<IntVar> Counts { get; } = [];

    /// <summary>One for each setting that may be visited twice.</summary>
    public IEnumerable<BoolVar> Repeats => _repeats.Values;

    private IEnumerable<int> Settings() =>
        _question
            .Pool.SelectMany(s => s.Rules)
            .Concat(_question.Rules)
            .SelectMany(r => (int[])[r.First, r.Then])
            .Distinct();

    private void AddSetting(int setting)
    {
        _places[(setting, false)] = Model.NewIntVar(0, _most, $"place of {setting}");
        if (!_question.MayRepeat.Contains(setting))
            return;
        _places[(setting, true)] = Model.NewIntVar(0, _most, $"second place of {setting}");
        _repeats[setting] = Model.NewBoolVar($"{setting} twice");
        Model.Add(_places[(setting, false)] < _places[(setting, true)]);
    }

    private void AddSheet(PooledSheet sheet)
    {
        var number = Counts.Count;
        var most = sheet.Yields.Select((yields, kind) => yields == 0 ? 0 : Times(_question.Wanted[kind], yields)).Max();
        var count = Model.NewIntVar(0, Math.Min(most, _question.Quantities[sheet.Stock]), $"sheet {number}");
        var taken = Model.NewBoolVar($"sheet {number} taken");
        Model.Add(count == 0).OnlyEnforceIf(taken.Not());
        Counts.Add(count);
        _taken.Add(taken);
        var visits = sheet
            .Rules.SelectMany(r => (int[])[r.First, r.Then])
            .Distinct()
            .ToDictionary(s => s, s => SecondAt(number, s));
        foreach (var (first, then) in sheet.Rules.Distinct().Where(r => r.First != r.Then))
            Require(taken, (first, visits[first]), (then, visits[then]));
    }

    private static int Times(int wanted, int yields) => (wanted + yields - 1) / yields;

    /// <summary>True when a sheet leaves a setting to its second visit; null where there is no second.</summary>
    private BoolVar? SecondAt(int sheet, int setting)
    {
        if (!_repeats.TryGetValue(setting, out var repeat))
            return null;
        var second = Model.NewBoolVar($"sheet {sheet} waits for {setting}");
        Model.AddImplication(second, repeat);
        return second;
    }

    private void Require(BoolVar taken, (int Setting, BoolVar? Second) first, (int Setting, BoolVar? Second) then)
    {
        foreach (var (isFirst, when) in Ways(first.Second))
        foreach (var (isThen, also) in Ways(then.Second))
            Model.AddBoolOr([.. when.Concat(also), taken.Not(), Rule(first.Setting, isFirst, then.Setting, isThen)]);
    }

    /// <summary>First visit or second, each with what speaks against it.</summary>
    private static IEnumerable<(bool IsSecond, ILiteral[] Unless)> Ways(BoolVar? second) =>
        second is null ? [(false, [])] : [(false, [second]), (true, [second.Not()])];

    /// <summary>Sheets share the rules they hold.</summary>
    private BoolVar Rule(int first, bool isFirst, int then, bool isThen)
    {
        if (_rules.TryGetValue((first, isFirst, then, isThen), out var known))
            return known;
        var rule = Model.NewBoolVar($"{first} before {then}");
        Model.Add(_places[(first, isFirst)] < _places[(then, isThen)]).OnlyEnforceIf(rule);
        return _rules[(first, isFirst, then, isThen)] = rule;
    }

    private void RequireAll(int first, int then)
    {
        foreach (var one in _places.Where(p => p.Key.Setting == first))
        foreach (var other in _places.Where(p => p.Key.Setting == then))
            if (first != then)
                Model.Add(one.Value < other.Value);
    }

    private void RequireItems()
    {
        for (var kind = 0; kind < _question.Wanted.Count; kind++)
        {
            var yields = _question.Pool.Select(s => (long)s.Yields[kind]);
            Model.Add(LinearExpr.WeightedSum(Counts, yields) >= _question.Wanted[kind]);
        }
    }

    private void RequireStock()
    {
        var cost = LinearExpr.WeightedSum(Counts, _question.Pool.Select(s => s.Cost));
        Model.Add(cost <= _question.CostBelow - 1);
        for (var stock = 0; stock < _question.Quantities.Count; stock++)
        {
            var ours = Counts.Where((_, i) => _question.Pool[i].Stock == stock).ToList();
            if (ours.Count > 0 && _question.Quantities[stock] < int.MaxValue)
                Model.Add(LinearExpr.Sum(ours) <= _question.Quantities[stock]);
        }
    }

    private void SetAim()
    {
        if (_question.MayRepeat.Count > 0)
            Model.Minimize(LinearExpr.Sum(_repeats.Values));
        else
            Model.Minimize(LinearExpr.WeightedSum(Counts, _question.Pool.Select(s => s.Cost)));
    }
}

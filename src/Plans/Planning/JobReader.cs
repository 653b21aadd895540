using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>Turns a request into a job for the search, and says what cannot be planned at all.</summary>
internal sealed class JobReader
{
    private readonly CutRequest _request;
    private readonly SawNumbers _saws;
    private readonly List<Stock> _stocks;
    private readonly SettingTable _settings;
    private readonly List<Finding> _findings = [];
    private readonly PlannedRuns _runs;
    private readonly bool _cutsAll;
    private readonly PinnedSheets _pins;
    private readonly List<(int First, int Then)> _rules = [];
    private List<Pinned> _pinned = [];

    private JobReader(CutRequest request, SettingPlan plan, PinnedSheets pins)
    {
        (_request, _pins) = (request, pins);
        _saws = SawNumbers.Of(request.Saws);
        // A sheet whose size could not be read counts as nothing, and nothing is cut from it.
        var stock = request.Stock.Where(s => s.Length.IsPositive && s.Width.IsPositive);
        int PinnedOf(StockPiece piece) => pins.Kept.Count(k => k.Wish.Sheet.Stock == piece.Id);
        _stocks = [.. stock.Select((s, i) => new Stock(i, s, s.Material) { Pinned = PinnedOf(s) })];
        _settings = new(request, plan);
        _cutsAll = plan.CutsAll;
        var free = request with { Runs = [.. request.Runs.Where(r => !r.Parts.Any(pins.Parts.Contains))] };
        var torn = Bind(plan.Rules);
        _runs = PlannedRuns.Of(free, _settings, torn is null ? _rules : plan.Rules);
        // Runs may have been given settings of their own, which pinned parts share.
        Torn = torn ?? Bind(_runs.Rules);
    }

    /// <summary>A pinned sheet whose cuts do not fit the order of visits; null when all do.</summary>
    private PinnedSheet? Torn { get; }

    /// <summary>The job a request means, its rules deciding the settings.</summary>
    public static Job Read(CutRequest request)
    {
        RequireSense(request);
        return Settled(request, SettingPlan.Of(request)).Read();
    }

    /// <summary>The job a request means with chosen settings.</summary>
    public static Job Read(CutRequest request, SettingPlan plan)
    {
        RequireSense(request);
        return Settled(request, plan).Read();
    }

    /// <summary>With every pinned sheet kept that can be: with one visit for each setting, else with visits of its own.</summary>
    private static JobReader Settled(CutRequest request, SettingPlan plan)
    {
        for (var pins = PinnedSheets.Of(request); ; )
        {
            var reader = new JobReader(request, plan, pins);
            if (reader.Torn is not { } torn)
                return reader;
            pins = pins.Looser(torn);
        }
    }

    /// <summary>Adds what pinned sheets ask of the order of visits; the first that asks for the impossible, or null.</summary>
    private PinnedSheet? Bind(IReadOnlyList<(int First, int Then)> given)
    {
        var order = SettingOrder.Of([.. Enumerable.Range(0, _settings.Settings.Count)]);
        _rules.Clear();
        _rules.AddRange(given);
        foreach (var (first, then) in given)
            order.Add(first, then);
        var reader = new PinnedReader(_request, _settings);
        _pinned = [.. _pins.Kept.Select(k => reader.Read(k.Wish, StockOf(k.Wish), k.IsLoose))];
        return _pinned.Find(pinned => pinned.IsTorn || !pinned.Rules.All(rule => IsAdded(rule, order)))?.Wish;
    }

    private bool IsAdded((int First, int Then) rule, SettingOrder order)
    {
        if (!order.Allows(rule.First, rule.Then))
            return false;
        order.Add(rule.First, rule.Then);
        _rules.Add(rule);
        return true;
    }

    private Stock StockOf(PinnedSheet pin) => _stocks.Find(s => s.Piece.Id == pin.Sheet.Stock)!;

    private Job Read()
    {
        _findings.AddRange(MatchFindings.Of(_request));
        _findings.AddRange(_runs.Findings);
        _findings.AddRange(_pins.Findings);
        var items = new List<Item>();
        var blanks = new List<Item>();
        foreach (var run in _runs.Runs)
            AddRun(items, run);
        foreach (var run in _runs.HeldRuns)
            AddIfPossible(blanks, HeldRunItem(run, blanks.Count), run.Run);
        for (var i = 0; i < _request.Parts.Count; i++)
            if (!_runs.Claims(i) && !_pins.Parts.Contains(_request.Parts[i].Id))
                AddPart(i, items, blanks);
        return new(
            _request,
            _saws,
            _stocks,
            _settings.Settings,
            items,
            blanks,
            _rules,
            [.. ItemFindings.Together(_findings, _request)]
        )
        {
            Sides = _settings.Sides,
            CutsAll = _cutsAll,
            Pinned = _pinned,
        };
    }

    /// <summary>A run longer than any sheet goes on in further strips, where the maker allows it.</summary>
    private void AddRun(List<Item> items, PlannedRun run)
    {
        var stretches = new RunStretches(_request, stretch => Trouble(RunItem(stretch, 0), run.Run) is null).Of(run);
        if (stretches.Count > 1)
            _findings.Add(RunFindings.Split(run.Run, [.. stretches.Select(s => _request.Parts[s.Members[0]].Id)]));
        foreach (var stretch in stretches)
            AddIfPossible(items, RunItem(stretch, items.Count), run.Run);
    }

    private void AddPart(int index, List<Item> items, List<Item> blanks)
    {
        var part = _request.Parts[index];
        var list = part.IsHeld ? blanks : items;
        AddIfPossible(list, PartItem(index, list.Count), null);
    }

    private void AddIfPossible(List<Item> list, Item item, CutRun? run)
    {
        var wished = Wished(item);
        if (Trouble(wished, run) is { } trouble)
            _findings.Add(trouble);
        else
            list.Add(wished);
    }

    private Finding? Trouble(Item item, CutRun? run) =>
        WishFindings.Of(item, run, _request) ?? ItemFindings.Of(Wished(item), run, _request, _saws, _stocks);

    /// <summary>The item with what the maker wishes of it.</summary>
    private Item Wished(Item item)
    {
        var ids = item.Parts.Select(p => _request.Parts[p]).ToList();
        return item with
        {
            From = ids.Select(p => p.From).FirstOrDefault(f => f is not null),
            Apart =
            [
                .. _request.Apart.Index().Where(a => ids.Any(p => a.Item.Parts.Contains(p.Id))).Select(a => a.Index),
            ],
        };
    }

    private Item PartItem(int index, int id)
    {
        var part = _request.Parts[index];
        List<Turn> turns = [TurnOf(index, MatchedSide.Length), TurnOf(index, MatchedSide.Width)];
        if (part.Length == part.Width && part.Figure == PanelFigure.Any && !HasMatch(index))
            turns.RemoveAt(1);
        return new(id, part.Material, [index], Sensible(turns, part.Material), null);
    }

    /// <summary>Turns that go against the figure are kept only for materials that come without figure.</summary>
    private List<Turn> Sensible(List<Turn> turns, string material)
    {
        var isFree = _stocks.Any(s => s.Material == material && !s.Piece.HasFigure);
        var kept = turns.Where(t => t.Figure || isFree).ToList();
        return kept.Count > 0 ? kept : turns;
    }

    private bool HasMatch(int index) =>
        _settings.IsMatched(index, MatchedSide.Length) || _settings.IsMatched(index, MatchedSide.Width);

    private Turn TurnOf(int index, MatchedSide alongSheet)
    {
        var part = _request.Parts[index];
        var across = OtherSide(alongSheet);
        return new(
            part.Size(alongSheet).Nanometres + BlankRoom(part),
            part.Size(across).Nanometres + BlankRoom(part),
            _settings.Of(index, alongSheet),
            _settings.Of(index, across),
            _settings.IsMatched(index, alongSheet),
            _settings.IsMatched(index, across),
            part.Figure.Allows(alongSheet),
            null
        );
    }

    /// <summary>A held blank is left rough all round, so that its edges can be dressed before its final cuts.</summary>
    private long BlankRoom(CutPart part) => part.IsHeld ? 2 * _saws.Dressing : 0;

    private Item RunItem(PlannedRun run, int id)
    {
        var material = _request.Parts[run.Members[0]].Material;
        List<Turn> turns =
        [
            RunTurn(run, SheetAxis.Length, OtherSide(run.Height)),
            RunTurn(run, SheetAxis.Width, run.Height),
        ];
        return new(id, material, run.Members, Sensible(turns, material), run.Run.Id);
    }

    /// <summary>A run that waits is broken down in one piece, rough all round, with room for every cut to come.</summary>
    private Item HeldRunItem(PlannedRun run, int id)
    {
        var members = run.Members.Select(m => _request.Parts[m]).ToList();
        var height = members.Max(m => m.Size(run.Height)).Nanometres + (2 * _saws.Dressing);
        var kerfs = (members.Count - 1) * _saws.Kerf;
        var along = members.Sum(m => m.Size(run.Along).Nanometres) + kerfs + (2 * _saws.Dressing);
        List<Turn> turns =
        [
            new(along, height, -1, -1, false, false, members.All(m => m.Figure.Allows(run.Along)), null),
            new(height, along, -1, -1, false, false, members.All(m => m.Figure.Allows(run.Height)), null),
        ];
        return new(id, members[0].Material, run.Members, Sensible(turns, members[0].Material), run.Run.Id);
    }

    private Turn RunTurn(PlannedRun run, SheetAxis axis, MatchedSide alongSheet)
    {
        var line = new RunLine(axis, run.Segments(_request));
        var kerfs = run.Members.Count - 1 + (line.Segments.Count - 1);
        var along = line.Segments.SelectMany(s => s).Sum(m => m.Size) + (kerfs * _saws.Kerf);
        var height = _request.Parts[run.Members[0]].Size(run.Height).Nanometres;
        var setting = _settings.Of(run.Members[0], run.Height);
        var isMatched = run.Members.Any(m => _settings.IsMatched(m, run.Height));
        var figure = run.Members.All(m => _request.Parts[m].Figure.Allows(alongSheet));
        return axis == SheetAxis.Length
            ? new(along, height, -1, setting, true, isMatched, figure, line)
            : new(height, along, setting, -1, isMatched, true, figure, line);
    }

    private static MatchedSide OtherSide(MatchedSide side) =>
        side == MatchedSide.Length ? MatchedSide.Width : MatchedSide.Length;

    private static void RequireSense(CutRequest request)
    {
        var twice = request.Parts.GroupBy(p => p.Id).FirstOrDefault(g => g.Count() > 1);
        if (twice is not null)
            throw new ArgumentException($"Two parts are called {twice.Key}.", nameof(request));
        var known = request.Parts.Select(p => p.Id).ToHashSet();
        var asked = request.Runs.SelectMany(r => r.Parts);
        var unknown = asked
            .Concat(request.Matches.SelectMany(m => m.Sides).Select(s => s.Part))
            .FirstOrDefault(p => !known.Contains(p));
        if (unknown is not null)
            throw new ArgumentException($"There is no part {unknown}.", nameof(request));
    }
}

using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>A run that can be planned.</summary>
/// <param name="Run">As asked.</param>
/// <param name="Members">Its parts in order, as indexes into the request.</param>
/// <param name="Height">The side they share, across the run.</param>
internal sealed record PlannedRun(CutRun Run, IReadOnlyList<int> Members, MatchedSide Height)
{
    /// <summary>The side along the run.</summary>
    public MatchedSide Along => Height == MatchedSide.Length ? MatchedSide.Width : MatchedSide.Length;

    /// <summary>The first member of each segment after the first.</summary>
    public HashSet<int> Breaks { get; } = [];

    /// <summary>The settings of the members, in order.</summary>
    public IReadOnlyList<int> Settings { get; set; } = [];

    /// <summary>Some neighbours of it, as a run of their own from another strip.</summary>
    public PlannedRun Slice(int first, int count)
    {
        var slice = new PlannedRun(Run, [.. Members.Skip(first).Take(count)], Height)
        {
            Settings = [.. Settings.Skip(first).Take(count)],
        };
        slice.Breaks.UnionWith(Breaks.Select(b => b - first).Where(b => b > 0 && b < count));
        return slice;
    }

    /// <summary>The members, parted where one visit order cannot take them from one end.</summary>
    public IReadOnlyList<IReadOnlyList<RunMember>> Segments(CutRequest request)
    {
        var segments = new List<List<RunMember>>();
        for (var i = 0; i < Members.Count; i++)
        {
            if (i == 0 || Breaks.Contains(i))
                segments.Add([]);
            segments[^1].Add(new(Members[i], request.Parts[Members[i]].Size(Along).Nanometres, Settings[i]));
        }
        return segments;
    }
}

/// <summary>The runs of a request, with what they ask of the order of visits.</summary>
/// <remarks>
/// A strip with running grain is ripped to its height first and crosscut after that, so the height's visit comes before the
/// widths'. Two runs can ask for opposite orders; then the height of one gets a visit of its own, which is the only case
/// where a dimension needs two.
/// </remarks>
internal sealed class PlannedRuns
{
    private readonly CutRequest _request;
    private readonly SettingTable _settings;
    private readonly Dictionary<string, int> _index;
    private readonly List<Finding> _findings = [];
    private readonly HashSet<int> _claimed = [];
    private readonly IReadOnlyList<(int First, int Then)> _firstRules;

    private PlannedRuns(CutRequest request, SettingTable settings, IReadOnlyList<(int First, int Then)> firstRules)
    {
        (_request, _settings) = (request, settings);
        _firstRules = firstRules;
        Rules.AddRange(firstRules);
        _index = request.Parts.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
    }

    /// <summary>What is cut now.</summary>
    public List<PlannedRun> Runs { get; } = [];

    /// <summary>Runs with a member that waits: they wait whole, in one piece.</summary>
    public List<PlannedRun> HeldRuns { get; } = [];

    public List<(int First, int Then)> Rules { get; } = [];

    public IReadOnlyList<Finding> Findings => _findings;

    /// <summary>True when a part is cut in a run, or cannot be because its run cannot.</summary>
    public bool Claims(int part) => _claimed.Contains(part);

    public static PlannedRuns Of(
        CutRequest request,
        SettingTable settings,
        IReadOnlyList<(int First, int Then)> firstRules
    )
    {
        var runs = new PlannedRuns(request, settings, firstRules);
        foreach (var run in request.Runs)
            runs.Take(run);
        runs.SeparateCircles();
        runs.SetRules();
        return runs;
    }

    private void Take(CutRun run)
    {
        var members = run.Parts.Select(id => _index[id]).ToList();
        if (members.Count == 0)
            return;
        var trouble = RunFindings.Of(run, members, _request, _claimed);
        var claimed = members.Where(_claimed.Add).ToList();
        if (trouble is not null)
            _findings.Add(trouble with { About = [run.Id, .. claimed.Select(m => _request.Parts[m].Id)] });
        else
            List(members).Add(new(run, members, RunFindings.Height(run, members, _request)));
    }

    private List<PlannedRun> List(List<int> members) => members.Any(m => _request.Parts[m].IsHeld) ? HeldRuns : Runs;

    private void SeparateCircles()
    {
        var separated = new HashSet<PlannedRun>();
        while (FirstInCircle() is { } run)
            if (separated.Add(run))
                _settings.Separate(run.Members.Select(m => (m, run.Height)));
            else
                Refuse(run);
    }

    private void Refuse(PlannedRun run)
    {
        Runs.Remove(run);
        var ids = run.Members.Select(m => _request.Parts[m].Id).ToList();
        _findings.Add(
            new(
                "cutting.run-against-match",
                Severity.MustMend,
                $"{run.Run.Id}: its strip must be ripped before its parts are crosscut, and what must match them asks for "
                    + "the opposite; take one of them out of its match group or out of the run.",
                [run.Run.Id, .. ids]
            )
        );
    }

    private PlannedRun? FirstInCircle()
    {
        var order = NewOrder();
        foreach (var run in Runs)
        foreach (var (first, then) in HeightRules(run))
        {
            if (!order.Allows(first, then))
                return run;
            order.Add(first, then);
        }
        return null;
    }

    private void SetRules()
    {
        var order = NewOrder();
        foreach (var run in Runs)
            run.Settings = [.. run.Members.Select(m => _settings.Of(m, run.Along))];
        foreach (var rule in Runs.SelectMany(HeightRules))
            AddRule(order, rule);
        foreach (var run in Runs)
            SetBreaks(run, order);
    }

    /// <summary>Where neighbours differ in width, the first is visited first if the other rules let it; else the strip is parted there.</summary>
    private void SetBreaks(PlannedRun run, SettingOrder order)
    {
        for (var i = 1; i < run.Members.Count; i++)
        {
            var rule = (run.Settings[i - 1], run.Settings[i]);
            if (rule.Item1 == rule.Item2)
                continue;
            if (AreKept(rule) && order.Allows(rule.Item1, rule.Item2))
                AddRule(order, rule);
            else
                run.Breaks.Add(i);
        }
    }

    private void AddRule(SettingOrder order, (int First, int Then) rule)
    {
        order.Add(rule.First, rule.Then);
        Rules.Add(rule);
    }

    private IEnumerable<(int First, int Then)> HeightRules(PlannedRun run)
    {
        var height = _settings.Of(run.Members[0], run.Height);
        return run
            .Members.Select(m => _settings.Of(m, run.Along))
            .Distinct()
            .Where(w => w != height)
            .Select(w => (height, w))
            .Where(AreKept);
    }

    private bool AreKept((int First, int Then) rule) => _settings.IsKept(rule.First) && _settings.IsKept(rule.Then);

    private SettingOrder NewOrder()
    {
        var order = SettingOrder.Of([.. Enumerable.Range(0, _settings.Settings.Count)]);
        foreach (var (first, then) in _firstRules)
            order.Add(first, then);
        return order;
    }
}

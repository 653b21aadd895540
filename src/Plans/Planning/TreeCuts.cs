namespace Nookwright.Planning;

/// <summary>The sizing cuts of trees as a graph, and at which visit each is made.</summary>
internal sealed class TreeCuts
{
    private const int MostStates = 64;
    private const int Work = 30_000;

    private readonly Job _job;
    private readonly SettingOrder _order;
    private readonly CutGraph _graph = new();
    private readonly CutStands _stands;
    private readonly Dictionary<Node, int> _nodes = [];
    private readonly Dictionary<int, int> _members = [];
    private readonly Dictionary<PinnedCut, int> _pinned = new(ReferenceEqualityComparer.Instance);
    private readonly List<int> _settings = [];
    private int[] _visits = [];

    private TreeCuts(Job job, SettingOrder order)
    {
        (_job, _order) = (job, order);
        _stands = new(_graph);
    }

    /// <summary>The settings that each visit serves, all of one distance; the visits in order.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Visits { get; private set; } = [];

    /// <summary>The cuts of trees with the fewest visits found for them.</summary>
    /// <param name="roots">Each chunk's tree with the number of its sheet.</param>
    /// <param name="job">The job.</param>
    /// <param name="order">The order of kept settings.</param>
    public static TreeCuts Of(IEnumerable<(Node Root, int Sheet)> roots, Job job, SettingOrder order)
    {
        var cuts = new TreeCuts(job, order);
        foreach (var (root, sheet) in roots)
        {
            cuts._stands.Sheet = sheet;
            cuts.AddBelow(root, []);
        }
        foreach (var (index, pinned) in job.Pinned.Index())
        {
            cuts._stands.Sheet = -1 - index;
            cuts.Add(pinned);
        }
        foreach (var (first, then) in job.FirstRules)
            cuts._graph.RequireGroup(first, then);
        cuts.Settle();
        return cuts;
    }

    /// <summary>The visit a node is cut off its parent at, from 0; -1 when it is what remains.</summary>
    public int VisitOf(Node node) => _visits[_nodes[node]];

    /// <summary>How many cuts a visit makes.</summary>
    public int CountOf(int visit) => _visits.Count(v => v == visit);

    /// <summary>The visit a member of a run is cut at, from 0.</summary>
    public int VisitOf(RunMember member) => _visits[_members[member.Part]];

    /// <summary>The visit a cut of a pinned sheet is made at, from 0; one that a setting gives.</summary>
    public int VisitOf(PinnedCut cut) => _visits[_pinned[cut]];

    /// <summary>The sides of parts on pinned sheets, each with the visit that gives its size.</summary>
    public IEnumerable<(int Side, int Visit)> PinnedSides =>
        _pinned.Keys.SelectMany(cut => cut.Sides.Select(side => (side, VisitOf(cut))));

    private void Add(Pinned pinned)
    {
        foreach (var cut in pinned.Cuts.Where(c => c.Setting >= 0))
        {
            var giver = cut.After;
            while (giver >= 0 && pinned.Cuts[giver].Setting < 0)
                giver = pinned.Cuts[giver].After;
            int[] before = giver < 0 ? [] : [_pinned[pinned.Cuts[giver]]];
            _stands.Note(before, cut.Length);
            _settings.Add(cut.Setting);
            _pinned[cut] = _graph.Add(
                _job.Distances[cut.Setting],
                cut.IsBound ? cut.Setting : -1,
                _order.Rank(cut.Setting),
                before
            );
            _stands.Add(before, [_pinned[cut]]);
        }
    }

    private void Settle()
    {
        var width = Math.Clamp(Work / (_graph.Count + 1), 1, MostStates);
        var visits =
            new FewestVisits(_graph).Find(width)
            ?? throw new InvalidOperationException("The trees of a plan tear a group that must be cut in one visit.");
        visits = _stands.Ordered(visits);
        _visits = [.. Enumerable.Repeat(-1, _graph.Count)];
        for (var visit = 0; visit < visits.Count; visit++)
            foreach (var cut in visits[visit])
                _visits[cut] = visit;
        Visits = [.. visits.Select(v => v.Select(cut => _settings[cut]).Distinct().ToList())];
    }

    private void AddBelow(Node node, IReadOnlyList<int> before)
    {
        List<int> own = [.. node.Children.Where(c => c.Setting >= 0).Select(c => AddCut(c, node.Across, before))];
        _stands.Add(before, own);
        if (Fills(node))
            _graph.Fill(own);
        foreach (var block in node.Children.Where(c => c.IsBlock))
            AddBelow(block, before);
        foreach (var run in node.Children.Where(c => c.Turn?.Along is not null))
        foreach (var segment in run.Turn!.Along!.Segments)
            AddSegment(segment, node.Across, before);
        if (node.Rest is { } rest)
            AddBelow(
                rest,
                rest.IsRough ? []
                    : own.Count > 0 ? own
                    : before
            );
    }

    private int AddCut(Node child, long length, IReadOnlyList<int> before)
    {
        var cut = Add(child.Setting, length, before);
        _nodes[child] = cut;
        if (child.Item is null)
            AddBelow(child, [cut]);
        return cut;
    }

    private void AddSegment(IReadOnlyList<RunMember> segment, long length, IReadOnlyList<int> before)
    {
        var first = before;
        foreach (var member in segment)
            before = [_members[member.Part] = Add(member.Setting, length, before)];
        _stands.Add(first, [.. segment.Select(m => _members[m.Part])]);
    }

    private int Add(int setting, long length, IReadOnlyList<int> before)
    {
        _stands.Note(before, length);
        var distance = _job.Distances[setting];
        _settings.Add(setting);
        return _graph.Add(distance, _job.IsKept(setting) ? setting : -1, _order.Rank(setting), before);
    }

    /// <summary>True when no wood is left beside the children: the last of them is what remains and needs no cut.</summary>
    private bool Fills(Node node)
    {
        var hasMargin = node.OpenAlong && _job.Saws.Dressing > 0;
        return !hasMargin && (node.Rest is null ? node.Used == node.Along : node.Rest.IsRough);
    }
}

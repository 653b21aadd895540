namespace Nookwright.Planning;

/// <summary>All sheets of a job as some search left them, with the visits they need.</summary>
internal sealed class Trees
{
    private readonly Lazy<TreeCuts> _cuts;

    /// <param name="job">The job the layout is of.</param>
    /// <param name="layout">The sheets.</param>
    public Trees(Job job, Layout layout)
    {
        (Job, Layout) = (job, layout);
        _cuts = new(() =>
            TreeCuts.Of(Sheets.SelectMany((s, i) => s.Roots.Select(root => (root, i))), Job, Layout.Order)
        );
    }

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The sheets as the search has them; once somebody has asked for the trees or the visits, nothing changes in it.</summary>
    public Layout Layout { get; }

    /// <summary>The sheets with their trees, drawn up when first asked for.</summary>
    public IReadOnlyList<(SheetLayout Sheet, IReadOnlyList<Node> Roots)> Sheets =>
        field ??= [.. Layout.Sheets.Select(s => (s, s.Roots(Job)))];

    /// <summary>The cuts, each with its visit.</summary>
    public TreeCuts Cuts => _cuts.Value;

    /// <summary>How many visits they need, as far as is known.</summary>
    public int Visits => Cuts.Visits.Count;

    /// <summary>What the sheets of a material cost.</summary>
    public long CostOf(string material) =>
        Layout.Sheets.Where(s => s.Stock.Material == material).Sum(s => Job.CostOf(s.Stock));

    /// <summary>The distance of a visit, in nanometres.</summary>
    public long DistanceOf(int visit) => Job.Distances[Cuts.Visits[visit][0]];

    /// <summary>The distances of the visits made beyond those of other trees, each as often as it is.</summary>
    public List<long> MoreThan(Trees other)
    {
        var theirs = Enumerable.Range(0, other.Visits).CountBy(other.DistanceOf).ToDictionary();
        return
        [
            .. Enumerable
                .Range(0, Visits)
                .GroupBy(DistanceOf)
                .SelectMany(g => Enumerable.Repeat(g.Key, Math.Max(0, g.Count() - theirs.GetValueOrDefault(g.Key)))),
        ];
    }

    /// <summary>Visits of a distance that is visited more often than once, those with the fewest cuts first.</summary>
    public IEnumerable<int> Repeats() =>
        Enumerable
            .Range(0, Visits)
            .GroupBy(DistanceOf)
            .Where(g => g.Count() > 1)
            .SelectMany(g => g)
            .OrderBy(Cuts.CountOf)
            .ThenBy(v => v);
}

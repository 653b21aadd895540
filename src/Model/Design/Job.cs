using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Design;

/// <summary>What all pieces share while they are worked out: the document, its names, its materials, rounding, and findings.</summary>
internal sealed class Job
{
    private readonly Dictionary<string, SheetGood> _sheets;
    private readonly Dictionary<string, Edging> _edgings;

    public Job(Project project)
    {
        Project = project;
        Names = new(project.Units);
        Finished = new(this);
        _sheets = FirstById(project.Shop.Sheets, sheet => sheet.Id);
        _edgings = FirstById(project.Shop.Edgings, edging => edging.Id);
        Rows = new(project.Rows);
    }

    public Project Project { get; }

    public JobNames Names { get; }

    public FinishedSizes Finished { get; }

    public RowOrder Rows { get; }

    public List<Finding> Findings { get; } = [];

    /// <summary>The pieces by id; one whose id was taken already is not among them.</summary>
    public Dictionary<string, PieceDesign> Designs { get; } = [];

    public bool IsInches => Project.Units == LengthUnit.Inches;

    /// <summary>A default of the trade, in the document's own unit.</summary>
    public Traced Usual(Length inches, Length millimetres, string rule) =>
        Traced.ByRule(IsInches ? inches : millimetres, rule);

    public string Print(Length length) => Shown.Print(length, Project.Units);

    /// <summary>What rounding left over; it is never nothing, however little.</summary>
    public string PrintRest(Length rest)
    {
        var least = IsInches ? Length.FromInches(0.001m) : Length.FromMillimetres(0.001m);
        return rest.Abs() < least ? $"less than {Print(least)}" : Print(rest.Abs());
    }

    public SheetGood? Sheet(string? id) => id is null ? null : _sheets.GetValueOrDefault(id);

    public Edging? Edging(string id) => _edgings.GetValueOrDefault(id);

    private static Dictionary<string, T> FirstById<T>(IEnumerable<T> things, Func<T, string> id) =>
        things.DistinctBy(id).ToDictionary(id);
}

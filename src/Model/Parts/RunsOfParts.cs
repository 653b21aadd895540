using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Parts;

/// <summary>The job's running grains as parts: those that can be cut, and a finding for what cannot.</summary>
internal sealed class RunsOfParts
{
    private readonly LengthUnit _unit;
    private readonly Dictionary<string, Panel> _panels;
    private readonly HashSet<string> _leftOut;
    private readonly Dictionary<string, PlaceInRun> _places = [];

    public RunsOfParts(Project project, IEnumerable<Panel> panels)
    {
        _unit = project.Units;
        _panels = panels.DistinctBy(panel => panel.Id).ToDictionary(panel => panel.Id);
        _leftOut = [.. project.Pieces.Select(piece => piece.Id).Except(_panels.Values.Select(panel => panel.Piece))];
        foreach (var run in project.Runs)
            Add(run);
    }

    public List<RunOfParts> Runs { get; } = [];

    public List<Finding> Findings { get; } = [];

    public PlaceInRun? PlaceOf(string panel) => _places.GetValueOrDefault(panel);

    private void Add(GrainRun run)
    {
        var members = run.Panels.Where(id => IsFree(run, id)).Distinct().Select(id => _panels[id]).ToList();
        Findings.AddRange(Differences(run, members));
        if (members.Count < 2 && run.Panels.Any(IsLeftOut))
            return;
        if (members.Count < 2)
        {
            Find(
                run,
                "run.too-short",
                Severity.Warning,
                $"has {members.Count} of the two parts it needs at least.",
                []
            );
            return;
        }
        foreach (var (member, index) in members.Select((member, index) => (member, index)))
            _places[member.Id] = new(run.Id, index + 1);
        var parts = members.Select(member => member.Id).ToList();
        var height = RunDirection.HeightOf(members);
        Runs.Add(
            new(run.Id, parts, height)
            {
                MaySplitAfter = [.. parts.SkipLast(1).Intersect(run.MaySplitAfter)],
                Gaps =
                [
                    .. members.Zip(members.Skip(1)).Select(pair => RunGap.Between(pair.First, pair.Second, height)),
                ],
            }
        );
    }

    // Its piece could not be made, and that is told where it is to be mended.
    private bool IsLeftOut(string id) => _leftOut.Contains(id.Split('.')[0]);

    private bool IsFree(GrainRun run, string id)
    {
        if (IsLeftOut(id))
            return false;
        if (!_panels.ContainsKey(id))
            Find(
                run,
                "run.unknown-panel",
                Severity.MustMend,
                $"names {id}, and there is no such panel{Near(id)}.",
                [id]
            );
        else if (PlaceOf(id) is { } other)
            Find(
                run,
                "run.panel-twice",
                Severity.MustMend,
                $"names {id}, which is in {other.Run} already; take it out of one.",
                [id]
            );
        else
            return true;
        return false;
    }

    private IEnumerable<Finding> Differences(GrainRun run, List<Panel> members)
    {
        if (members.Count < 2)
            yield break;
        if (members.Select(panel => panel.Material).Distinct().ToList() is { Count: > 1 } materials)
            yield return About(
                run,
                "run.material-differs",
                $"is to come off one sheet, and its parts are of {string.Join(" and ", materials)}.",
                members
            );
        if (members.Select(panel => panel.Figure).Distinct().Count() > 1)
            yield return About(
                run,
                "run.figure-differs",
                "has parts with the figure along their length and others across; turn them alike.",
                members
            );
        var height = RunDirection.HeightOf(members);
        if (Differ(members, height == MatchedSide.Length ? CutSizes.Length : CutSizes.Width))
            yield return About(
                run,
                "run.heights-differ",
                $"comes off one strip, and its parts are not equally high: {Sizes(members)}. Give them one height.",
                members
            );
    }

    private static bool Differ(List<Panel> members, Func<Panel, Traced> size) =>
        members.Select(panel => size(panel).Length).Distinct().Count() > 1;

    private string Sizes(List<Panel> members) =>
        string.Join(", ", members.Select(m => $"{m.Id} {Print(CutSizes.Length(m))} by {Print(CutSizes.Width(m))}"));

    private string Print(Traced size) => LengthText.Write(size.Length, _unit);

    private string Near(string id) => NearestName.To(id, _panels.Keys) is { } near ? $"; is {near} meant?" : "";

    private static Finding About(GrainRun run, string rule, string what, List<Panel> members) =>
        new(rule, Severity.MustMend, $"Running grain {run.Id} {what}", [run.Id, .. members.Select(m => m.Id)])
        {
            Field = $"runs/{run.Id}/panels",
        };

    private void Find(GrainRun run, string rule, Severity severity, string what, IReadOnlyList<string> about) =>
        Findings.Add(
            new(rule, severity, $"Running grain {run.Id} {what}", [run.Id, .. about])
            {
                Field = $"runs/{run.Id}/panels",
            }
        );
}

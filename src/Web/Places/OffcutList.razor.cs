using Microsoft.AspNetCore.Components;
using Nookwright.Cutting;
using Nookwright.Flow;
using Nookwright.Paper;
using Nookwright.Projects;
using Nookwright.Trouble;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Places;

/// <summary>The offcuts of a plan, and what of them goes on another job's rack.</summary>
public sealed partial class OffcutList : ComponentBase
{
    private readonly HashSet<string> _left = [];
    private JobWords _words = null!;
    private IReadOnlyList<KeptOffcut> _there = [];
    private IReadOnlySet<string> _strange = new HashSet<string>();
    private string? _into;
    private string _done = "";
    private Refusal? _refusal;

    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>The plan.</summary>
    [Parameter, EditorRequired]
    public Plan Plan { get; set; } = null!;

    [Inject]
    private JobSessions Sessions { get; set; } = null!;

    [Inject]
    private JobFolder Folder { get; set; } = null!;

    private IReadOnlyList<KeptOffcut> All { get; set; } = [];

    private IReadOnlyList<string> Others => [.. Folder.Jobs.Where(job => job != Desk.Job)];

    private IReadOnlyList<KeptOffcut> Taken =>
        [.. _there.Where(offcut => !_left.Contains(offcut.Mark) && !_strange.Contains(offcut.Mark))];

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        _words = new(Desk.Now.Workbook);
        All = KeptOffcut.Of(Plan);
        _there = OffcutsToRack.Of(Desk.Now.Workbook);
    }

    private bool IsThere(KeptOffcut offcut) => _there.Any(one => one.Workpiece == offcut.Workpiece);

    private void Choose(ChangeEventArgs change)
    {
        _into = change.Value?.ToString() is { Length: > 0 } job ? job : null;
        (_done, _refusal) = ("", null);
        if (Opened() is { } session)
            _strange = _there
                .Where(offcut => !RackOn(session.Now.Project, [offcut]).Ok)
                .Select(offcut => offcut.Mark)
                .ToHashSet();
    }

    /// <summary>The job they go to; null where none is chosen, and where it cannot be opened, which is told.</summary>
    private JobSession? Opened()
    {
        if (_into is null)
            return null;
        var (session, refusals) = Sessions.Of(_into);
        _refusal = refusals.Count > 0 ? refusals[0] : null;
        return session;
    }

    private Outcome<Project> RackOn(Project other, IEnumerable<KeptOffcut> offcuts) =>
        OffcutsToRack.Rack(offcuts, Desk.Now.Project, Desk.Job, other);

    private void Take(KeptOffcut offcut, bool isTaken)
    {
        if (isTaken)
            _left.Remove(offcut.Mark);
        else
            _left.Add(offcut.Mark);
    }

    private void Rack()
    {
        var taken = Taken;
        _done = "";
        if (Opened() is not { } session)
            return;
        var before = session.Now.Project;
        var name = $"put {JobWords.Count(taken.Count, "offcut")} of {Desk.Job} on the rack";
        _refusal = session.Edit(name, other => RackOn(other, taken));
        if (_refusal is null)
            _done = Told(taken.Count(offcut => !before.HasOnRack(OffcutsToRack.NameOf(offcut, Desk.Job))), _into!);
    }

    private static string Told(int added, string job) =>
        added == 0
            ? $"They are on the rack of {job} already."
            : $"{JobWords.Count(added, "offcut")} put on the rack of {job}.";
}

using System.Collections.Immutable;

namespace Nookwright.Projects;

/// <summary>The document as it is, as it was before each edit, and as it was before each step back; without limit.</summary>
/// <remarks>Immutable: an edit or a step makes a new history, and old documents are shared between them, never copied.</remarks>
public sealed class History
{
    private readonly ImmutableStack<Moment> _done;
    private readonly ImmutableStack<Moment> _undone;

    private History(Project current, ImmutableStack<Moment> done, ImmutableStack<Moment> undone) =>
        (Current, _done, _undone) = (current, done, undone);

    /// <summary>An edit, and the document on its other side.</summary>
    private sealed record Moment(string Name, Project Project);

    /// <summary>The document as it is.</summary>
    public Project Current { get; }

    /// <summary>Names of the edits that can be taken back, the latest first.</summary>
    public IEnumerable<string> Done => _done.Select(moment => moment.Name);

    /// <summary>Names of the edits that were taken back and can be done again, the next first.</summary>
    public IEnumerable<string> Undone => _undone.Select(moment => moment.Name);

    /// <summary>True when there is an edit to take back.</summary>
    public bool CanStepBack => !_done.IsEmpty;

    /// <summary>True when there is an edit to do again.</summary>
    public bool CanStepForward => !_undone.IsEmpty;

    /// <summary>A history that begins with a document.</summary>
    public static History Of(Project project) => new(project, [], []);

    /// <summary>Edits the document; what was taken back before can then no longer be done again.</summary>
    /// <param name="name">What the edit does, as the maker reads it on the button that takes it back.</param>
    /// <param name="edit">The edit; when it gives back the very same document, nothing happens.</param>
    public History Edit(string name, Func<Project, Project> edit)
    {
        var edited = edit(Current);
        return ReferenceEquals(edited, Current) ? this : new(edited, _done.Push(new(name, Current)), []);
    }

    /// <summary>Takes the latest edit back; nothing happens when there is none.</summary>
    public History StepBack()
    {
        if (_done.IsEmpty)
            return this;
        var before = _done.Pop(out var latest);
        return new(latest.Project, before, _undone.Push(latest with { Project = Current }));
    }

    /// <summary>Does the edit again that was taken back last; nothing happens when there is none.</summary>
    public History StepForward()
    {
        if (_undone.IsEmpty)
            return this;
        var after = _undone.Pop(out var next);
        return new(next.Project, _done.Push(next with { Project = Current }), after);
    }
}

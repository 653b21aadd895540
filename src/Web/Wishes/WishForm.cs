using Microsoft.AspNetCore.Components;
using Nookwright.Paper;
using Nookwright.Projects;
using Nookwright.Trouble;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Wishes;

/// <summary>A form for one kind of wish: what it asks is an edit of the document, and a refusal is told below it.</summary>
public abstract class WishForm : ComponentBase
{
    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>Why the last wish was not taken, or null.</summary>
    protected Refusal? Refusal { get; set; }

    /// <summary>The document.</summary>
    protected Project Project => Desk.Now.Project;

    /// <summary>The job's words.</summary>
    protected JobWords Words { get; private set; } = null!;

    /// <inheritdoc/>
    protected override void OnParametersSet() => Words = new(Desk.Now.Workbook);

    /// <summary>Does an edit, and keeps its refusal.</summary>
    /// <returns>True when it was taken.</returns>
    protected bool Wish(string name, Func<Project, Outcome<Project>> edit)
    {
        Refusal = Desk.Session.Edit(name, edit);
        return Refusal is null;
    }
}

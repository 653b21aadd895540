using Microsoft.AspNetCore.Components;
using Nookwright.Cutting;
using Nookwright.Paper;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Places;

/// <summary>The card of one visit.</summary>
public sealed partial class SettingCardView : ComponentBase
{
    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>The job's words, for its plan.</summary>
    [Parameter, EditorRequired]
    public JobWords Words { get; set; } = null!;

    /// <summary>The plan it belongs to.</summary>
    [Parameter, EditorRequired]
    public Plan Plan { get; set; } = null!;

    /// <summary>The visit.</summary>
    [Parameter, EditorRequired]
    public Visit Visit { get; set; } = null!;

    private VisitWords Says => new(Desk.Now.Workbook, Words, Visit);
}

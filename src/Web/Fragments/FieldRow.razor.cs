using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Fragments;

/// <summary>One field of the document, to be read and changed.</summary>
public sealed partial class FieldRow : ComponentBase
{
    private static readonly string[] YesAndNo = ["yes", "no"];

    private string? _typed;
    private string _before = "";
    private Refusal? _refusal;

    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>The field.</summary>
    [Parameter, EditorRequired]
    public Field Field { get; set; } = null!;

    private string Id => "f-" + Field.Path.Replace('/', '_').Replace('.', '-');

    private string Shown => _typed ?? Field.Text;

    private string? Invalid => _refusal is null ? null : "true";

    private string? Described =>
        _refusal is not null ? $"{Id}-trouble"
        : Worked is not null ? $"{Id}-value"
        : null;

    private IReadOnlyList<string> Choices => Field.Kind == FieldKind.YesNo ? YesAndNo : Field.Choices;

    private LengthFormat Lengths => Desk.Now.Workbook.Lengths;

    /// <summary>What a formula comes to; null for a plain length, which says it itself.</summary>
    private Traced? Worked =>
        Field.Kind == FieldKind.Size && FieldValue.IsWorkedOut(Field.Text, Desk.Now.Project.Units)
            ? FieldValue.Of(Desk.Now.Workbook, Field.Text, Field.Path)
            : null;

    private IEnumerable<Finding> Findings => Desk.Now.Workbook.Findings.Where(finding => finding.Field == Field.Path);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        // What stands in the document changed, here or in another window: what was typed before has had its time.
        if (Field.Text != _before)
            Forget();
        _before = Field.Text;
    }

    private void Take(ChangeEventArgs change)
    {
        _typed = change.Value?.ToString() ?? "";
        _refusal = Desk.Session.SetField(Field.Path, _typed);
        if (_refusal is null)
            _typed = null;
    }

    private void OnKey(KeyboardEventArgs key)
    {
        if (key.Key == "Escape")
            Forget();
    }

    private void Forget() => (_typed, _refusal) = (null, null);
}

using Microsoft.AspNetCore.Components;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Trouble;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Places;

/// <summary>One reading of something built, to be entered.</summary>
public sealed partial class ReadingCard : ComponentBase
{
    private string? _typed;
    private Refusal? _refusal;

    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>The reading.</summary>
    [Parameter, EditorRequired]
    public BuiltReading Reading { get; set; } = null!;

    /// <summary>The day a reading entered now was taken.</summary>
    [Parameter, EditorRequired]
    public DateOnly Today { get; set; }

    private string Id => "r-" + Reading.Name.Replace('.', '-');

    private Traced? Planned =>
        FieldValue.Of(Desk.Now.Workbook, Reading.Planned.Text, $"readings/{Reading.Name}/planned");

    /// <summary>Parts that are held for this reading, by letter and name.</summary>
    private IReadOnlyList<string> Waiting =>
        [
            .. Desk
                .Now.Workbook.PartList.Parts.Where(part => part.Blank?.Awaits.Contains(Reading.Name) == true)
                .Select(part => $"{part.Letter} {part.Panel.Name}"),
        ];

    private void Take(ChangeEventArgs change)
    {
        _typed = change.Value?.ToString() ?? "";
        _refusal = Desk.Session.TakeReading(Reading.Name, _typed, Today);
        if (_refusal is null)
            _typed = null;
    }
}

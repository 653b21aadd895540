using Microsoft.AspNetCore.Components;
using Nookwright.Design;
using Nookwright.Flow;
using Nookwright.Web.Fragments;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Places;

/// <summary>The built-in in its room.</summary>
public sealed partial class Drawings : ComponentBase
{
    private string? _shown;

    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    private Workbook Workbook => Desk.Now.Workbook;

    /// <summary>What is selected, in words.</summary>
    private string Chosen =>
        Desk.Selected is not { } id ? "Nothing is selected."
        : Workbook.BuiltIn.Panels.FirstOrDefault(panel => panel.Id == id) is { } panel ? $"Selected: {InWords(panel)}"
        : $"Selected: {PieceName.Of(Workbook.Project, id)}";

    private string InWords(Panel panel)
    {
        var print = Workbook.Lengths;
        var letter = Workbook.PartList.Parts.FirstOrDefault(part => part.Id == panel.Id)?.Letter;
        var size =
            $"{print.WithoutUnit.Print(panel.Length.Length)} × {print.WithoutUnit.Print(panel.Width.Length)} × {print.Print(panel.Thickness.Length)}";
        return letter is null ? $"{panel.Name}, {size}" : $"{panel.Name}, part {letter}, {size}";
    }
}

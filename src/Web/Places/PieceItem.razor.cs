using Microsoft.AspNetCore.Components;
using Nookwright.Design;
using Nookwright.Projects;
using Nookwright.Trouble;
using Nookwright.Web.Fragments;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Places;

/// <summary>One piece in the list.</summary>
public sealed partial class PieceItem : ComponentBase
{
    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>The piece.</summary>
    [Parameter, EditorRequired]
    public Piece Piece { get; set; } = null!;

    private string Name => PieceName.Of(Desk.Now.Project, Piece.Id);

    private bool IsChosen => Desk.SelectedPiece == Piece.Id;

    private bool IsHidden => Desk.Hidden.Contains(Piece.Id);

    private PlacedPiece? Placed =>
        Desk.Now.Workbook.BuiltIn.Pieces.FirstOrDefault(placed => placed.Piece.Id == Piece.Id);

    private IReadOnlyList<Panel> Panels => Placed?.Panels ?? [];

    private IEnumerable<Finding> Findings =>
        Desk.Now.Workbook.Findings.Where(finding =>
            finding.About.Any(id => id == Piece.Id || id.StartsWith(Piece.Id + ".", StringComparison.Ordinal))
            || finding.Field?.StartsWith($"pieces/{Piece.Id}/", StringComparison.Ordinal) == true
        );

    private Severity? Worst =>
        Findings
            .Where(finding => finding.Severity != Severity.Note)
            .Select(finding => (Severity?)finding.Severity)
            .Max();

    /// <summary>How much room it takes: left to right, front to back, up.</summary>
    private string Sizes
    {
        get
        {
            if (Placed is not { } placed)
                return "cannot be worked out";
            var (size, print) = (placed.High - placed.Low, Desk.Now.Workbook.Lengths.WithoutUnit);
            return $"{print.Print(size.X)} × {print.Print(size.Y)} × {print.Print(size.Z)}";
        }
    }

    private void Choose() => Desk.Select(IsChosen ? null : Piece.Id);
}

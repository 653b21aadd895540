using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Cutting;

/// <summary>A part's two dimensions, and which of them may lie along a sheet's figure.</summary>
internal static class PartSides
{
    /// <summary>The size of a side.</summary>
    public static Length Size(this CutPart part, MatchedSide side) =>
        side == MatchedSide.Length ? part.Length : part.Width;

    /// <summary>True when the part's figure allows this side to lie along the sheet's.</summary>
    public static bool Allows(this PanelFigure figure, MatchedSide alongSheet) =>
        figure == PanelFigure.Any || (figure == PanelFigure.Length) == (alongSheet == MatchedSide.Length);

    /// <summary>Length and width for "both".</summary>
    public static IReadOnlyList<MatchedSide> Each(this MatchedSide side) =>
        side == MatchedSide.Both ? [MatchedSide.Length, MatchedSide.Width] : [side];
}

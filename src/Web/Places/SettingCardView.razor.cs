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

    private CutWords Cuts => new(Words);

    private string SawName => Visit.Saw == Saw.Stop ? "Crosscut, stop" : "Table saw, fence";

    private string Guide => Visit.Saw == Saw.Stop ? "stop" : "fence";

    private IReadOnlyList<SawCut> Dressing => [.. Visit.Cuts.Where(cut => cut.Kind == CutKind.Dressing)];

    private IReadOnlyList<CutChain> Chains => CutChain.Of(Visit.Cuts.Where(cut => cut.Kind != CutKind.Dressing));

    private IReadOnlyList<string> Done => Results(WorkpieceUse.Part);

    private IReadOnlyList<string> Kept => Results(WorkpieceUse.Held);

    private IEnumerable<string> Matches =>
        from id in Visit.Matches
        join match in Desk.Now.Workbook.PartList.Matches on id equals match.Id
        select $"{JobWords.Counted(match.Sides.Select(side => Words.Letter(side.Part)))}. {match.Because}";

    private string Given(CutChain chain) => JobWords.Counted(chain.Gives.Select(Words.Called));

    private string Left(CutChain chain) =>
        chain.Leaves is { } leaves ? $"left: {Words.Described(leaves)}" : "nothing left";

    private IReadOnlyList<string> Results(WorkpieceUse use) =>
        [
            .. Visit
                .Cuts.Where(cut => cut.Kind == CutKind.Sizing)
                .SelectMany(cut => new[] { cut.Gives, cut.Leaves })
                .OfType<string>()
                .Select(Words.Workpiece)
                .Where(piece => piece.Use == use)
                .Select(Words.Called),
        ];
}

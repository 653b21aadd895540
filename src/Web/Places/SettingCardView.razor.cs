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

    private IReadOnlyList<string> Done => Results(WorkpieceUse.Part);

    private IReadOnlyList<string> Kept => Results(WorkpieceUse.Held);

    private IEnumerable<string> Matches =>
        from id in Visit.Matches
        join match in Desk.Now.Workbook.PartList.Matches on id equals match.Id
        select $"{JobWords.Counted(match.Sides.Select(side => Words.Letter(side.Part)))}. {match.Because}";

    private string Given(CutChain chain)
    {
        var given = chain.Gives.Select(Words.Called).ToList();
        return given.Distinct().Count() == given.Count ? string.Join(", ", given) : JobWords.Counted(given);
    }

    private string Detail(CutChain chain)
    {
        var edge = CutWords.Edge(chain.First.Along, chain.First.From);
        var left = chain.Leaves is { } leaves ? $"Left: {Words.Described(leaves)}." : "Nothing left.";
        return $"{Words.Sides(Words.Workpiece(chain.First.On))}, {edge} to the {Guide}. {left}";
    }

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

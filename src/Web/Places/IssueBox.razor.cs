using Microsoft.AspNetCore.Components;
using Nookwright.Paper;
using Nookwright.Projects;
using Nookwright.Web.Sessions;

namespace Nookwright.Web.Places;

/// <summary>Hands a round of the plan to the saw, and takes it back.</summary>
public sealed partial class IssueBox : ComponentBase
{
    /// <summary>Whose desk it is on.</summary>
    [Parameter, EditorRequired]
    public Desk Desk { get; set; } = null!;

    /// <summary>How far the plan has been cut.</summary>
    [Parameter, EditorRequired]
    public CuttingProgress Progress { get; set; } = null!;

    private IReadOnlyList<IssuedRound> Issued => Desk.Now.Project.Issued;

    private int Last => Issued[^1].Round;

    private int Awaited => Desk.Now.Workbook.PartList.Parts.Count(part => part.IsHeld);

    /// <summary>The number of the round that can be issued; null when there is none.</summary>
    private int? Next =>
        Progress.Rounds[^1] is { Issued: null } round && round.Breakdown.Count + round.Visits.Count > 0
            ? round.Number
            : null;

    private string Ticked(int number)
    {
        var round = Progress.Rounds.FirstOrDefault(known => known.Number == number);
        var done = round is null ? 0 : Progress.CutsDone(round);
        return done == 0 ? "." : $"; {JobWords.Count(done, "cut")} of it {(done == 1 ? "is" : "are")} ticked.";
    }

    private void Issue(int round) =>
        Desk.Try(session => session.Issue(round, DateOnly.FromDateTime(Clock.GetLocalNow().DateTime)));

    private void Withdraw() => Desk.Try(session => session.Edit($"withdraw round {Last}", p => p.WithdrawRound()));
}

using System.Collections.Immutable;
using Nookwright.Lettering;
using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Web.Sessions;

/// <summary>What one person has in front of them: a job, what is selected in it and what is hidden. Not saved.</summary>
/// <param name="session">The job.</param>
/// <param name="job">The name it has in its folder.</param>
public sealed class Desk(JobSession session, string job)
{
    /// <summary>Raised when something was selected, hidden or refused.</summary>
    public event Action? Changed;

    /// <summary>The job.</summary>
    public JobSession Session { get; } = session;

    /// <summary>The name it has in its folder.</summary>
    public string Job { get; } = job;

    /// <summary>All there is to show; stays the same while a page is being made, until it catches up.</summary>
    public JobState Now { get; private set; } = session.Now;

    /// <summary>The id of the selected panel or piece, or null.</summary>
    public string? Selected { get; private set; }

    /// <summary>The id of the piece that is selected, or whose panel is; null when none is.</summary>
    public string? SelectedPiece => Selected is null ? null : PieceOf(Selected);

    /// <summary>Ids of the pieces that are not shown.</summary>
    public ImmutableHashSet<string> Hidden { get; private set; } = [];

    /// <summary>Why the last step back or forward was not done, or null.</summary>
    public Refusal? Refused { get; private set; }

    /// <summary>Takes what the job has come to meanwhile.</summary>
    public void CatchUp() => Now = Session.Now;

    /// <summary>True for the selected panel or piece, and for the panels of a selected piece.</summary>
    public bool IsSelected(string id) => Selected is not null && (id == Selected || PieceOf(id) == Selected);

    /// <summary>Selects a panel or a piece; null selects nothing.</summary>
    public void Select(string? id)
    {
        Selected = id;
        Changed?.Invoke();
    }

    /// <summary>Hides a piece, or shows it again.</summary>
    public void ToggleHidden(string piece)
    {
        Hidden = Hidden.Contains(piece) ? Hidden.Remove(piece) : Hidden.Add(piece);
        Changed?.Invoke();
    }

    /// <summary>Shows every piece again.</summary>
    public void ShowAll()
    {
        Hidden = [];
        Changed?.Invoke();
    }

    /// <summary>Does something to the job and keeps the refusal, if any, to be shown.</summary>
    public void Try(Func<JobSession, Refusal?> act)
    {
        Refused = act(Session);
        Changed?.Invoke();
    }

    /// <summary>A length as it is shown, its fraction set as a fraction.</summary>
    public string Print(Length length) => LengthLabel.Of(length, Now.Workbook.Lengths);

    private static string PieceOf(string id) => id.Split('.', 2)[0];
}

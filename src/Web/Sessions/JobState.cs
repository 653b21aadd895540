using Nookwright.Flow;
using Nookwright.Projects;

namespace Nookwright.Web.Sessions;

/// <summary>All there is to show of a job at one moment; immutable, so that every open page shows one and the same.</summary>
/// <param name="History">The document and how it came to be.</param>
/// <param name="Workbook">What follows from the document.</param>
/// <param name="Pictures">The drawings of room and built-in.</param>
/// <param name="PlanPictures">The drawings of the plan; while there is none yet for this document, those of the plan before.</param>
/// <param name="Planning">What the planner is doing.</param>
/// <param name="Done">The cuts that were ticked as done, of this plan and of others.</param>
/// <param name="IsChangedOutside">True when another program changed the file and the person has not said which to keep.</param>
public sealed record JobState(
    History History,
    Workbook Workbook,
    JobPictures Pictures,
    PlanPictures PlanPictures,
    PlannerState Planning,
    CutsDone Done,
    bool IsChangedOutside = false
)
{
    /// <summary>The document.</summary>
    public Project Project => History.Current;

    /// <summary>How far the plan has been cut, or null when there is no plan.</summary>
    public CuttingProgress? Progress => Workbook.Plan is { } plan ? new(plan, PlanPictures.Stamps, Done) : null;
}

/// <summary>What the planner is doing.</summary>
/// <param name="IsUnderWay">True while it looks for a better plan.</param>
/// <param name="Improvements">How many plans it has found for this document, each better than the one before.</param>
public sealed record PlannerState(bool IsUnderWay, int Improvements)
{
    /// <summary>True when the maker had it stop before it was through.</summary>
    public bool WasStopped { get; init; }

    /// <summary>Nothing is being planned.</summary>
    public static PlannerState Rests { get; } = new(false, 0);

    /// <summary>Just begun.</summary>
    public static PlannerState Begins { get; } = new(true, 0);
}

using Nookwright.Cutting;

namespace Nookwright.Web.Sessions;

/// <summary>How far a plan has been cut.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Stamps">Its stamps.</param>
/// <param name="Done">The cuts that were ticked.</param>
public sealed record CuttingProgress(Plan Plan, CutStamps Stamps, CutsDone Done)
{
    /// <summary>How many visits are done.</summary>
    public int VisitsDone => Plan.Visits.Count(IsDone);

    /// <summary>True when anything of it is done.</summary>
    public bool HasBegun =>
        Plan.Breakdown.Any(IsDone) || Plan.Visits.Any(visit => visit.Cuts.Any(cut => IsDone(visit, cut)));

    /// <summary>The first visit that is not done, or null when all are.</summary>
    public Visit? Next => Plan.Visits.FirstOrDefault(visit => !IsDone(visit));

    /// <summary>True for a cut of the breakdown that is done.</summary>
    public bool IsDone(SawCut breakdown) => Done.Has(Stamps.Of(1), breakdown.Number);

    /// <summary>True for a visit all cuts of which are done.</summary>
    public bool IsDone(Visit visit) => visit.Cuts.All(cut => IsDone(visit, cut));

    /// <summary>True for a cut of a visit that is done.</summary>
    public bool IsDone(Visit visit, SawCut cut) => Done.Has(Stamps.Of(visit.Round), cut.Number);
}

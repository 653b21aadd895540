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

    /// <summary>The rounds of the plan.</summary>
    public IReadOnlyList<RoundOfWork> Rounds { get; } = RoundOfWork.Of(Plan);

    /// <summary>How many cuts of a round are done.</summary>
    public int CutsDone(RoundOfWork round) =>
        round.Breakdown.Concat(round.Visits.SelectMany(visit => visit.Cuts)).Count(cut => IsDone(round.Number, cut));

    /// <summary>True when anything of it is done.</summary>
    public bool HasBegun => Rounds.Any(round => CutsDone(round) > 0);

    /// <summary>The first visit that is not done, or null when all are.</summary>
    public Visit? Next => Plan.Visits.FirstOrDefault(visit => !IsDone(visit));

    /// <summary>True for a visit all cuts of which are done.</summary>
    public bool IsDone(Visit visit) => visit.Cuts.All(cut => IsDone(visit.Round, cut));

    /// <summary>True for a cut of a round that is done.</summary>
    public bool IsDone(int round, SawCut cut) => Done.Has(Stamps.Of(round), cut.Number);
}

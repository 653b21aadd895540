using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Planning;
using Nookwright.Sawing;

namespace Nookwright.Rounds;

/// <summary>Plans what is cut after an issued plan, and leaves all that is issued as it is.</summary>
public static class NextRound
{
    /// <summary>The issued rounds with the best next one found; the virtual saw has executed the whole.</summary>
    /// <param name="issued">The issued rounds.</param>
    /// <param name="now">What the job asks for now, all parts.</param>
    /// <param name="progress">Told of the first plan and of every better one, each with the issued rounds.</param>
    /// <param name="stop">Ends the search; the best so far is given.</param>
    /// <param name="before">The plan made before an edit, of which the round that is not issued keeps what it can; null for none.</param>
    public static Plan Plan(
        IssuedPlan issued,
        CutRequest now,
        IProgress<Plan>? progress = null,
        CancellationToken stop = default,
        Plan? before = null
    )
    {
        var changes = Changes.Of(issued, now);
        if (changes.Next.Parts.Count == 0)
            return Whole(issued, changes, null);
        var alone = Alone(changes.Next, issued);
        var told = progress is null ? null : new Told<Plan>(p => progress.Report(Joined(p, alone, changes, issued)));
        return Joined(Planner.Plan(alone, told, stop, RoundAlone.Of(before)), alone, changes, issued);
    }

    /// <summary>The plans between the fewest visits and the least wood for what is not issued; the issued rounds are the same in all.</summary>
    /// <param name="issued">The issued rounds.</param>
    /// <param name="now">What the job asks for now, all parts.</param>
    /// <param name="first">The plan with the fewest visits, as <see cref="Plan"/> gave it; null to look for it here.</param>
    /// <param name="progress">Told of the first plan alone, then of every better front.</param>
    /// <param name="stop">Ends the search; the best front so far is given. Throws only when there is no plan yet.</param>
    public static PlanFront Front(
        IssuedPlan issued,
        CutRequest now,
        Plan? first = null,
        IProgress<PlanFront>? progress = null,
        CancellationToken stop = default
    )
    {
        var changes = Changes.Of(issued, now);
        if (changes.Next.Parts.Count == 0)
            return FrontWriter.Of([Whole(issued, changes, null)], changes.Whole) with { WhyNone = NoTrade.AllIssued };
        var alone = Alone(changes.Next, issued);
        var told = progress is null ? null : new Told<PlanFront>(f => progress.Report(Joined(f)));
        return Joined(Planner.Front(alone, (first?.Origin as RoundAlone)?.Plan, told, stop));

        PlanFront Joined(PlanFront front) =>
            FrontWriter.Of(
                front.Plans.Select(p => NextRound.Joined(p.Plan, alone, changes, issued)),
                changes.Whole
            ) with
            {
                WhyNone = front.WhyNone,
            };
    }

    private static Plan Joined(Plan round, CutRequest alone, Changes changes, IssuedPlan issued) =>
        Whole(issued, changes, RoundPlacing.Of(round, alone, changes.Next, issued)) with
        {
            Origin = new RoundAlone(round),
        };

    private static Plan Whole(IssuedPlan issued, Changes changes, CutRound? next)
    {
        var joined = JoinedRounds.Of(
            [.. issued.Rounds, .. next is null ? Array.Empty<CutRound>() : [next]],
            changes.Spares
        );
        var price = ChangeFindings.PriceOfWaiting(joined, changes.Whole);
        var whole = joined with { Findings = [.. joined.Findings, .. changes.Findings, .. price] };
        return VirtualSaw.Run(whole, changes.Whole).Why is { } trouble
            ? throw new InvalidOperationException($"The planner made a round that cannot be cut: {trouble}")
            : whole;
    }

    /// <summary>The same request for the planner: a blank is a material of its own, so that its parts come out of it and no other does.</summary>
    private static CutRequest Alone(CutRequest request, IssuedPlan issued)
    {
        var blanks = request.Parts.Select(p => p.From).OfType<string>().ToHashSet();
        blanks.IntersectWith(request.Stock.Where(s => s.LeftAs is not null).Select(s => s.Id));
        bool IsOfBlank(CutPart part) => part.From is { } from && blanks.Contains(from);
        return request with
        {
            Parts =
            [
                .. request.Parts.Select(p => IsOfBlank(p) ? p with { Material = BlankOf(p.From!), From = null } : p),
            ],
            Stock = [.. request.Stock.Select(s => blanks.Contains(s.Id) ? Grown(s, request, issued) : s)],
        };
    }

    /// <summary>
    /// The planner takes every edge of a sheet for rough. A blank has edges that were dressed while its sheet was whole: it
    /// is thought larger by that dressing, which <see cref="RoundPlacing"/> then takes for done.
    /// </summary>
    private static StockPiece Grown(StockPiece blank, CutRequest request, IssuedPlan issued)
    {
        Length Gone(SheetAxis axis) => issued.IsTrueLow(blank.LeftAs!, axis) ? request.Saws.Dressing : Length.Zero;
        var (x, y) = (Gone(SheetAxis.Length), Gone(SheetAxis.Width));
        return blank with
        {
            Material = BlankOf(blank.Id),
            Length = blank.Length + x,
            Width = blank.Width + y,
            Bad = [.. blank.Bad.Select(bad => bad with { X = bad.X + x, Y = bad.Y + y })],
        };
    }

    /// <summary>No material is called so: ids have no blanks in them.</summary>
    private static string BlankOf(string piece) => $"blank {piece}";

    /// <summary>Passes each report on at once, on the thread that made it.</summary>
    private sealed class Told<T>(Action<T> tell) : IProgress<T>
    {
        public void Report(T value) => tell(value);
    }
}

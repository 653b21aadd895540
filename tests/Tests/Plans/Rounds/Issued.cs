using Nookwright.Cutting;
using Nookwright.Planning;
using Nookwright.Rounds;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Rounds;

/// <summary>Issued plans for tests.</summary>
internal static class Issued
{
    public static DateOnly Day { get; } = new(2026, 11, 25);

    /// <summary>The plan of a request, issued.</summary>
    public static IssuedPlan Of(CutRequest request) =>
        IssuedPlan.Of([new(1, Planner.Plan(Quick(request)), request, Day)]).Value;

    /// <summary>A plan whose last round is issued too.</summary>
    public static IssuedPlan Of(Plan plan) =>
        IssuedPlan.Of([.. plan.Rounds.Select(r => r with { Issued = Day })]).Value;

    /// <summary>The next round, which the virtual saw must accept with all before.</summary>
    public static (Plan Plan, CutRequest Whole) Next(IssuedPlan issued, CutRequest now)
    {
        var whole = Changes.Of(issued, Quick(now)).Whole;
        var plan = NextRound.Plan(issued, whole, null, TestContext.Current.CancellationToken);
        var verdict = VirtualSaw.Run(plan, whole);
        Assert.True(verdict.Accepted, verdict.Why);
        Assert.Equal(issued.Rounds, plan.Rounds.Take(issued.Rounds.Count));
        return (plan, whole);
    }

    /// <summary>The request in which a part has another size and waits for nothing.</summary>
    public static CutRequest Sized(this CutRequest request, string part, decimal length, decimal width) =>
        request with
        {
            Parts =
            [
                .. request.Parts.Select(p =>
                    p.Id == part ? p with { Length = Jobs.Mm(length), Width = Jobs.Mm(width), Awaits = [] } : p
                ),
            ],
        };

    /// <summary>The pieces that are parts, by part.</summary>
    public static ILookup<string, Workpiece> Made(Plan plan) =>
        plan.Workpieces.Where(p => p.Use == WorkpieceUse.Part).ToLookup(p => p.Part!);

    /// <summary>True when a piece lies on the wood of another.</summary>
    public static bool IsWithin(Workpiece piece, Workpiece whole) =>
        piece.Sheet == whole.Sheet
        && piece.X >= whole.X
        && piece.Y >= whole.Y
        && piece.X + piece.Length <= whole.X + whole.Length
        && piece.Y + piece.Width <= whole.Y + whole.Width;

    private static CutRequest Quick(CutRequest request) => request with { Rules = request.Rules with { Effort = 1 } };
}

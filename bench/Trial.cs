using System.Diagnostics;
using Nookwright.Bounds;
using Nookwright.Cutting;
using Nookwright.Planning;
using Nookwright.Sawing;
using Nookwright.Trouble;

namespace Nookwright.Bench;

/// <summary>One plan looked for, with the clock beside it.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Plan">The plan at the end.</param>
/// <param name="Refused">Why the virtual saw refuses the plan, or what is not planned; null when all is well.</param>
/// <param name="First">Seconds to the first plan.</param>
/// <param name="Whole">Seconds to the end.</param>
/// <param name="Better">Every better plan on the way: after how many seconds, with how many sheets.</param>
public sealed record Trial(
    CutRequest Request,
    Plan Plan,
    string? Refused,
    double First,
    double Whole,
    IReadOnlyList<(double Seconds, int Sheets)> Better
)
{
    private const int EffortWithoutEnd = 1_000_000;

    /// <summary>Plans with the effort the request asks for.</summary>
    public static Trial AsAsked(CutRequest request) => Run(request, CancellationToken.None);

    /// <summary>Plans for so many seconds at most, or until the plan is proven best.</summary>
    public static Trial For(CutRequest request, double seconds)
    {
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
        return Run(request with { Rules = request.Rules with { Effort = EffortWithoutEnd } }, stop.Token);
    }

    /// <summary>The sheets the plan had after so many seconds; null when there was none yet.</summary>
    public int? SheetsAfter(double seconds) =>
        Better.Where(b => b.Seconds <= seconds).Select(b => (int?)b.Sheets).LastOrDefault();

    /// <summary>How far from the best the plan can be: the planner's own proof, or the quick bounds where it has none.</summary>
    public PlanProof Proof { get; } = Plan.Proof ?? Bounds(Request, Plan).Prove(Plan);

    /// <summary>The proof by bounds that are sharpened here, off the clock, where the planner's leaves a gap.</summary>
    /// <param name="seconds">For how long at most.</param>
    public PlanProof Sharpened(double seconds)
    {
        if (Proof.IsLeastWood)
            return Proof;
        var bounds = Bounds(Request with { Rules = Request.Rules with { Effort = EffortWithoutEnd } }, Plan);
        using var stop = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
        bounds.Sharpen(Plan, stop.Token);
        return bounds.Prove(Plan);
    }

    /// <summary>In a sentence, how many plans the virtual saw executed.</summary>
    public static string Sawn(IReadOnlyCollection<Trial> all) =>
        all.FirstOrDefault(t => t.Refused is not null) is { } bad
            ? $"**{all.Count(t => t.Refused is not null)} of {all.Count} plans refused by the virtual saw**; the first: {bad.Refused}"
            : $"The virtual saw executed all {all.Count} plans.";

    private static Trial Run(CutRequest request, CancellationToken stop)
    {
        var clock = Stopwatch.StartNew();
        var better = new List<(double, int)>();
        Plan? plan = null;
        var progress = new Told(found =>
        {
            plan = found;
            better.Add((clock.Elapsed.TotalSeconds, found.Sheets.Count));
        });
        try
        {
            plan = Planner.Plan(request, progress, stop);
        }
        catch (OperationCanceledException) when (plan is not null)
        {
            // The best plan told of stands.
        }
        var whole = clock.Elapsed.TotalSeconds;
        return new(request, plan, Wrong(plan, request), better.Count > 0 ? better[0].Item1 : whole, whole, better);
    }

    private static string? Wrong(Plan plan, CutRequest request) =>
        VirtualSaw.Run(plan, request).Why
        ?? plan.Findings.FirstOrDefault(f => f.Severity == Severity.MustMend)?.Message;

    private static WoodBounds Bounds(CutRequest request, Plan plan)
    {
        var left = plan.Findings.Where(f => f.Severity == Severity.MustMend).SelectMany(f => f.About).ToHashSet();
        return new(request, request.Parts.Select(p => p.Id).Where(id => !left.Contains(id)));
    }

    /// <summary>Tells at once, on the planner's own thread.</summary>
    private sealed class Told(Action<Plan> tell) : IProgress<Plan>
    {
        public void Report(Plan value)
        {
            lock (tell)
                tell(value);
        }
    }
}

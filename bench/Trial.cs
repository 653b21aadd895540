using System.Diagnostics;
using Nookwright.Bounds;
using Nookwright.Cutting;
using Nookwright.Planning;
using Nookwright.Sawing;

namespace Nookwright.Bench;

/// <summary>One plan looked for, with the clock beside it.</summary>
/// <param name="Plan">The plan at the end.</param>
/// <param name="Proof">How far from the best it can be.</param>
/// <param name="First">Seconds to the first plan.</param>
/// <param name="Whole">Seconds to the end.</param>
/// <param name="Better">Every better plan on the way: after how many seconds, with how many sheets.</param>
public sealed record Trial(
    Plan Plan,
    PlanProof Proof,
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

    private static Trial Run(CutRequest request, CancellationToken stop)
    {
        var clock = Stopwatch.StartNew();
        var better = new List<(double, int)>();
        var progress = new Told(plan => better.Add((clock.Elapsed.TotalSeconds, plan.Sheets.Count)));
        var plan = Planner.Plan(request, progress, stop);
        var whole = clock.Elapsed.TotalSeconds;
        var verdict = VirtualSaw.Run(plan, request);
        if (!verdict.Accepted)
            throw new InvalidOperationException($"The virtual saw refuses the plan: {verdict.Why}");
        if (plan.Findings.Any(f => f.Severity == Trouble.Severity.MustMend))
            throw new InvalidOperationException($"Not all parts are planned: {plan.Findings[0].Message}");
        var proof = plan.Proof ?? new WoodBounds(request, request.Parts.Select(p => p.Id)).Prove(plan);
        return new(plan, proof, better.Count > 0 ? better[0].Item1 : whole, whole, better);
    }

    /// <summary>Tells at once, on the planner's own thread.</summary>
    private sealed class Told(Action<Plan> tell) : IProgress<Plan>
    {
        public void Report(Plan value) => tell(value);
    }
}

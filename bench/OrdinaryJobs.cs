namespace Nookwright.Bench;

/// <summary>100 ordinary jobs: are there as many visits as dimensions, and as few sheets as the bound?</summary>
internal static class OrdinaryJobs
{
    private const int Jobs = 100;
    private const double BoundSeconds = 20;

    public static ResultSection Run(BenchOptions options)
    {
        Trial.AsAsked(BuiltInJobs.Ordinary(seed: 1000)); // The first plan of a process also compiles the planner.
        var trials = new List<Trial>();
        for (var seed = 0; seed < Jobs; seed += options.Every)
        {
            trials.Add(Trial.AsAsked(BuiltInJobs.Ordinary(seed)));
            Say(seed, trials[^1]);
        }
        return new(
            "jobs",
            $"{trials.Count} ordinary jobs of 60 to 75 parts, 20 to 26 dimensions",
            Text(trials, options.Every)
        );
    }

    private static string Text(List<Trial> trials, int every)
    {
        var proofs = trials.Select(t => t.Sharpened(BoundSeconds)).ToList();
        var lines = new List<string>
        {
            "| what | goal | got |",
            "|---|---|---|",
            $"| visits = lower bound | {trials.Count} | {proofs.Count(p => p.IsFewestVisits)} |",
            $"| sheets = lower bound | {Math.Ceiling(0.95 * trials.Count)} | {proofs.Count(p => p.IsLeastWood)} |",
            $"| first plan, median | 50 ms | {Milliseconds(trials.Select(t => t.First))} |",
            $"| final plan, median | 1000 ms | {Milliseconds(trials.Select(t => t.Whole))} |",
            "",
            $"{Span(trials.Select(t => t.Proof.Visits))} visits, {Span(trials.Select(t => t.Plan.Sheets.Count))} sheets a job; "
                + $"slowest final plan {trials.Max(t => t.Whole):0.0} s. {trials.Count(t => t.Proof.IsProvenBest)} proven best by the planner "
                + $"itself, the others against bounds sharpened for up to {BoundSeconds:0} s off the clock. {Trial.Sawn(trials)}",
        };
        lines.Add("");
        lines.AddRange(
            proofs
                .Select((proof, i) => (proof, seed: i * every))
                .Where(p => !p.proof.IsProvenBest)
                .Select(p => $"- job {p.seed}: {p.proof.Sentence}")
        );
        return string.Join("\n", lines);
    }

    private static void Say(int seed, Trial trial) =>
        Console.Error.WriteLine(
            $"job {seed}: {trial.Plan.Visits.Count} visits, {trial.Plan.Sheets.Count} sheets, {trial.First * 1000:0} ms, "
                + $"{trial.Whole * 1000:0} ms. {trial.Proof.Sentence}"
        );

    private static string Milliseconds(IEnumerable<double> seconds) => $"{Median(seconds) * 1000:0} ms";

    private static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    private static string Span(IEnumerable<int> values) => $"{values.Min()} to {values.Max()}";
}

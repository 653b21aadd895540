namespace Nookwright.Bench;

/// <summary>Ordinary jobs planned twice in one run: by the planner, and by a plain CP-SAT model of the easier question.</summary>
internal static class SideBySide
{
    private const int Jobs = 10;
    private const double MostSeconds = 60;
    private const double Times = 10;

    /// <summary>Measures.</summary>
    public static ResultSection Run(BenchOptions options)
    {
        Trial.AsAsked(BuiltInJobs.Ordinary(seed: 1000));
        var rows = new List<Row>();
        for (var seed = 0; seed < Jobs; seed += options.Every)
        {
            rows.Add(Compare(seed, Math.Min(MostSeconds, options.Seconds * 6)));
            Console.Error.WriteLine(rows[^1].Line);
        }
        return new("exact", $"{rows.Count} ordinary jobs side by side with a plain CP-SAT model", Text(rows));
    }

    private static Row Compare(int seed, double seconds)
    {
        var job = BuiltInJobs.Ordinary(seed);
        var trial = Trial.AsAsked(job);
        var answers = trial
            .Plan.Sheets.GroupBy(s => s.Material)
            .Select(g => (Ours: g.Count(), Theirs: new PlacementModel(job, g.Key).Solve(seconds)))
            .ToList();
        double? Reached(double within) =>
            answers.All(a => a.Theirs.Better.Any(b => b.Sheets <= a.Ours && b.Seconds <= within))
                ? answers.Sum(a => a.Theirs.Better.First(b => b.Sheets <= a.Ours).Seconds)
                : null;
        var isBetter = answers.Any(a => a.Theirs.Better.Any(b => b.Sheets < a.Ours));
        return new(seed, trial, Reached(seconds), isBetter, answers.All(a => a.Theirs.IsProven), seconds);
    }

    private static string Text(List<Row> rows)
    {
        var reached = rows.Where(r => r.Theirs is not null).Select(r => r.Theirs!.Value / r.Ours).Order().ToList();
        return string.Join(
            "\n",
            [
                "The model places parts on sheets so that none overlap, and knows nothing of the planner's answer. It leaves out that cuts go "
                    + "from edge to edge, visits and their order, breakdown and reach: an easier question, and what it finds may be "
                    + "impossible to cut. Both use all cores. Counted is the time until each first had the planner's number of "
                    + $"sheets; the planner's plans have one visit per dimension by then. {Trial.Sawn([.. rows.Select(r => r.Trial)])}",
                "",
                "| what | goal | got |",
                "|---|---|---|",
                $"| jobs where the model finds fewer sheets | 0 | {rows.Count(r => r.IsBetter)} |",
                $"| jobs where the model finds as few within {Times:0} times the planner's time | 0 | {rows.Count(r => r.Theirs < Times * r.Ours)} |",
                $"| jobs where it finds as few at all | | {reached.Count} |",
                $"| median of its time over the planner's, where it does | 10 | {(reached.Count == 0 ? "-" : $"{reached[reached.Count / 2]:0.0}")} |",
                "",
                "| job | sheets | planner, s | model: as few sheets after, s | fewer | proven |",
                "|---|---|---|---|---|---|",
                .. rows.Select(r => r.Line),
            ]
        );
    }

    private sealed record Row(int Seed, Trial Trial, double? Theirs, bool IsBetter, bool IsProven, double Most)
    {
        /// <summary>Until the planner first had as few sheets as in the end.</summary>
        public double Ours =>
            Trial
                .Better.Where(b => b.Sheets <= Trial.Plan.Sheets.Count)
                .Select(b => b.Seconds)
                .FirstOrDefault(Trial.Whole);

        public string Line =>
            $"| {Seed} | {Trial.Plan.Sheets.Count} | {Ours:0.000} of {Trial.Whole:0.00} | "
            + $"{(Theirs is { } seconds ? $"{seconds:0.00}" : $"not in {Most:0}")} | {(IsBetter ? "yes" : "no")} | {(IsProven ? "yes" : "no")} |";
    }
}

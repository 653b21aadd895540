namespace Nookwright.Bench;

/// <summary>A file of single instances, each against our own bound.</summary>
internal static class NamedBins
{
    public static ResultSection Run(BenchOptions options, string name, string file, string title)
    {
        var instances = InstanceFile
            .Read(Path.Combine(options.Data, file), mayTurn: false)
            .Where((_, i) => i % options.Every == 0)
            .ToList();
        return new(name, title, Text(PublicBins.Solve(instances, options), options));
    }

    private static string Text(List<Solved> solved, BenchOptions options)
    {
        var lines = new List<string>
        {
            $"Parts not turned, at most {options.Seconds:0.#} s an instance. Bins: **{solved.Sum(s => s.Bins)}**, sum of bounds "
                + $"{solved.Sum(s => s.AtLeast)}, proven {solved.Count(s => s.Bins == s.AtLeast)} of {solved.Count}.",
            "",
            "| instance | bins | at least | seconds |",
            "|---|---|---|---|",
        };
        lines.AddRange(solved.Select(s => $"| {s.Name} | {s.Bins} | {s.AtLeast} | {s.Seconds:0.0} |"));
        return string.Join("\n", lines);
    }
}

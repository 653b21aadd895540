using System.Collections.Concurrent;
using System.Diagnostics;
using Nookwright.Cutting;

namespace Nookwright.Bench;

/// <summary>The 500 instances of Berkey and Wang (classes 1 to 6) and Martello and Vigo (7 to 10) against published totals.</summary>
internal static class PublicBins
{
    public static ResultSection Run(BenchOptions options, bool mayTurn)
    {
        var instances = InstanceFile
            .Read(Path.Combine(options.Data, "class500.txt"), mayTurn)
            .Where((_, i) => i % options.Every == 0)
            .ToList();
        var published = InstanceFile.Published(
            Path.Combine(options.Data, "class500_best_known_guillotine.json"),
            mayTurn
        );
        var bins = Solve(instances, options);
        var name = mayTurn ? "rotated" : "oriented";
        return new(name, $"{instances.Count} public instances, {name} guillotine", Text(bins, published, options));
    }

    /// <summary>Bins by instance, with the proof and the seconds it took.</summary>
    public static List<Solved> Solve(IReadOnlyList<(string Name, CutRequest Request)> instances, BenchOptions options)
    {
        var solved = new ConcurrentBag<Solved>();
        Parallel.ForEach(
            Partitioner.Create(instances, EnumerablePartitionerOptions.NoBuffering),
            new ParallelOptions { MaxDegreeOfParallelism = options.AtOnce },
            instance =>
            {
                var clock = Stopwatch.StartNew();
                var trial = Trial.For(instance.Request, options.Seconds);
                var proof = trial.Proof.Materials[0];
                var one = new Solved(
                    instance.Name,
                    trial.Plan.Sheets.Count,
                    proof.SheetsAtLeast,
                    clock.Elapsed.TotalSeconds,
                    trial
                );
                solved.Add(one);
                Console.Error.WriteLine($"{one.Name}: {one.Bins} (at least {one.AtLeast}), {one.Seconds:0.0} s");
            }
        );
        return [.. solved.OrderBy(s => s.Name, StringComparer.Ordinal)];
    }

    private static string Text(
        List<Solved> solved,
        Dictionary<string, Dictionary<string, int>> published,
        BenchOptions options
    )
    {
        var groups = solved.GroupBy(s => Group(s.Name)).ToList();
        var methods = published.Values.First().Keys.ToList();
        var lines = new List<string>
        {
            $"At most {options.Seconds:0.#} s an instance, {options.AtOnce} at once. Bins: **{solved.Sum(s => s.Bins)}**; "
                + $"proven by our own bounds: {solved.Count(s => s.Bins == s.AtLeast)} of {solved.Count}; "
                + $"sum of bounds {solved.Sum(s => s.AtLeast)}. {Trial.Sawn([.. solved.Select(s => s.Trial)])}",
            "",
        };
        if (options.Every == 1)
        {
            lines.Add(
                $"Published sums: {string.Join(", ", methods.Select(m => $"{m} {groups.Sum(g => published[g.Key][m])}"))}."
            );
            lines.Add("");
            lines.Add($"| class and size | ours | {string.Join(" | ", methods)} | proven |");
            lines.Add($"|---|---|{string.Concat(methods.Select(_ => "---|"))}---|");
            lines.AddRange(
                groups.Select(g =>
                    $"| {g.Key} | {g.Sum(s => s.Bins)} | {string.Join(" | ", methods.Select(m => published[g.Key][m]))} | "
                    + $"{g.Count(s => s.Bins == s.AtLeast)} of {g.Count()} |"
                )
            );
        }
        return string.Join("\n", lines);
    }

    /// <summary>cl01_020_07 belongs to 1_020.</summary>
    private static string Group(string name) => $"{int.Parse(name[2..4])}_{name[5..8]}";
}

/// <summary>An instance with its bins.</summary>
internal sealed record Solved(string Name, int Bins, int AtLeast, double Seconds, Trial Trial);

using System.Diagnostics;
using System.Globalization;

namespace Nookwright.Bench;

/// <summary>A shop's size: how soon there is a plan, how near the bound it comes, how much memory it takes.</summary>
/// <remarks>Each size has a process of its own, so that its memory is its own.</remarks>
internal static class LargeJobs
{
    private static readonly (int Parts, int Kinds, double Seconds, double Goal)[] Sizes =
    [
        (200, 9, 10, 0.03),
        (1000, 20, 60, 0.03),
        (5000, 26, 180, 0.04),
    ];

    /// <summary>Measures all sizes, or the one asked for.</summary>
    public static ResultSection Run(BenchOptions options)
    {
        var lines = new List<string>
        {
            "| parts | dimensions | visits | first plan | sheets after | sheets | at least | gap | goal | memory |",
            "|---|---|---|---|---|---|---|---|---|---|",
        };
        if (options.Parts is { } parts)
            lines.Add(Row(Sizes.First(s => s.Parts == parts), options));
        else
            lines.AddRange(Sizes.Select(s => InItsOwnProcess(s.Parts, options)));
        lines.Add("");
        lines.Add(
            "Memory is the peak of the process; the goal at 5,000 parts is 500 MB, and the first plan under 1 s."
        );
        return new("large", "200, 1,000 and 5,000 parts, one visit per dimension", string.Join("\n", lines));
    }

    private static string Row((int Parts, int Kinds, double Seconds, double Goal) size, BenchOptions options)
    {
        Trial.AsAsked(BuiltInJobs.Large(60, 3, seed: 1)); // The first plan of a process also compiles the planner.
        var seconds = Math.Min(size.Seconds, options.Seconds * 18);
        var trial = Trial.For(BuiltInJobs.Large(size.Parts, size.Kinds, seed: size.Parts), seconds);
        var memory = Process.GetCurrentProcess().PeakWorkingSet64 / (1024 * 1024);
        var proof = trial.Sharpened(seconds);
        var (sheets, least) = (proof.Materials.Sum(m => m.Sheets), proof.Materials.Sum(m => m.SheetsAtLeast));
        return $"| {size.Parts} | {proof.VisitsAtLeast} | {proof.Visits} | {trial.First:0.00} s | {seconds:0} s | {sheets} | {least} | "
            + $"{(double)(sheets - least) / least:0.0 %} | {size.Goal:0 %} | {memory} MB |{trial.Refused}";
    }

    private static string InItsOwnProcess(int parts, BenchOptions options)
    {
        string[] arguments =
        [
            "large",
            "--parts",
            parts.ToString(CultureInfo.InvariantCulture),
            "--seconds",
            options.Seconds.ToString(CultureInfo.InvariantCulture),
        ];
        var start = new ProcessStartInfo(Environment.ProcessPath!, arguments) { RedirectStandardOutput = true };
        if (Path.GetFileNameWithoutExtension(Environment.ProcessPath) == "dotnet")
            start.ArgumentList.Insert(0, typeof(LargeJobs).Assembly.Location);
        using var process = Process.Start(start)!;
        var told = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        var row = told.Split('\n').FirstOrDefault(l => l.StartsWith($"| {parts} |", StringComparison.Ordinal));
        Console.Error.WriteLine(row);
        return row ?? $"| {parts} | no figures: the process ended with {process.ExitCode} |";
    }
}

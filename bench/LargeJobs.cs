using System.Diagnostics;

namespace Nookwright.Bench;

/// <summary>A shop's size: how soon there is a plan, how near the bound it comes, how much memory it takes.</summary>
internal static class LargeJobs
{
    private static readonly (int Parts, int Kinds, double Seconds, double Goal)[] Sizes =
    [
        (200, 9, 10, 0.03),
        (1000, 20, 60, 0.03),
        (5000, 26, 180, 0.04),
    ];

    public static ResultSection Run(BenchOptions options)
    {
        var lines = new List<string>
        {
            "| parts | dimensions | visits | first plan | sheets after | sheets | at least | gap | goal | memory |",
            "|---|---|---|---|---|---|---|---|---|---|",
        };
        foreach (var size in Sizes)
            lines.Add(Row(size.Parts, size.Kinds, Math.Min(size.Seconds, options.Seconds * 18), size.Goal));
        return new("large", "200, 1,000 and 5,000 parts, one visit per dimension", string.Join("\n", lines));
    }

    private static string Row(int parts, int kinds, double seconds, double goal)
    {
        var request = BuiltInJobs.Large(parts, kinds, seed: parts);
        var trial = Trial.For(request, seconds);
        var proof = trial.Proof;
        var (sheets, least) = (proof.Materials.Sum(m => m.Sheets), proof.Materials.Sum(m => m.SheetsAtLeast));
        var memory = Process.GetCurrentProcess().PeakWorkingSet64 / (1024 * 1024);
        var line =
            $"| {parts} | {proof.VisitsAtLeast} | {proof.Visits} | {trial.First:0.00} s | {seconds:0} s | {sheets} | {least} | "
            + $"{(double)(sheets - least) / least:0.0 %} | {goal:0 %} | {memory} MB |";
        Console.Error.WriteLine(line);
        return line;
    }
}

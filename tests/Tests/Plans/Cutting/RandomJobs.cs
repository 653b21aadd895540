using CsCheck;
using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Tests.Cutting;

/// <summary>Jobs drawn by lot that look like built-ins: many parts, few dimensions, two materials, runs, matches, held parts.</summary>
internal static class RandomJobs
{
    public static Gen<CutRequest> Any { get; } = Gen.Int[0, 1_000_000].Select(Of);

    public static CutRequest Of(int seed) => Of(seed, 5 + new Random(seed).Next(55));

    public static CutRequest Of(int seed, int count)
    {
        var random = new Random(seed);
        var sizes = Enumerable.Range(0, 4 + random.Next(20)).Select(_ => 40 + (random.Next(2 * 1100) * 0.5m)).ToList();
        var parts = Enumerable.Range(0, count).Select(i => OnePart(i, sizes, random)).ToList();
        var (doors, run) = Doors(random);
        var jobs = Jobs.Request([.. parts, .. doors]);
        return jobs with
        {
            Runs = run,
            Matches = Matches(jobs.Parts, random),
            Stock =
            [
                Jobs.Sheet(random.Next(2) == 0 ? 2440 : 2500, random.Next(2) == 0 ? 1220 : 1250),
                Jobs.Sheet(material: "mdf"),
            ],
            Rules = new(Seed: seed, Effort: random.Next(3) == 0 ? 0 : 5),
        };
    }

    private static CutPart OnePart(int index, List<decimal> sizes, Random random)
    {
        var part = Jobs.Part(
            $"p{index}",
            sizes[random.Next(sizes.Count)],
            sizes[random.Next(sizes.Count)],
            (PanelFigure)random.Next(3),
            random.Next(4) == 0 ? "mdf" : "birch"
        );
        return random.Next(12) == 0 ? part with { Awaits = ["a.reading"] } : part;
    }

    private static (List<CutPart> Doors, List<CutRun> Run) Doors(Random random)
    {
        var height = 300 + (random.Next(400) * 0.5m);
        decimal[] widths = [250 + random.Next(60), 250 + random.Next(60)];
        var doors = Enumerable
            .Range(0, random.Next(5))
            .Select(i => Jobs.Part($"door{i}", height, widths[random.Next(2)], PanelFigure.Length))
            .ToList();
        return doors.Count < 2 ? (doors, []) : (doors, [new("doors", [.. doors.Select(d => d.Id)])]);
    }

    private static List<CutMatch> Matches(IReadOnlyList<CutPart> parts, Random random)
    {
        var groups = parts
            .Where(p => !p.IsHeld)
            .GroupBy(p => p.Length)
            .Where(g => g.Count() > 1 && random.Next(3) == 0);
        return [.. groups.Select((g, i) => Jobs.Match($"match{i}", MatchedSide.Length, [.. g.Select(p => p.Id)]))];
    }
}

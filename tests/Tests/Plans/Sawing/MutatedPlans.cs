using System.Collections.Concurrent;
using CsCheck;
using Nookwright.Cutting;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Sawing;

/// <summary>Plans of jobs drawn by lot, each spoiled in one place chosen by lot: the virtual saw refuses every one.</summary>
public class MutatedPlans
{
    private const int Kept = 40;

    private static readonly ConcurrentDictionary<int, (Plan Plan, CutRequest Request)> Plans = new();

    public static TheoryData<string> Ways => [.. Mutations.All.Keys];

    [Theory]
    [MemberData(nameof(Ways))]
    public void Refused(string way)
    {
        var seeds = Enumerable.Range(0, Kept).Where(s => Spoiled(s, way).Any()).ToArray();
        Assert.True(seeds.Length >= 3, $"Only {seeds.Length} of {Kept} plans can be spoiled so.");
        Gen.Select(Gen.Int[0, seeds.Length - 1].Select(i => seeds[i]), Gen.Int[0, int.MaxValue])
            .Sample(
                (seed, pick) =>
                {
                    var spoiled = Spoiled(seed, way).ToList();
                    Refuses(spoiled[pick % spoiled.Count]);
                },
                iter: 40,
                threads: 1
            );
    }

    [Fact]
    public void The_plans_they_are_made_from_can_be_cut() =>
        Assert.All(Enumerable.Range(0, Kept).Select(PlanOf), p => Assert.Null(VirtualSaw.Run(p.Plan, p.Request).Why));

    private static IEnumerable<Mutation> Spoiled(int seed, string way)
    {
        var (plan, request) = PlanOf(seed);
        return Mutations.All[way](plan, request);
    }

    private static (Plan Plan, CutRequest Request) PlanOf(int seed) =>
        Plans.GetOrAdd(
            seed,
            s =>
            {
                var request = RandomJobs.Of(s) with { Rules = new(Seed: s, Effort: 0) };
                return (Jobs.PlanOf(request), request);
            }
        );

    private static void Refuses(Mutation spoiled)
    {
        var verdict = VirtualSaw.Run(spoiled.Plan, spoiled.Request);
        Assert.False(verdict.Accepted, spoiled.Says);
        Assert.Contains(spoiled.Says, verdict.Why);
        if (spoiled.Cut is { } cut)
            Assert.Equal(cut, verdict.Cut);
    }
}

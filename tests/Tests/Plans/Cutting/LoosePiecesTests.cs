using CsCheck;
using Nookwright.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Cutting;

/// <summary>How many pieces lie about: by hand, and against walking through the cuts with a bench of names.</summary>
public class LoosePiecesTests
{
    /// <summary>
    /// By hand: one strip is ripped off the sheet for each height, then crosscut. After the breakdown one chunk lies about;
    /// a strip is finished in one crosscut, so that never more than the chunk and the strips of one rip do.
    /// </summary>
    [Fact]
    public void One_part_is_never_more_than_one_piece_about()
    {
        var loose = LoosePieces.Of(PlanOf(Request(Part("a", 600, 400))));
        Assert.Equal(1, loose.Most);
        Assert.All(loose.Waits, wait => Assert.True(wait.Since < wait.Visit));
    }

    [Fact]
    public void Untouched_sheets_finished_parts_and_held_blanks_are_not_counted()
    {
        var request = Request(Held("h", 600, 400)) with { Saws = Ideal };
        Assert.Equal(0, LoosePieces.Of(PlanOf(request)).Most);
    }

    [Fact]
    public void As_many_as_lie_on_a_bench_that_is_looked_at_after_each_visit() =>
        RandomJobs.Any.Sample(
            request =>
            {
                var plan = PlanOf(request);
                var (loose, bench) = (LoosePieces.Of(plan), Bench(plan));
                Assert.Equal(bench.Max(), loose.Most);
                Assert.Equal(bench, Enumerable.Range(0, plan.Visits.Count + 1).Select(v => loose.After(v).Count));
                Assert.All(plan.Visits, v => Assert.All(loose.After(v.Number), w => Assert.True(w.Visit > v.Number)));
            },
            iter: 40,
            threads: 1
        );

    /// <summary>Puts down and picks up names, and counts after the breakdown and after each visit those that a later cut names.</summary>
    private static List<int> Bench(Plan plan)
    {
        var (bench, counts) = (new HashSet<string>(), new List<int>());
        var wanted = plan.Cuts.Select(c => c.On).ToList();
        var held = plan.Workpieces.Where(p => p.Use == WorkpieceUse.Held).Select(p => p.Id).ToHashSet();
        foreach (var cuts in plan.Visits.Select(v => v.Cuts).Prepend(plan.Breakdown))
        {
            foreach (var cut in cuts)
            {
                bench.Remove(cut.On);
                bench.UnionWith(new[] { cut.Gives, cut.Leaves }.OfType<string>());
                wanted.Remove(cut.On);
            }
            counts.Add(bench.Count(piece => wanted.Contains(piece) && !held.Contains(piece)));
        }
        return counts;
    }
}

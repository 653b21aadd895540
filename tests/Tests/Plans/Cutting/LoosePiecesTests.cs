using CsCheck;
using Nookwright.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Cutting;

/// <summary>How many pieces lie about: by hand, and against walking through the cuts with a bench of names.</summary>
public class LoosePiecesTests
{
    /// <summary>By hand: its chunk is broken down for the first visit, and after that its strip waits for the second.</summary>
    [Fact]
    public void One_part_is_never_more_than_one_piece_about()
    {
        var loose = LoosePieces.Of(PlanOf(Request(Part("a", 600, 400))));
        Assert.Equal(1, loose.Most);
        Assert.Equal([(1, 1), (1, 2)], loose.Waits.Select(wait => (wait.Since, wait.Visit)).Distinct());
        Assert.Equal(1, loose.Lifts[1]);
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
                Assert.Equal(bench.DefaultIfEmpty().Max(), loose.Most);
                Assert.Equal(bench, plan.Visits.Select(v => loose.After(v.Number).Count));
                Assert.All(plan.Visits, v => Assert.All(loose.After(v.Number), w => Assert.True(w.Visit > v.Number)));
            },
            iter: 40,
            threads: 1
        );

    /// <summary>
    /// Puts down and picks up names, each sheet broken down when a visit needs it, and counts after each visit those that a
    /// later cut names.
    /// </summary>
    private static List<int> Bench(Plan plan)
    {
        var (bench, counts) = (new HashSet<string>(), new List<int>());
        var pieces = plan.Workpieces.ToDictionary(p => p.Id);
        var untouched = plan.Breakdown.ToLookup(c => pieces[c.On].Sheet);
        var wanted = plan.Visits.SelectMany(v => v.Cuts).Select(c => c.On).ToHashSet();
        var lifted = new HashSet<int>();
        foreach (var visit in plan.Visits)
        {
            var needed = visit.Cuts.Select(c => pieces[c.On].Sheet).Where(lifted.Add).ToList();
            foreach (var cut in needed.SelectMany(sheet => untouched[sheet]).Concat(visit.Cuts))
            {
                bench.Remove(cut.On);
                wanted.Remove(cut.On);
                bench.UnionWith(new[] { cut.Gives, cut.Leaves }.OfType<string>());
            }
            counts.Add(bench.Count(piece => wanted.Contains(piece) && pieces[piece].Use != WorkpieceUse.Held));
        }
        return counts;
    }
}

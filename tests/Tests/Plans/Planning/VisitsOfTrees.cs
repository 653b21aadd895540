using CsCheck;
using Nookwright.Planning;

namespace Nookwright.Tests.Planning;

/// <summary>The fewest visits for cuts that are given: against trying every way of doing them.</summary>
public class VisitsOfTrees
{
    private const int Wide = 10_000;

    /// <summary>Up to nine cuts at three distances; each waits for one or two others, and some are in groups.</summary>
    private static readonly Gen<List<(int Distance, int Group, int[] Before)>> SmallGraphs = Gen.Select(
            Gen.Int[0, 2],
            Gen.Int[0, 5],
            Gen.Int[0, 8],
            Gen.Int[0, 12]
        )
        .Array[1, 9]
        .Select(drawn =>
            drawn
                .Select(
                    (d, i) =>
                        (
                            d.Item1,
                            d.Item2 < 2 ? (d.Item1 * 2) + d.Item2 : -1,
                            new[] { d.Item3, d.Item4 }.Where(b => b < i).Distinct().ToArray()
                        )
                )
                .ToList()
        );

    [Fact]
    public void As_few_as_trying_every_way_finds_and_none_where_a_group_would_be_torn() =>
        SmallGraphs.Sample(
            cuts =>
            {
                var search = new FewestVisits(Graph(cuts));
                var found = search.Find(Wide);
                Assert.Equal(ByTrying(cuts), found?.Count);
                Assert.True(found is null || search.IsExact);
            },
            iter: 1000,
            threads: 1
        );

    /// <summary>Two strips, one cut at 1 then 2, the other at 2 then 1: whichever comes first must come again.</summary>
    [Fact]
    public void Two_strips_the_other_way_round_cost_one_visit_more() =>
        Assert.Equal(3, new FewestVisits(Graph([(1, -1, []), (2, -1, [0]), (2, -1, []), (1, -1, [2])])).Find(1)?.Count);

    [Fact]
    public void Two_strips_the_other_way_round_cannot_both_match() =>
        Assert.Null(new FewestVisits(Graph([(1, 0, []), (2, 1, [0]), (2, 1, []), (1, 0, [2])])).Find(Wide));

    [Fact]
    public void Every_cut_is_made_once_after_all_that_it_waits_for() =>
        SmallGraphs.Sample(
            cuts =>
            {
                var visits = new FewestVisits(Graph(cuts)).Find(4);
                if (visits is null)
                    return;
                var order = visits.SelectMany(v => v).ToList();
                Assert.Equal(cuts.Count, order.Distinct().Count());
                Assert.All(
                    Enumerable.Range(0, cuts.Count),
                    c => Assert.All(cuts[c].Before, b => Assert.True(order.IndexOf(b) < order.IndexOf(c)))
                );
                Assert.All(visits, v => Assert.Single(v.Select(c => cuts[c].Distance).Distinct()));
            },
            iter: 500,
            threads: 1
        );

    private static CutGraph Graph(List<(int Distance, int Group, int[] Before)> cuts)
    {
        var graph = new CutGraph();
        foreach (var (distance, group, before) in cuts)
            graph.Add(distance, group, 0, before);
        return graph;
    }

    /// <summary>Visit after visit from no cut made: a visit makes any cuts of one distance, of a group all or none.</summary>
    private static int? ByTrying(List<(int Distance, int Group, int[] Before)> cuts)
    {
        var all = (1 << cuts.Count) - 1;
        HashSet<int> reached = [0];
        for (var visits = 0; ; visits++)
        {
            if (reached.Contains(all))
                return visits;
            var next = reached
                .SelectMany(from => Enumerable.Range(0, all + 1).Where(to => IsVisit(from, to, cuts)))
                .ToHashSet();
            if (next.IsSubsetOf(reached))
                return null;
            reached.UnionWith(next);
        }
    }

    private static bool IsVisit(int from, int to, List<(int Distance, int Group, int[] Before)> cuts)
    {
        if ((from & to) != from || from == to)
            return false;
        var made = Enumerable.Range(0, cuts.Count).Where(c => ((to & ~from) >> c & 1) != 0).ToList();
        return made.Select(c => cuts[c].Distance).Distinct().Count() == 1
            && made.All(c => cuts[c].Before.All(b => (to >> b & 1) != 0))
            && made.Where(c => cuts[c].Group >= 0)
                .All(c => Enumerable.Range(0, cuts.Count).All(o => cuts[o].Group != cuts[c].Group || made.Contains(o)));
    }
}

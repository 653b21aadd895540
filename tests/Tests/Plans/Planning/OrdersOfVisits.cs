using CsCheck;
using Nookwright.Planning;

namespace Nookwright.Tests.Planning;

/// <summary>Visits in an order that keeps loose pieces few: against trying every order.</summary>
public class OrdersOfVisits
{
    private const int Visits = 6;

    private static readonly Gen<(int[] Befores, (int From, int Until)[] Stands)> Small = Gen.Select(
        Gen.Int[-1, Visits - 1].Array[Visits],
        Gen.Select(Gen.Int[-1, Visits - 2], Gen.Int[0, Visits - 1]).Array[1, 8]
    );

    [Fact]
    public void No_order_that_keeps_the_rules_has_fewer_pieces_about() =>
        Small.Sample(
            drawn =>
            {
                var befores = Rules(drawn.Befores);
                var stands = drawn.Stands.Where(s => s.From < s.Until).Select(Stand).ToList();
                var found = new VisitOrder(stands, befores, new long[Visits]).Find();
                Assert.True(IsAllowed(found, befores));
                var best = Orders([]).Where(o => IsAllowed(o, befores)).Min(o => Cost(o, stands));
                Assert.Equal(best, Cost(found, stands));
            },
            iter: 100,
            threads: 1
        );

    /// <summary>Two long rips and two short cuts that nothing puts in order: the long ones come first, the longest first of all.</summary>
    [Fact]
    public void Where_nothing_else_decides_long_cuts_come_first() =>
        Assert.Equal(
            [2, 0, 3, 1],
            new VisitOrder([], Rules([-1, -1, -1, -1]), [Mm(1200), Mm(300), Mm(2400), Mm(600)]).Find()
        );

    private static long Mm(long millimetres) => millimetres * 1_000_000;

    private static IReadOnlySet<int>[] Rules(int[] befores) =>
        [.. befores.Select((before, visit) => before >= 0 && before < visit ? new HashSet<int> { before } : [])];

    private static VisitStand Stand((int From, int Until) stand) =>
        new(stand.From < 0 ? [] : [stand.From], [stand.Until]);

    private static IEnumerable<int[]> Orders(int[] begun) =>
        begun.Length == Visits
            ? [begun]
            : Enumerable.Range(0, Visits).Except(begun).SelectMany(next => Orders([.. begun, next]));

    private static bool IsAllowed(IReadOnlyList<int> order, IReadOnlySet<int>[] befores) =>
        order.Select((visit, place) => befores[visit].All(b => order.Take(place).Contains(b))).All(isFine => isFine);

    private static (int Most, int Total) Cost(IReadOnlyList<int> order, IReadOnlyList<VisitStand> stands)
    {
        var about = Enumerable
            .Range(1, Visits)
            .Select(made => stands.Count(s => s.LiesAbout(Done(order.Take(made)))))
            .ToList();
        return (about.Max(), about.Sum());
    }

    private static bool[] Done(IEnumerable<int> visits)
    {
        var done = new bool[Visits];
        foreach (var visit in visits)
            done[visit] = true;
        return done;
    }
}

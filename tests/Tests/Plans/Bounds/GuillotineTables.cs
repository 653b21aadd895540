using CsCheck;
using Nookwright.Bounds;

namespace Nookwright.Tests.Bounds;

/// <summary>The table of the most a guillotine cutting yields, against the recursion it stands for.</summary>
public class GuillotineTables
{
    private const int X = 40;
    private const int Y = 25;

    private static Gen<(int X, int Y, int Worth)[]> AnyThings { get; } =
        Gen.Select(Gen.Int[1, X], Gen.Int[1, Y], Gen.Int[1, 99]).Array[1, 6];

    /// <summary>Every rectangle is worth what it holds uncut, or what two smaller ones are worth with the gap between them.</summary>
    [Fact]
    public void Worths_are_those_of_trying_every_cut() =>
        Gen.Select(AnyThings, Gen.Int[0, 3])
            .Sample(
                (things, gap) =>
                {
                    var table = Filled(things, gap);
                    var tried = Tried(things, gap);
                    for (var x = 1; x <= X; x++)
                    for (var y = 1; y <= Y; y++)
                        Assert.Equal(tried[x, y], table.Worth(x, y));
                },
                iter: 100
            );

    /// <summary>Each cutting fits by area and is worth what its things are; the first is worth the most.</summary>
    [Fact]
    public void Cuttings_add_up_to_their_worth_the_best_one_first() =>
        AnyThings.Sample(
            things =>
            {
                var table = Filled(things, 0);
                var worths = table
                    .Cuttings(X, Y, others: 20)
                    .Select(uncut => uncut.Sum(u => things.Where(t => (t.X, t.Y) == u).Max(t => t.Worth)))
                    .ToList();
                Assert.Equal(table.Worth(X, Y), worths[0]);
                Assert.Equal(worths.Skip(1).OrderDescending(), worths.Skip(1));
                Assert.All(
                    table.Cuttings(X, Y, others: 20),
                    uncut => Assert.InRange(uncut.Sum(u => u.X * u.Y), 0, X * Y)
                );
            },
            iter: 100
        );

    private static GuillotineTable Filled((int X, int Y, int Worth)[] things, int gap)
    {
        var table = new GuillotineTable(
            CutPoints.Chains(X, things.Select(t => t.X), gap),
            CutPoints.Chains(Y, things.Select(t => t.Y), gap),
            gap,
            gap
        );
        foreach (var (x, y, worth) in things)
            table.Offer(x, y, worth);
        table.Fill();
        return table;
    }

    private static int[,] Tried((int X, int Y, int Worth)[] things, int gap)
    {
        var worth = new int[X + 1, Y + 1];
        for (var x = 1; x <= X; x++)
        for (var y = 1; y <= Y; y++)
        {
            var most = things.Where(t => t.X <= x && t.Y <= y).Select(t => t.Worth).Append(0).Max();
            for (var cut = 1; cut + gap < x; cut++)
                most = Math.Max(most, worth[cut, y] + worth[x - cut - gap, y]);
            for (var cut = 1; cut + gap < y; cut++)
                most = Math.Max(most, worth[x, cut] + worth[x, y - cut - gap]);
            worth[x, y] = most;
        }
        return worth;
    }
}

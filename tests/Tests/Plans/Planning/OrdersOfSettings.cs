using CsCheck;
using Nookwright.Planning;

namespace Nookwright.Tests.Planning;

/// <summary>Two ways of keeping the order of visits, for few settings and for thousands, against each other and against a walk through all rules.</summary>
public class OrdersOfSettings
{
    private const int Settings = 9;

    private static readonly Gen<(int First, int Then, bool Goes)[]> AnyChanges = Gen.Select(
        Gen.Int[0, Settings - 1],
        Gen.Int[0, Settings - 1],
        Gen.Bool
    ).Array[1, 60];

    [Fact]
    public void Both_know_what_comes_before_what_while_rules_come_and_go() =>
        AnyChanges.Sample(
            changes =>
            {
                int[] ranks = [.. Enumerable.Range(0, Settings)];
                SettingOrder[] orders = [new DenseOrder(ranks), new SparseOrder(ranks)];
                var rules = new List<(int First, int Then)>();
                foreach (var (first, then, goes) in changes)
                {
                    if (goes && rules.Remove((first, then)))
                        Each(orders, o => o.Remove(first, then));
                    else if (!goes && first != then && !Walk(rules, then, first))
                    {
                        Assert.All(orders, o => Assert.True(o.Allows(first, then)));
                        rules.Add((first, then));
                        Each(orders, o => o.Add(first, then));
                    }
                    foreach (var from in ranks)
                    foreach (var to in ranks)
                        Assert.All(orders, o => Assert.Equal(Walk(rules, from, to), o.Reaches(from, to)));
                    Assert.All(rules, r => Assert.All(orders, o => Assert.True(o.Rank(r.First) < o.Rank(r.Then))));
                }
            },
            iter: 40,
            threads: 1
        );

    private static void Each(SettingOrder[] orders, Action<SettingOrder> change)
    {
        foreach (var order in orders)
            change(order);
    }

    private static bool Walk(List<(int First, int Then)> rules, int from, int to) =>
        from == to || rules.Where(r => r.First == from).Distinct().Any(r => Walk(rules, r.Then, to));
}

using CsCheck;
using Nookwright.Planning;

namespace Nookwright.Tests.Planning;

/// <summary>The exact finish against trying every choice from small pools.</summary>
public class ChoosingSheets
{
    private const int Settings = 4;
    private const double Ample = 10;

    private static readonly Gen<PooledSheet> OneSheet = Gen.Select(
        Gen.Int[0, 1],
        Gen.Int[1, 4],
        Gen.Int[0, 2].Array[3],
        Gen.Select(Gen.Int[0, Settings - 1], Gen.Int[0, Settings - 1]).Array[0, 2],
        (stock, cost, yields, rules) => new PooledSheet(stock, cost, yields, [.. rules.Where(r => r.Item1 != r.Item2)])
    );

    private static readonly Gen<SheetQuestion> SmallQuestions = Gen.Select(
        OneSheet.Array[1, 5],
        Gen.Int[0, 2].Array[3],
        Gen.Int[1, 2].Array[2],
        Gen.Int[3, 12],
        Gen.Bool,
        (pool, wanted, quantities, below, mayRepeat) =>
            new SheetQuestion(
                pool,
                wanted,
                quantities,
                [(0, 3)],
                below,
                mayRepeat ? new HashSet<int> { 1, 2 } : new HashSet<int>()
            )
    );

    [Fact]
    public void The_choice_is_as_good_as_the_best_of_all_choices() =>
        SmallQuestions.Sample(
            question =>
            {
                var choice = new ExactChooser(Ample).Choose(question, TestContext.Current.CancellationToken);
                var best = ByTrying(question);
                Assert.Equal(best, choice is null ? null : AimOf(choice.Counts, question));
                Assert.True(choice is null || choice.IsBest);
            },
            iter: 150,
            threads: 1
        );

    [Fact]
    public void The_same_question_has_the_same_answer() =>
        SmallQuestions.Sample(
            question =>
            {
                var stop = TestContext.Current.CancellationToken;
                var (once, again) = (
                    new ExactChooser(Ample).Choose(question, stop),
                    new ExactChooser(Ample).Choose(question, stop)
                );
                Assert.Equal(once?.Counts, again?.Counts);
            },
            iter: 20,
            threads: 1
        );

    private static long? ByTrying(SheetQuestion question) =>
        Choices(question.Pool.Count).Select(c => AimOf(c, question)).Where(a => a is not null).Min();

    private static IEnumerable<int[]> Choices(int count) =>
        count == 0
            ?
            [
                [],
            ]
            : Choices(count - 1).SelectMany(c => Enumerable.Range(0, 3).Select(n => (int[])[.. c, n]));

    /// <summary>What a choice comes to; null when it is none: items missing, too dear, too many of a stock, visits in a circle.</summary>
    private static long? AimOf(IReadOnlyList<int> counts, SheetQuestion question)
    {
        var chosen = question.Pool.Zip(counts).Where(c => c.Second > 0).ToList();
        var cost = chosen.Sum(c => c.First.Cost * c.Second);
        var hasAll = question.Wanted.Select((w, k) => chosen.Sum(c => c.First.Yields[k] * c.Second) >= w).All(x => x);
        var isThere = question.Quantities.Select(
            (q, s) => chosen.Where(c => c.First.Stock == s).Sum(c => c.Second) <= q
        );
        if (!hasAll || cost >= question.CostBelow || !isThere.All(x => x))
            return null;
        var repeats = FewestRepeats([.. chosen.Select(c => c.First)], question);
        return question.MayRepeat.Count > 0 || repeats is null ? repeats : cost;
    }

    /// <summary>Tries every set of settings visited twice, and for each sheet every choice between the two visits.</summary>
    private static int? FewestRepeats(List<PooledSheet> chosen, SheetQuestion question)
    {
        var sets = Enumerable.Range(0, 1 << Settings).Where(s => Has(s).All(question.MayRepeat.Contains));
        return sets.Where(twice => Works(chosen, twice, question)).Select(s => (int?)Has(s).Count()).Min();
    }

    private static bool Works(List<PooledSheet> chosen, int twice, SheetQuestion question)
    {
        var repeated = Has(twice).ToList();
        var fixedRules =
            from rule in question.Rules
            from one in Visits(rule.First, repeated)
            from other in Visits(rule.Then, repeated)
            select (one, other);
        var twoOfOne = repeated.Select(s => (s, s + Settings));
        return Enumerable
            .Range(0, 1 << (chosen.Count * repeated.Count))
            .Any(which =>
                IsFreeOfCircles([
                    .. fixedRules,
                    .. twoOfOne,
                    .. chosen.SelectMany((s, i) => Rules(s, i, which, repeated)),
                ])
            );
    }

    private static IEnumerable<int> Visits(int setting, List<int> repeated) =>
        repeated.Contains(setting) ? [setting, setting + Settings] : [setting];

    private static IEnumerable<(int, int)> Rules(PooledSheet sheet, int index, int which, List<int> repeated)
    {
        int Visit(int setting) =>
            repeated.IndexOf(setting) is >= 0 and var at && (which >> ((index * repeated.Count) + at) & 1) != 0
                ? setting + Settings
                : setting;
        return sheet.Rules.Select(r => (Visit(r.First), Visit(r.Then)));
    }

    private static bool IsFreeOfCircles(List<(int First, int Then)> rules)
    {
        while (rules.Count > 0)
        {
            var left = rules.RemoveAll(r => !rules.Any(o => o.Then == r.First));
            if (left == 0)
                return false;
        }
        return true;
    }

    private static IEnumerable<int> Has(int set) => Enumerable.Range(0, Settings).Where(s => (set >> s & 1) != 0);
}

using CsCheck;
using Nookwright.Measure;
using Nookwright.Trouble;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Measure;

public class NamedSizesTests
{
    private static Formula Read(string text, string place = "") => Formula.Read(text, place).Value;

    private static NamedSizes Of(params (string Name, string Text)[] sizes) =>
        sizes.Aggregate(
            new NamedSizes(LengthUnit.Inches),
            (all, size) => all.DefineLength(size.Name, Read(size.Text, $"sizes/{size.Name}"))
        );

    [Fact]
    public void Sizes_may_need_each_other_in_any_order() =>
        Assert.Equal(In(20), Of(("c", "a + b"), ("b", "a - 4 in"), ("a", "12")).Look("c").Value.Length);

    [Fact]
    public void A_size_carries_its_name()
    {
        var c = Of(("c", "a + 1 in"), ("a", "12")).Look("c").Value;
        Assert.Equal("c", c.Name);
        Assert.Equal("a", c.Cause.From[0].Name);
    }

    [Fact]
    public void Each_size_is_worked_out_once_whoever_asks()
    {
        var times = 0;
        var sizes = new NamedSizes(LengthUnit.Inches)
            .Define("a", () => Named("a", In(++times)))
            .Define("b", Read("a + a"));
        Assert.Equal(In(2), sizes.Look("b").Value.Length);
        Assert.Same(sizes.Look("a").Value, sizes.Look("a").Value);
        Assert.Equal(1, times);
    }

    [Fact]
    public void A_circle_is_told_whole_and_where_it_closes()
    {
        var refusal = Of(("x", "a"), ("a", "b + 1 in"), ("b", "2 * c"), ("c", "a - 1 in")).Look("x").Refusal;
        Assert.Contains("a needs b, b needs c, c needs a", refusal.Message, StringComparison.Ordinal);
        Assert.Equal(("sizes/c", 1), (refusal.Field, refusal.Column));
    }

    [Fact]
    public void A_circle_through_a_function_is_found_too()
    {
        var sizes = new NamedSizes(LengthUnit.Inches);
        sizes.Define("a", Read("b + 1 in")).Define("b", () => sizes.Look("a"));
        Assert.Contains("a needs b, b needs a", sizes.Look("a").Refusal.Message, StringComparison.Ordinal);
        Assert.Contains("b", sizes.Look("b").Refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_size_that_needs_itself_says_so() =>
        Assert.Contains("a needs itself", Of(("a", "a + 1 in")).Look("a").Refusal.Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("1 in + box.widht", "is \"box.width\" meant?", 8)]
    [InlineData("Rail", "is \"rail\" meant?", 1)]
    [InlineData("box.width-rail", "box.width - rail", 1)]
    [InlineData("rail-2 * 1 in", "rail - 2", 1)]
    [InlineData("something.else", "check its spelling", 1)]
    public void An_unknown_name_is_told_with_its_place_and_the_nearest_one(string text, string says, int column)
    {
        var refusal = Of(("box.width", "30"), ("rail", "2"), ("it", text)).Look("it").Refusal;
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(("sizes/it", column), (refusal.Field, refusal.Column));
    }

    [Fact]
    public void Trouble_behind_a_size_keeps_the_place_where_it_is()
    {
        var refusal = Of(("a", "b + 1 in"), ("b", "c"), ("c", "1 in / 0")).Look("a").Refusal;
        Assert.Equal(("sizes/c", 8), (refusal.Field, refusal.Column));
    }

    [Fact]
    public void Names_made_by_pieces_are_found_and_may_look_up_others()
    {
        NamedSizes? sizes = null;
        sizes = new NamedSizes(LengthUnit.Inches, ByPieces, () => ["box-1.left", "box-1.right"]);
        sizes.Define("box-1.width", Named("box-1.width", In(30))).Define("next", Read("box-1.right + 1 in"));
        Assert.Equal(In(41), sizes.Look("next").Value.Length);
        Assert.Contains("box-1.right", sizes.Look("box-1.rigth").Refusal.Message, StringComparison.Ordinal);

        Outcome<Traced>? ByPieces(string name) =>
            name switch
            {
                "box-1.left" => Named(name, In(10)),
                "box-1.right" => sizes!
                    .Look("box-1.left")
                    .Then(left => sizes.Look("box-1.width").Then<Traced>(width => left + width)),
                _ => (Outcome<Traced>?)null,
            };
    }

    [Fact]
    public void A_chain_of_ten_thousand_formulas_is_no_trouble()
    {
        var sizes = Of([("s0", "1 in"), .. Enumerable.Range(1, 10_000).Select(i => ($"s{i}", $"s{i - 1} + 1 in"))]);
        var last = sizes.Look("s10000").Value;
        Assert.Equal(In(10_001), last.Length);
        Assert.Equal(20_001, last.Why().Count());
    }

    [Fact]
    public void A_chain_of_functions_too_deep_is_refused_and_named()
    {
        var sizes = new NamedSizes(LengthUnit.Inches).Define("f0", Named("f0", In(1)));
        for (var i = 1; i <= 10_000; i++)
        {
            var before = $"f{i - 1}";
            sizes.Define($"f{i}", () => sizes.Look(before));
        }
        Assert.Contains("too many sizes", sizes.Look("f10000").Refusal.Message, StringComparison.Ordinal);
        Assert.True(sizes.Look("f400").Ok);
    }

    [Fact]
    public void However_small_the_stack_a_deep_chain_is_refused_and_does_not_end_the_program()
    {
        var sizes = new NamedSizes(LengthUnit.Inches).Define("f0", Named("f0", In(1)));
        for (var i = 1; i <= 1000; i++)
        {
            var sum = Read(string.Join(" + ", Enumerable.Repeat($"f{i - 1}", 150)));
            sizes.Define($"f{i}", () => sum.Evaluate(sizes.Look, LengthUnit.Inches));
        }
        Outcome<Traced> outcome = Named("none", Length.Zero);
        var thread = new Thread(() => outcome = sizes.Look("f1000"), maxStackSize: 512 * 1024);
        thread.Start();
        thread.Join();
        Assert.False(outcome.Ok);
    }

    [Fact]
    public void Numbers_that_square_themselves_over_and_over_are_refused_in_time()
    {
        var sizes = new NamedSizes(LengthUnit.Inches).Define("s0", Read("3"));
        for (var i = 1; i <= 200; i++)
            sizes.Define($"s{i}", Read($"s{i - 1} * s{i - 1}"));
        Assert.Contains("too large", sizes.Look("s200").Refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_sizes_of_one_name_are_our_own_mistake() =>
        Assert.Throws<ArgumentException>(() => Of(("a", "1"), ("a", "2")));

    [Fact]
    public void The_order_of_asking_changes_no_answer() =>
        Gen.Int[0, 9]
            .Array[10]
            .Select(Gen.Shuffle(Enumerable.Range(0, 10).ToArray()))
            .Sample(
                (needs, order) =>
                {
                    var inOrder = Chain(needs);
                    var shuffled = Chain(needs);
                    foreach (var i in order)
                        shuffled.Look($"s{i}");
                    return Enumerable.Range(0, 10).All(i => Same(inOrder.Look($"s{i}"), shuffled.Look($"s{i}")));
                }
            );

    private static NamedSizes Chain(int[] needs) =>
        Of([.. needs.Select((need, i) => ($"s{i}", need == 9 ? "1 in" : $"s{need} + {i} in"))]);

    private static bool Same(Outcome<Traced> a, Outcome<Traced> b) =>
        a.Ok ? b.Ok && a.Value.Amount == b.Value.Amount : !b.Ok;
}

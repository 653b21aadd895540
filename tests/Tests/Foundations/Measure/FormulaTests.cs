using CsCheck;
using Fractions;
using Nookwright.Measure;
using Nookwright.Trouble;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Measure;

public class FormulaTests
{
    private static readonly Dictionary<string, Traced> Sizes = new()
    {
        ["room.back.width"] = Named("room.back.width", In(96)),
        ["box-2.left-side"] = Named("box-2.left-side", In(30)),
        ["rail"] = Named("rail", In(2)),
        ["a"] = Named("a", In(10)),
        ["n"] = Traced.Written(Quantity.Of(new Fraction(3)), "3", "sizes/n").Called("n"),
        ["lean"] = Traced.Written(Quantity.OfDegrees(new Fraction(30)), "30 deg", "sizes/lean").Called("lean"),
        ["none"] = Named("none", Length.Zero),
    };

    private static Outcome<Traced> LookUp(string name) =>
        Sizes.TryGetValue(name, out var found) ? found : new Refusal($"There is no \"{name}\".");

    private static Outcome<Traced> Evaluate(string text) =>
        Formula.Read(text).Then(formula => formula.Evaluate(LookUp, LengthUnit.Inches));

    private static Outcome<Traced> EvaluateLength(string text, LengthUnit bare = LengthUnit.Inches) =>
        Formula.Read(text).Then(formula => formula.EvaluateLength(LookUp, bare));

    /// <summary>By hand, in inches.</summary>
    [Theory]
    [InlineData("room.back.width - 1/2 in", 95.5)]
    [InlineData("(box-2.left-side - 2 * rail) / 3 + 1\"", 9.6666666667)]
    [InlineData("a / 2", 5)]
    [InlineData("1/2 in", 0.5)]
    [InlineData("8' 2 3/16\"", 98.1875)]
    [InlineData("8' - 2\"", 94)]
    [InlineData("8'-2\"", 98)]
    [InlineData("23-3/4\" + 0 in", 23.75)]
    [InlineData("a -rail", 8)]
    [InlineData("a- rail", 8)]
    [InlineData("a − 25.4 mm × 2", 8)]
    [InlineData("-a + -(-rail)", -8)]
    [InlineData("a - rail - rail", 6)]
    [InlineData("a - (rail - rail)", 10)]
    [InlineData("a / 2 / 5", 1)]
    [InlineData("a / 2 1/2", 4)]
    [InlineData("a / (1/2)", 20)]
    [InlineData("a / 1/2 in * 1 in", 20)]
    [InlineData("a / ½", 20)]
    [InlineData("2 1/2 * a", 25)]
    [InlineData("min(a, rail, 3 in)", 2)]
    [InlineData("max(a, rail,3 in)", 10)]
    [InlineData("round(10.3 in, 1/4 in)", 10.25)]
    [InlineData("floor(10.3 in, 1/2 in)", 10)]
    [InlineData("ceil(10.3 in, 1/2 in)", 10.5)]
    [InlineData("round (-10.5 in, 1 in)", -11)]
    [InlineData("floor(-10.3 in, 1/2 in)", -10.5)]
    [InlineData("abs(rail - a)", 8)]
    [InlineData("sqrt(3 in * 3 in + 4 in * 4 in)", 5)]
    [InlineData("a * sin(lean)", 5)]
    [InlineData("a * cos(60 deg)", 5)]
    [InlineData("a * tan(45°)", 10)]
    [InlineData("a * sin(180 deg)", 0)]
    [InlineData("a * cos(-360 deg)", 10)]
    [InlineData("a * sin(asin(0.5))", 5)]
    [InlineData("a * floor(a / 3 in)", 30)]
    [InlineData("a * sin(-750 deg)", -5)]
    [InlineData("a * sin(270 deg)", -10)]
    [InlineData("a * cos(0 deg)", 10)]
    [InlineData("a * tan(180 deg)", 0)]
    [InlineData("a * tan(-45 deg)", -10)]
    [InlineData("a * acos(0.5) / 60 deg", 10)]
    [InlineData("a * atan(1) / 45 deg", 10)]
    [InlineData("n * rail", 6)]
    public void It_works_out_what_a_maker_means(string text, decimal inches) =>
        Assert.Equal(Length.FromInches(inches).RoundTo(new(100)), EvaluateLength(text).Value.Length.RoundTo(new(100)));

    [Theory]
    [InlineData("23 3/4", LengthUnit.Inches, 603.25)]
    [InlineData("603.5", LengthUnit.Millimetres, 603.5)]
    [InlineData(" -1/2 ", LengthUnit.Inches, -12.7)]
    [InlineData("(12)", LengthUnit.Millimetres, 12)]
    public void Nothing_but_a_number_takes_the_documents_unit(string text, LengthUnit bare, decimal mm) =>
        Assert.Equal(Mm(mm), EvaluateLength(text, bare).Value.Length);

    [Fact]
    public void A_third_of_a_length_stays_a_third_until_the_end() =>
        Assert.Equal(In(10), EvaluateLength("a / 3 * 3").Value.Length);

    /// <summary>
    /// The side of a square is incommensurable with its diagonal (Euclid, Elements X), so the root is rounded: 14.142 135 623 7 in.
    /// </summary>
    [Fact]
    public void A_root_that_is_no_fraction_is_good_to_the_nanometre() =>
        Assert.Equal(Length.FromInches(14.1421356237310m), EvaluateLength("sqrt(2 * a * a)").Value.Length);

    [Theory]
    [InlineData("", 1, "Nothing is written")]
    [InlineData("a +", 4, "stops where")]
    [InlineData("a + * 3", 5, "\"*\" stands where")]
    [InlineData("(a + rail", 1, "never closed")]
    [InlineData("a + rail)", 9, "closes nothing")]
    [InlineData("a rail", 3, "\"rail\" is left over")]
    [InlineData("2 rail", 3, "no unit \"rail\"")]
    [InlineData("2 3", 3, "Something is missing after 2")]
    [InlineData("12 deg 30'", 8, "Minutes and seconds")]
    [InlineData("a + 603,5 mm", 8, "603.5")]
    [InlineData("max(1,2 in)", 6, "space after a comma")]
    [InlineData("a, rail", 2, "separates the values")]
    [InlineData("maxi(a, rail)", 1, "no function \"maxi\"")]
    [InlineData("round(a, rail, a)", 1, "a value and a step")]
    [InlineData("abs()", 5, "stands where")]
    [InlineData("a / 1/2", 5, "two ways")]
    [InlineData("a $ 2", 3, "\"$\" is left over")]
    [InlineData("3 in + 1/0 in", 10, "divides by nought")]
    public void What_cannot_be_read_says_where_and_what_to_do(string text, int column, string says)
    {
        var refusal = Formula.Read(text, "pieces/box-1/width").Refusal;
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.Equal((column, "pieces/box-1/width"), (refusal.Column, refusal.Field));
    }

    [Theory]
    [InlineData("a + lean", 5, "a is a length and lean is an angle")]
    [InlineData("a + rail  + lean ", 13, "a + rail is a length and")]
    [InlineData("a - 12", 5, "Write the unit: 12 in.")]
    [InlineData("12 + a", 1, "Write the unit: 12 in.")]
    [InlineData("a + (12)", 5, "Write the unit: 12 in.")]
    [InlineData("a * rail + a", 12, "an area")]
    [InlineData("a - n", 5, "write its unit where n is given")]
    [InlineData("min(a, lean)", 8, "an angle")]
    [InlineData("round(a)", 1, "wants a step")]
    [InlineData("round(a, none)", 1, "more than nought")]
    [InlineData("a / (rail - 2 in)", 5, "(rail - 2 in) is nought")]
    [InlineData("a * sin(a)", 5, "takes an angle")]
    [InlineData("asin(2)", 1, "from -1 to 1")]
    [InlineData("tan(90 deg)", 1, "no tangent")]
    [InlineData("sqrt(a)", 1, "no square root")]
    [InlineData("sqrt(a * (rail - a))", 1, "below nought")]
    [InlineData("a + b", 5, "no \"b\"")]
    public void What_cannot_be_worked_out_says_where_and_names_both_kinds(string text, int column, string says)
    {
        var refusal = Evaluate(text).Refusal;
        Assert.Contains(says, refusal.Message, StringComparison.Ordinal);
        Assert.Equal(column, refusal.Column);
    }

    [Theory]
    [InlineData("2 * 300", "comes to a plain number")]
    [InlineData("a * rail", "comes to an area")]
    [InlineData("lean", "comes to an angle")]
    [InlineData("99999999999999 m", "longer than any room")]
    public void A_length_is_asked_for_where_one_is_wanted(string text, string says) =>
        Assert.Contains(says, EvaluateLength(text).Refusal.Message, StringComparison.Ordinal);

    [Fact]
    public void It_lists_the_names_it_needs_once_with_their_columns() =>
        Assert.Equal(
            [new("room.back.width", 1), new("box-2.left-side", 20), new("rail", 42)],
            Formula.Read("room.back.width - (box-2.left-side + 2 * rail) / min(rail, 2 in)").Value.Names
        );

    [Theory]
    [InlineData("box-2.left-side", true)]
    [InlineData("_a.b_1", true)]
    [InlineData("2nd", false)]
    [InlineData("a-", false)]
    [InlineData("a.", false)]
    [InlineData("a b", false)]
    [InlineData("", false)]
    public void A_name_is_one_that_reads_back_whole(string text, bool canBe) =>
        Assert.Equal(canBe, FormulaName.CanBe(text));

    [Fact]
    public void A_result_knows_the_names_and_literals_it_came_from()
    {
        var result = Formula.Read("a - 1/2 in", "pieces/x").Then(f => f.Evaluate(LookUp, LengthUnit.Inches)).Value;
        var worked = Assert.IsType<Cause.Worked>(result.Cause);
        Assert.Equal("-", worked.Operation);
        Assert.Same(Sizes["a"], worked.Of[0]);
        Assert.Equal(new Cause.Written("1/2 in", "pieces/x"), worked.Of[1].Cause);
    }

    [Fact]
    public void A_result_is_held_while_a_reading_it_needs_is_not_taken()
    {
        var reading = Traced.Read(In(30), "box-1.width", null, isTaken: false);
        var result = Formula
            .Read("a + 2 * box-1.width")
            .Value.Evaluate(name => name == "a" ? Sizes["a"] : reading, LengthUnit.Inches);
        Assert.Equal(["box-1.width"], result.Value.Awaits);
    }

    [Fact]
    public void Formulas_deeper_or_longer_than_anyone_types_are_refused_not_crashed_on()
    {
        Assert.Contains("deep", Formula.Read(new string('(', 1000)).Refusal.Message, StringComparison.Ordinal);
        Assert.Contains("deep", Formula.Read(new string('-', 1000) + "a").Refusal.Message, StringComparison.Ordinal);
        Assert.Contains("signs long", Formula.Read(new string('1', 5000)).Refusal.Message, StringComparison.Ordinal);
        Assert.True(Evaluate(string.Join("+", Enumerable.Repeat("a", 1000))).Ok);
    }

    [Fact]
    public void The_page_for_makers_lists_every_function_there_is()
    {
        var page = File.ReadAllText(House.Checkout.File("docs", "lengths-and-formulas.md"));
        Assert.All(
            FormulaFunction.AllNames.Split(", "),
            name => Assert.Contains($"`{name}(", page, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Sums_of_numbers_agree_with_exact_fractions() =>
        AnySum.Sample(sum =>
            Evaluate(sum.Text) is var outcome
            && (sum.Value is { } value ? outcome.Value.Amount == Quantity.Of(value) : !outcome.Ok)
        );

    [Fact]
    public void No_text_at_all_makes_the_reader_stumble() =>
        Gen.OneOf(Gen.String, Gen.String[Gen.Char["0123456789 /.-'\"in+*(),an_¾°"], 0, 30])
            .Sample(text => Evaluate(text) is { Ok: true } or { Refusal.Message.Length: > 0 });

    /// <summary>A sum with its value worked out by the fraction library alone; null where it divides by nought.</summary>
    private static readonly Gen<(string Text, Fraction? Value)> AnySum = Gen.Recursive<(string Text, Fraction? Value)>(
        (depth, inner) =>
            depth > 4
                ? AnyNumber
                : Gen.OneOf(
                    AnyNumber,
                    Gen.Select(
                        inner,
                        Gen.Char["+-*/"],
                        inner,
                        (a, sign, b) => ($"({a.Text} {sign} {b.Text})", Joined(a.Value, sign, b.Value))
                    )
                )
    );

    private static Gen<(string Text, Fraction? Value)> AnyNumber =>
        Gen.OneOf(
            Gen.Int[0, 1000].Select(n => ($"{n}", (Fraction?)new Fraction(n))),
            Gen.Select(
                Gen.Int[0, 99],
                Gen.Int[0, 63],
                (n, top) => ($"{n} {top}/64", (Fraction?)(new Fraction(n) + new Fraction(top, 64)))
            ),
            Gen.Int[0, 99_999].Select(n => ($"{n / 100m:0.00}", (Fraction?)new Fraction(n, 100)))
        );

    private static Fraction? Joined(Fraction? a, char sign, Fraction? b) =>
        sign switch
        {
            '+' => a + b,
            '-' => a - b,
            '*' => a * b,
            _ => b is { IsZero: true } ? null : a / b,
        };
}

using CsCheck;
using Nookwright.Measure;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Measure;

public class LengthTextTests
{
    /// <summary>By hand, with the inch at 25 400 000 nm: 23 3/4 in is 23.75 · 25.4 mm = 603.25 mm.</summary>
    [Theory]
    [InlineData("23 3/4")]
    [InlineData("23-3/4\"")]
    [InlineData("23 - 3/4", false)]
    [InlineData("1' 11 3/4\"")]
    [InlineData("1'-11 3/4\"")]
    [InlineData("1' 11-3/4")]
    [InlineData("1'11¾\"")]
    [InlineData("1′ 11 3⁄4″")]
    [InlineData("1’ 11 3/4”")]
    [InlineData("1 ft 11 3/4 in")]
    [InlineData("1ft11.75in")]
    [InlineData("1 foot 11 3/4 inches")]
    [InlineData("23.75 in")]
    [InlineData("23.75in.")]
    [InlineData("23¾")]
    [InlineData("23 ¾ IN")]
    [InlineData("23-¾\"")]
    [InlineData("23 3/4''")]
    [InlineData("  +23\u00a03/4 ")]
    [InlineData("23 6/8")]
    [InlineData("95/4")]
    [InlineData("603.25 mm")]
    [InlineData("60.325 cm")]
    [InlineData("0.60325 m")]
    [InlineData(".60325m")]
    [InlineData("603 1/4mm")]
    public void Everything_makers_type_for_23_and_three_quarters_reads_the_same(string text, bool reads = true)
    {
        var outcome = LengthText.Read(text, LengthUnit.Inches);
        Assert.Equal(reads, outcome.Ok);
        if (reads)
            Assert.Equal(Mm(603.25m), outcome.Value);
    }

    [Theory]
    [InlineData("2 ft 3 in", 685.8)]
    [InlineData("60 cm", 600)]
    [InlineData("2 m", 2000)]
    [InlineData("⅞ in", 22.225)]
    [InlineData("-1' 6\"", -457.2)]
    [InlineData("−3 mm", -3)]
    [InlineData("603.5", 603.5)]
    [InlineData("0", 0)]
    [InlineData("1/2\"", 12.7)]
    public void A_bare_number_in_a_millimetre_document_is_millimetres_and_marks_keep_their_meaning(
        string text,
        decimal mm
    ) => Assert.Equal(Mm(mm), LengthText.Read(text, LengthUnit.Millimetres).Value);

    /// <summary>NIST SP 811 (2008), appendix B.8: inch 2.54 E-02 m, foot 3.048 E-01 m, both exact.</summary>
    [Fact]
    public void Inch_and_foot_are_the_exact_ones_of_the_published_table()
    {
        Assert.Equal(Mm(25.4m), LengthText.Read("1 in", LengthUnit.Millimetres).Value);
        Assert.Equal(Mm(304.8m), LengthText.Read("1 ft", LengthUnit.Millimetres).Value);
    }

    /// <summary>
    /// Rows of the table of decimal equivalents printed in machinists' handbooks (inch fraction, decimal inch,
    /// millimetres); the rows are from memory, and each is n · 25.4 / 64 by hand.
    /// </summary>
    [Theory]
    [InlineData("1/64", "0.015625", 0.396875)]
    [InlineData("1/32", "0.03125", 0.79375)]
    [InlineData("3/64", "0.046875", 1.190625)]
    [InlineData("1/16", "0.0625", 1.5875)]
    [InlineData("11/64", "0.171875", 4.365625)]
    [InlineData("11/32", "0.34375", 8.73125)]
    [InlineData("15/32", "0.46875", 11.90625)]
    [InlineData("23/32", "0.71875", 18.25625)]
    [InlineData("63/64", "0.984375", 25.003125)]
    public void Fractions_agree_with_the_table_of_decimal_equivalents(string fraction, string inches, decimal mm)
    {
        Assert.Equal(Mm(mm), LengthText.Read(fraction, LengthUnit.Inches).Value);
        Assert.Equal(Mm(mm), LengthText.Read(inches, LengthUnit.Inches).Value);
    }

    [Fact]
    public void Every_64th_is_a_whole_number_of_nanometres() =>
        Assert.All(
            Enumerable.Range(1, 63),
            n => Assert.Equal(n * 396_875L, LengthText.Read($"{n}/64", LengthUnit.Inches).Value.Nanometres)
        );

    /// <summary>1/3 in = 8.466 666 6… mm, so 8 466 667 nm; 1/7 in = 3 628 571.43 nm.</summary>
    [Theory]
    [InlineData("1/3 in", 8_466_667)]
    [InlineData("1/7 in", 3_628_571)]
    [InlineData("-1/3 in", -8_466_667)]
    public void What_no_nanometre_holds_goes_to_the_nearest(string text, long nanometres) =>
        Assert.Equal(nanometres, LengthText.Read(text, LengthUnit.Inches).Value.Nanometres);

    [Theory]
    [InlineData("", 1, "23 3/4 in")]
    [InlineData("   ", 4, "23 3/4 in")]
    [InlineData("abc", 1, "\"abc\"")]
    [InlineData("23 3/4 ells", 8, "no unit \"ells\"")]
    [InlineData("5 min", 3, "no unit \"min\"")]
    [InlineData("12 1/0", 6, "divides by nought")]
    [InlineData("603,5 mm", 4, "603.5")]
    [InlineData("1,200 mm", 2, "1200")]
    [InlineData("23 3/4 in long", 11, "\"long\" is left over")]
    [InlineData("23 5/4", 4, "less than one")]
    [InlineData("23.5 1/2", 6, "left over")]
    [InlineData("1' 300 mm", 4, "only inches")]
    [InlineData("12 deg", 1, "an angle")]
    [InlineData("12° 30'", 5, "left over")]
    [InlineData("1 in - 3 mm", 6, "left over")]
    [InlineData("3/4/2", 4, "left over")]
    [InlineData("99999999999999999999 m", 1, "longer than any room")]
    [InlineData("- ", 3, "No length")]
    [InlineData("12.", 3, "left over")]
    [InlineData("٣ mm", 1, "does not start")]
    public void What_cannot_be_read_says_where_and_what_to_do(string text, int column, string says)
    {
        var outcome = LengthText.Read(text, LengthUnit.Inches);
        Assert.False(outcome.Ok);
        Assert.Contains(says, outcome.Refusal.Message, StringComparison.Ordinal);
        Assert.Equal(column, outcome.Refusal.Column);
    }

    [Theory]
    [InlineData(603_250_000, LengthUnit.Inches, "23 3/4 in")]
    [InlineData(396_875, LengthUnit.Inches, "1/64 in")]
    [InlineData(18_288_000, LengthUnit.Inches, "0.72 in")]
    [InlineData(603_500_000, LengthUnit.Inches, "603.5 mm")]
    [InlineData(-12_700_000, LengthUnit.Inches, "-1/2 in")]
    [InlineData(603_250_000, LengthUnit.Millimetres, "603.25 mm")]
    [InlineData(1, LengthUnit.Millimetres, "0.000001 mm")]
    public void A_length_is_written_as_short_as_it_can_be_said_exactly(long nanometres, LengthUnit unit, string text) =>
        Assert.Equal(text, LengthText.Write(new(nanometres), unit));

    [Fact]
    public void What_is_written_reads_back_to_the_very_same_length() =>
        Gen.Select(Gen.OneOf(AnyLength, Sixtyfourths, AnyNanometres), Gen.Enum<LengthUnit>(), Gen.Enum<LengthUnit>())
            .Sample((length, unit, bare) => LengthText.Read(LengthText.Write(length, unit), bare).Value == length);

    [Fact]
    public void No_text_at_all_makes_the_reader_stumble() =>
        Gen.OneOf(Gen.String, Gen.String[Gen.Char["0123456789 /.-'\"inmft¾⁄°,"], 0, 12])
            .Sample(text =>
                LengthText.Read(text, LengthUnit.Inches) is { Ok: true } or { Refusal.Message.Length: > 0 }
            );

    private static readonly Gen<Length> Sixtyfourths = Gen.Long[-100_000, 100_000].Select(n => new Length(n * 396_875));

    private static readonly Gen<Length> AnyNanometres = Gen.Long[-long.MaxValue, long.MaxValue]
        .Select(nm => new Length(nm));
}

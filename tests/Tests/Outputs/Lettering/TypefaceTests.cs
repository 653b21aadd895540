using Nookwright.Lettering;

namespace Nookwright.Tests.Lettering;

public class TypefaceTests
{
    [Fact]
    public void Both_faces_are_TrueType_files_as_the_OpenType_specification_starts_them()
    {
        Assert.Equal([0, 1, 0, 0], Typeface.Regular.File[..4].ToArray());
        Assert.Equal([0, 1, 0, 0], Typeface.Bold.File[..4].ToArray());
    }

    [Theory]
    [InlineData('A')]
    [InlineData('9')]
    [InlineData('\u2044')]
    [InlineData('\u00d7')]
    [InlineData('\u2033')]
    [InlineData('\u00b7')]
    [InlineData('\u2013')]
    public void It_has_every_sign_the_packet_uses(char sign) => Assert.True(Typeface.Regular.Has(sign));

    [Fact]
    public void A_sign_no_font_has_is_known_to_be_missing() => Assert.False(Typeface.Regular.Has(0x6F22));

    [Fact]
    public void A_fraction_is_narrower_than_its_digits_in_a_row() =>
        Assert.True(TextMetrics.Width("23 11\u204432", 10) < TextMetrics.Width("23 11/32", 10));

    [Fact]
    public void A_text_is_as_wide_as_its_stretches()
    {
        var whole = TextMetrics.Width("23 3\u20444 in", 10);
        var apart = TextMetrics.Width("23 ", 10) + TextMetrics.Width("3\u20444", 10) + TextMetrics.Width(" in", 10);
        Assert.Equal(whole, apart, 9);
    }

    [Fact]
    public void No_line_is_wider_than_asked_and_no_word_is_lost()
    {
        const string text = "Keep the riving knife on and stand to the left of the blade, never behind the piece.";
        var lines = TextMetrics.Lines(text, 50, 3.6);
        Assert.All(lines, line => Assert.True(TextMetrics.Width(line, 3.6) <= 50));
        Assert.Equal(text, string.Join(' ', lines));
    }

    [Fact]
    public void A_size_is_never_torn_from_its_fraction_or_its_unit()
    {
        var wide = TextMetrics.Lines("cut 23 3\u20444 in", TextMetrics.Width("23 3\u20444 in", 3), 3);
        Assert.Equal(["cut", "23 3\u20444 in"], wide);
    }
}

using Nookwright.Paper;

namespace Nookwright.Tests.Paper;

public class AlikeNamesTests
{
    [Theory]
    [InlineData("left side of box 1, 2, 3", "left side of box 1", "left side of box 2", "left side of box 3")]
    [InlineData(
        "bottom of box 1, 2; top of box 1, 2",
        "bottom of box 1",
        "top of box 1",
        "bottom of box 2",
        "top of box 2"
    )]
    [InlineData(
        "member 1, 2 of base 4, 5",
        "member 1 of base 4",
        "member 2 of base 4",
        "member 1 of base 5",
        "member 2 of base 5"
    )]
    [InlineData("member 1 of base 4; member 2 of base 5", "member 1 of base 4", "member 2 of base 5")]
    [InlineData("top; top layer 2", "top", "top layer 2")]
    [InlineData(
        "shelf b1, b2 of bench 3, 4",
        "shelf b1 of bench 3",
        "shelf b2 of bench 3",
        "shelf b1 of bench 4",
        "shelf b2 of bench 4"
    )]
    [InlineData("corner filler", "corner filler", "corner filler")]
    public void Names_that_differ_in_one_number_are_told_together(string together, params string[] names) =>
        Assert.Equal(together, AlikeNames.Together(names));
}

using CsCheck;
using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Files;

public class BrokenTextTests
{
    private static readonly string Whole = JobFile.Write(NewProject.Blank(LengthUnit.Inches));

    private static readonly string[] Scraps = ["", "null", "-1e99", "[[", "}", "\"", "\0", ",", "é", "{}", "\\u"];

    [Fact]
    public void A_file_cut_off_anywhere_is_refused_with_its_last_line() =>
        Gen.Int[1, Whole.Length - 3]
            .Sample(length =>
            {
                var cut = Whole[..length];
                var refusal = JobFile.ReadText(cut, "a.nook.json").Refusal;
                Assert.InRange(refusal.Line!.Value, cut.TrimEnd().Split('\n').Length, cut.Split('\n').Length);
            });

    [Fact]
    public void Whatever_is_done_to_a_file_it_opens_or_is_refused_and_nothing_is_thrown() =>
        Gen.Select(Gen.Int[0, Whole.Length - 2], Gen.Int[0, 40], Gen.Int[0, Scraps.Length - 1].Select(i => Scraps[i]))
            .Sample(
                (at, taken, put) =>
                {
                    var text = Whole.Remove(at, Math.Min(taken, Whole.Length - at)).Insert(at, put);
                    var opened = JobText.Open(text, "a.nook.json");
                    Assert.Equal(opened.Project is null, opened.Refusals.Count > 0);
                    Assert.All(
                        opened.Refusals,
                        refusal => Assert.InRange(refusal.Line ?? 0, 1, text.Split('\n').Length)
                    );
                    Assert.All(opened.Refusals, refusal => Assert.DoesNotContain("invalid", refusal.Message));
                },
                iter: 2000
            );

    [Fact]
    public void All_that_does_not_fit_is_said_at_once_in_the_order_of_the_file()
    {
        var text = Whole.Replace("\"14 in\"", "[]").Replace("\"value\": \"95 3/4 in\"", "\"value\": \"\"");
        Assert.Equal(
            ["room/readings/ceiling/value", "pieces/box-1/depth"],
            JobText.Open(text, "a").Refusals.Select(refusal => refusal.Field)
        );
    }

    [Fact]
    public void A_mark_of_byte_order_is_passed_over() => Assert.True(JobFile.ReadText("\uFEFF" + Whole, "a").Ok);

    [Fact]
    public void Brackets_without_end_are_refused() =>
        Assert.Equal(
            "a:1: Brackets stand more than 64 deep here, and no job needs that.",
            JobFile.ReadText(new string('[', 100_000), "a").Refusal.ToString()
        );
}

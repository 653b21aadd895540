using Nookwright.Files;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Files;

public class DemoTests
{
    public static TheoryData<string> Demos =>
        [.. Directory.GetFiles(Checkout.File("demo"), "*.nook.json").Select(path => Path.GetFileName(path))];

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_demo_opens_and_comes_back_the_same_from_a_second_writing(string demo)
    {
        var opened = JobFile.Open(Checkout.File("demo", demo));
        Assert.Empty(opened.Refusals);
        var text = JobFile.Write(opened.Project!);
        Assert.Equal(text, JobFile.Write(JobFile.ReadText(text, demo).Value));
    }

    [Fact]
    public void The_example_in_the_documentation_opens()
    {
        var page = File.ReadAllText(Checkout.File("docs", "document.md"));
        var example = page.Split("```jsonc\n")[1].Split("```")[0];
        Assert.Empty(JobText.Open(example, "document.md").Refusals);
    }
}

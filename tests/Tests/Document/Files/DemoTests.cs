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
}

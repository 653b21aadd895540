using System.Text.RegularExpressions;
using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Tests.House;
using static Nookwright.Tests.Design.DesignGiven;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

public partial class NamesPageTests
{
    private static readonly Project Sample = Metric(
        Box("box-1", "600", "700", "500") with
        {
            Top = BoxTop.Stretchers,
            Back = new() { Material = "thin" },
        },
        new Doors
        {
            Id = "door-1",
            Box = "box-1",
            Material = "ply",
            Count = 2,
        },
        new ToeBase
        {
            Id = "base-1",
            Material = "ply",
            Width = "600",
            Depth = "430",
            Height = "90",
        },
        new Slab
        {
            Id = "top",
            Material = "ply",
            Width = "1500",
            Depth = "500",
            Return = ReturnSide.Left,
            ReturnLength = "400",
            ReturnDepth = "400",
        }
    ) with
    {
        Readings = [new() { Name = "run.width", Planned = "box-1.width" }],
    };

    [Fact]
    public void Every_name_on_the_page_has_a_number()
    {
        var sizes = new Dictionary<string, Traced> { ["room.width"] = Named("room.width", Mm(1800)) };
        var built = BuiltIn.Of(Sample, NoRoom with { Sizes = sizes });
        var page = File.ReadAllText(Checkout.File("docs", "names.md"));
        var names = NameOnPage().Matches(page).Select(match => match.Groups[1].Value).Distinct().ToList();
        Assert.True(names.Count > 20);
        Assert.Empty(names.Except(built.Sizes.Keys));
    }

    [GeneratedRegex(@"`([a-z0-9-]+(?:\.[a-z0-9-]+)+)`")]
    private static partial Regex NameOnPage();
}

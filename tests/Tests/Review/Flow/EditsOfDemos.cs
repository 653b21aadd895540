using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Projects;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Flow;

/// <summary>A demo is planned, then edited, as on the page: few parts move.</summary>
public class EditsOfDemos
{
    [Theory]
    [InlineData("window-nook", "pieces/base-2/depth", "13 1/2 in")]
    [InlineData("window-nook", "pieces/box-3/shelves/shelf/setBack", "2 in")]
    [InlineData("shelf-wall", "sizes/shelf-depth/size", "270 mm")]
    public void An_edit_of_one_piece_leaves_most_parts_where_they_were(string demo, string field, string text)
    {
        var project = JobFile.Read(Checkout.File("demo", $"{demo}.nook.json")).Value;
        var before = Planned(Workbook.Of(project));
        var edited = project.SetField(field, text).Value;
        var after = Planned(Workbook.Of(edited).After(before));
        var anew = Planned(Workbook.Of(edited));
        Assert.InRange(after.Moved.Count, 0, before.CutRequest.Parts.Count / 5);
        Assert.True(after.Plan!.Visits.Count <= anew.Plan!.Visits.Count);
        Assert.True(after.Plan.Sheets.Count <= anew.Plan.Sheets.Count);
    }

    private static Workbook Planned(Workbook workbook) =>
        workbook.WithPlan(null, TestContext.Current.CancellationToken);
}

using Bunit;
using Nookwright.Projects;
using Nookwright.Web.Fragments;
using Nookwright.Web.Sessions;

namespace Nookwright.Browser.Fragments;

/// <summary>One field by itself, without a browser.</summary>
public sealed class FieldRowTests : BunitContext
{
    private readonly JobCopies _jobs = new();
    private readonly Desk _desk;

    public FieldRowTests() => _desk = new(JobSession.Open(_jobs.FileOf("window-nook")).Session!, "window-nook");

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        if (disposing)
            _jobs.Dispose();
    }

    [Fact]
    public void A_plain_length_says_itself_and_a_formula_says_what_it_comes_to()
    {
        Assert.Empty(Row("box-depth").FindAll(".value"));
        Assert.Contains("30 13⁄16 in", Row("box-width").Find(".value").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_refused_text_stays_in_the_field_until_it_is_put_back()
    {
        var row = Row("box-depth");
        row.Find("input").Change("20 inchs");
        Assert.Equal("20 inchs", row.Find("input").GetAttribute("value"));
        Assert.Equal(row.Find(".refusal").Id, row.Find("input").GetAttribute("aria-describedby"));
        row.Find(".refusal button").Click();
        Assert.Equal("20 in", row.Find("input").GetAttribute("value"));
        Assert.Empty(row.FindAll(".refusal"));
    }

    [Fact]
    public void A_refused_text_goes_when_the_document_changes_elsewhere()
    {
        var row = Row("box-depth");
        row.Find("input").Change("20 inchs");
        _desk.Session.SetField("sizes/box-depth/size", "19 in");
        _desk.CatchUp();
        row.Render(parameters => parameters.Add(p => p.Field, FieldOf("box-depth")));
        Assert.Equal("19 in", row.Find("input").GetAttribute("value"));
        Assert.Empty(row.FindAll(".refusal"));
    }

    private IRenderedComponent<FieldRow> Row(string size) =>
        Render<FieldRow>(parameters => parameters.Add(p => p.Desk, _desk).Add(p => p.Field, FieldOf(size)));

    private Field FieldOf(string size)
    {
        var project = _desk.Now.Project;
        return project
            .FieldsOf(project.Sizes.Single(named => named.Name == size))
            .Single(f => f.Kind == FieldKind.Size);
    }
}

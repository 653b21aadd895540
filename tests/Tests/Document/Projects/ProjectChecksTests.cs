using CsCheck;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Projects;

public class ProjectChecksTests
{
    private static readonly Project Job = NewProject.Blank(LengthUnit.Millimetres);

    public static TheoryData<string, Project, string> Broken =>
        new()
        {
            {
                "same id",
                Job with
                {
                    Pieces = [Box("a"), Box("b"), Box("a")],
                },
                "pieces/2/id: Something else here is called \"a\" too: give one of them another name."
            },
            {
                "id of a material",
                Job with
                {
                    Pieces = [Box("ply")],
                },
                "pieces/0/id: Something else here is called \"ply\" too: give one of them another name."
            },
            {
                "no name",
                Job with
                {
                    Pieces = [Box("box 1")],
                },
                "pieces/0/id: \"box 1\" cannot stand in a formula: begin with a letter, go on with letters, digits, _ or - "
                    + "between two of them."
            },
            {
                "dot in an id",
                Job with
                {
                    Pieces = [Box("box.1")],
                },
                "pieces/0/id: \"box.1\" cannot stand in a formula: begin with a letter, go on with letters, digits, _ or - "
                    + "between two of them."
            },
            {
                "side of a piece",
                Job with
                {
                    Sizes = [.. Job.Sizes, new() { Name = "box-1.width", Size = "1" }],
                },
                "sizes/1/name: In a formula \"box-1.width\" would be taken for a side of \"box-1\": choose another name."
            },
            {
                "the room",
                Job with
                {
                    Pieces = [Box("room")],
                },
                "pieces/0/id: \"room\" means the room itself in formulas: choose another name."
            },
            {
                "missing material",
                Job with
                {
                    Pieces = [Box("a") with { Material = "plu" }],
                },
                "pieces/a/material: There is no material \"plu\": add it to shop/sheets, or name one that is there. Did you "
                    + "mean \"ply\"?"
            },
            {
                "missing edging",
                Job with
                {
                    Pieces = [Box("a") with { FrontEdge = "tape" }],
                },
                "pieces/a/frontEdge: There is no edging \"tape\": add it to shop/edgings, or name one that is there."
            },
            {
                "missing piece in a row",
                Job with
                {
                    Rows = [new() { Id = "r", Pieces = ["box-1", "box-12345678"] }],
                },
                "rows/r/pieces/1: There is no piece \"box-12345678\": add it to pieces, or name one that is there."
            },
            {
                "twice in a row",
                Job with
                {
                    Rows = [new() { Id = "r", Pieces = ["box-1", "box-1"] }],
                },
                "rows/r/pieces/1: \"box-1\" stands in this row twice: take one away."
            },
            {
                "panel of no piece",
                Job with
                {
                    Matches = [new() { Id = "m", Panels = ["cap-7.front"] }],
                },
                "matches/m/panels/0: There is no piece \"cap-7\": add it to pieces, or name one that is there."
            },
            {
                "a piece for a panel",
                Job with
                {
                    Runs = [new() { Id = "g", Panels = ["box-1"] }],
                },
                "runs/g/panels/0: \"box-1\" names a piece, and a panel of it is wanted: write \"box-1.\" and the panel's name."
            },
            {
                "same shelf",
                Job with
                {
                    Pieces = [Box("a") with { Shelves = [Shelf, Shelf] }],
                },
                "pieces/0/shelves/1/id: Something else here is called \"s\" too: give one of them another name."
            },
            {
                "ten thousand pieces",
                Job with
                {
                    Pieces = [.. Enumerable.Range(0, 10_000).Select(i => Box($"b{i}"))],
                },
                "pieces: There are 10000 pieces here, and one job takes 1000: make several jobs of it."
            },
        };

    private static BoxShelf Shelf => new() { Id = "s", At = "100" };

    [Theory]
    [MemberData(nameof(Broken), DisableDiscoveryEnumeration = true)]
    public void What_does_not_hold_is_said_with_its_field(string what, Project job, string message)
    {
        Assert.NotEmpty(what);
        Assert.Equal(message, Assert.Single(ProjectChecks.Of(job)).ToString());
    }

    [Fact]
    public void A_reading_may_be_called_after_the_piece_it_is_read_from() =>
        Assert.Empty(ProjectChecks.Of(Job with { Readings = [new() { Name = "box-1.opening", Planned = "1" }] }));

    [Theory]
    [InlineData(LengthUnit.Inches)]
    [InlineData(LengthUnit.Millimetres)]
    public void A_new_document_holds(LengthUnit unit) => Assert.Empty(ProjectChecks.Of(NewProject.Blank(unit)));

    [Fact]
    public void Any_job_with_names_that_stand_for_one_thing_holds() =>
        AnyJob.Project.Sample(job => Assert.Empty(ProjectChecks.Of(job)), iter: 100);

    private static Carcass Box(string id) =>
        new()
        {
            Id = id,
            Width = "600",
            Height = "700",
            Depth = "300",
        };
}

using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Projects;

public class FieldsTests
{
    private static readonly Project Job = NewProject.Blank(LengthUnit.Inches) with
    {
        Pieces =
        [
            new Carcass
            {
                Id = "box-1",
                Material = "ply",
                Width = "30 in",
                Height = "30 in",
                Depth = "14 in",
                Shelves = [new() { Id = "mid", At = "12 in" }],
            },
        ],
    };

    [Fact]
    public void A_box_tells_its_fields_with_what_stands_in_them()
    {
        var fields = Job.FieldsOf(Job.Pieces[0]).ToDictionary(field => field.Path);
        AssertField("width, outside", FieldKind.Size, "30 in", false, fields["pieces/box-1/width"]);
        AssertField("from the left", FieldKind.Size, "", true, fields["pieces/box-1/at/x"]);
        AssertField("made of", FieldKind.Reference, "ply", true, fields["pieces/box-1/material"]);
        AssertField("back", FieldKind.Choice, "panel", true, fields["pieces/box-1/back/kind"]);
        AssertField("number of slats", FieldKind.Count, "", true, fields["pieces/box-1/back/slats"]);
        AssertField(
            "shelf mid: underside above the bottom",
            FieldKind.Size,
            "12 in",
            false,
            fields["pieces/box-1/shelves/mid/at"]
        );
        Assert.Equal(["ply"], fields["pieces/box-1/material"].Choices);
        Assert.Equal(["panel", "slats", "open"], fields["pieces/box-1/back/kind"].Choices);
        Assert.DoesNotContain("pieces/box-1/id", fields.Keys);
    }

    [Fact]
    public void A_sheet_tells_its_stock_by_number() =>
        Assert.Contains(
            Job.FieldsOf(Job.Shop.Sheets[0]),
            field =>
                field is { Path: "shop/sheets/ply/stock/0/length", Label: "stock size 1: length, along the figure" }
        );

    [Fact]
    public void The_shop_tells_its_saws() =>
        Assert.Contains(Job.FieldsOfShop(), field => field is { Path: "shop/tableSaw/kerf", Label: "table saw, kerf" });

    [Fact]
    public void The_job_tells_what_holds_for_all_of_it() =>
        Assert.Equal(["name", "units", "mark", "paper", "note"], Job.FieldsOfJob().Select(field => field.Path));

    [Fact]
    public void No_word_is_kept_for_a_field_that_is_gone()
    {
        var known = typeof(Project)
            .Assembly.GetTypes()
            .SelectMany(type => type.GetProperties())
            .Select(p => $"{p.DeclaringType!.Name}.{p.Name}");
        Assert.Empty(FieldWords.Table.Keys.Except(known));
    }

    private static void AssertField(string label, FieldKind kind, string text, bool canBeEmpty, Field field) =>
        Assert.Equal((label, kind, text, canBeEmpty), (field.Label, field.Kind, field.Text, field.CanBeEmpty));
}

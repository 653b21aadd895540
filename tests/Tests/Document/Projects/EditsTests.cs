using CsCheck;
using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Projects;

public class EditsTests
{
    private static readonly Project Job = NewProject.Blank(LengthUnit.Inches) with
    {
        Sizes = [new() { Name = "pitch", Size = "box-1.height + 2 * a-box-1.gap - box-10.width" }],
        Readings = [new() { Name = "run.width", Planned = "47 in" }],
        Pieces =
        [
            new Carcass
            {
                Id = "box-1",
                Width = "30 in",
                Height = "30 in",
                Depth = "14 in",
                Shelves = [new() { Id = "mid", At = "12 in" }],
            },
            new Doors { Id = "doors-1", Box = "box-1" },
            new Filler
            {
                Id = "filler",
                Width = "(48 in - box-1.width) / 2",
                Height = "box-1.top",
            },
        ],
        Rows = [new() { Id = "row", Pieces = ["box-1", "filler"] }],
        Runs = [new() { Id = "figure", Panels = ["doors-1.left", "box-1.back"] }],
    };

    [Theory]
    [InlineData("pieces/box-1/width", "23 3/4 in")]
    [InlineData("pieces/box-1/at/x", "box-1.width / 2")]
    [InlineData("pieces/box-1/shelves/mid/at", "11\"")]
    [InlineData("pieces/box-1/joint", "dado")]
    [InlineData("pieces/doors-1/count", "2")]
    [InlineData("sizes/pitch/size", "32 mm")]
    [InlineData("readings/run.width/taken", "46 15/16 in")]
    [InlineData("readings/run.width/date", "2026-11-02")]
    [InlineData("shop/sheets/ply/measured", "0.72 in")]
    [InlineData("shop/sheets/ply/hasFigure", "no")]
    [InlineData("shop/sheets/ply/stock/0/price", "64.5")]
    [InlineData("shop/tableSaw/kerf", "3/32")]
    [InlineData("shop/tableSaw/crosscutWidth", "24 in")]
    [InlineData("shop/chunkKilograms", "18")]
    [InlineData("shop/sheets/ply/stock/0/outOfSquare", "3/16 in")]
    [InlineData("shop/sheets/ply/stock/0/trustsEdges", "yes")]
    [InlineData("cutting/extraVisits", "2")]
    [InlineData("cutting/boxByBox", "yes")]
    [InlineData("room/readings/ceiling/value", "96 in")]
    [InlineData("name", " Nook ")]
    public void A_field_is_set_by_its_path_and_nothing_else_changes(string path, string text)
    {
        var edited = Job.SetField(path, text).Value;
        Assert.Equal(text, Records.Leaves.Of(edited).Single(leaf => leaf.Path == path).Text);
        var changed = Records.Leaves.Of(edited).Except(Records.Leaves.Of(Job), SeenAlike.Comparer);
        Assert.Equal([path], changed.Select(leaf => leaf.Path));
    }

    [Theory]
    [InlineData("pieces/box-9/width", "1", "There is no \"box-9\" in this list. It holds box-1, doors-1, filler.")]
    [InlineData(
        "shop/tableSaw/colour",
        "1",
        "There is no field \"colour\" here. There are kerf, ripReach, crosscutReach, crosscutWidth."
    )]
    [InlineData("pieces/box-1/width/x", "1", "There is no field \"x\" here.")]
    [InlineData("pieces/box-1/back", "1", "This holds several fields: name the one to change.")]
    [InlineData(
        "pieces/box-1/width",
        " ",
        "This cannot be left empty: write a size such as \"23 3/4 in\" or a formula."
    )]
    [InlineData("pieces/doors-1/count", "3", "Expected a whole number from 1 to 2, found 3.")]
    [InlineData("pieces/doors-1/style", "flush", "Expected one of \"inset\", \"overlay\", found \"flush\".")]
    [InlineData("shop/sheets/ply/hasFigure", "maybe", "Expected true or false, found \"maybe\".")]
    [InlineData("version", "2", "The program writes this field itself: leave it as it is.")]
    [InlineData(
        "pieces/box-1/material",
        "oak",
        "There is no material \"oak\": add it to shop/sheets, or name one that is there."
    )]
    [InlineData(
        "pieces/doors-1/box",
        "boxx-1",
        "There is no piece \"boxx-1\": add it to pieces, or name one that is there. Did you mean \"box-1\"?"
    )]
    [InlineData("pieces/doors-1/box", "filler", "\"filler\" is not a box, and doors hang on a box: name one.")]
    public void What_cannot_be_set_is_said_with_its_field(string path, string text, string message)
    {
        var refusal = Job.SetField(path, text).Refusal;
        Assert.Equal((message, path), (refusal.Message, refusal.Field));
    }

    [Fact]
    public void A_size_that_cannot_be_read_is_said_with_its_column()
    {
        var refusal = Job.SetField("pieces/box-1/width", "12 in + * 2").Refusal;
        Assert.Equal(("pieces/box-1/width", 9), (refusal.Field, refusal.Column));
    }

    [Fact]
    public void Nothing_typed_takes_a_field_away_that_can_be_left_out()
    {
        var placed = Job.SetField("pieces/box-1/at/x", "1 in").Value;
        Assert.Equal(JobFile.Write(Job), JobFile.Write(placed.SetField("pieces/box-1/at/x", "").Value));
    }

    [Fact]
    public void A_reading_is_taken_with_its_day_and_given_back()
    {
        var taken = Job.TakeReading("run.width", "46 15/16 in", new DateOnly(2026, 11, 2)).Value;
        Assert.Equal(
            ("46 15/16 in", new DateOnly(2026, 11, 2)),
            (taken.Readings[0].Taken!.Value.Text, taken.Readings[0].Date)
        );
        Assert.Equal(JobFile.Write(Job), JobFile.Write(taken.TakeReading("run.width", "", default).Value));
    }

    [Fact]
    public void A_piece_is_added_last_and_its_id_must_be_new()
    {
        var trim = new Trim
        {
            Id = "cap",
            Length = "48 in",
            Width = "2 in",
        };
        Assert.Same(trim, Job.AddPiece(trim).Value.Pieces[^1]);
        Assert.Equal(
            "pieces/3/id: Something else here is called \"filler\" too: give one of them another name.",
            Job.AddPiece(trim with { Id = "filler" }).Refusal.ToString()
        );
    }

    [Fact]
    public void Any_other_change_is_taken_only_if_the_document_still_holds()
    {
        var size = new NamedSize { Name = "rail", Size = "2 in" };
        Assert.Equal(2, Job.Change(job => job with { Sizes = [.. job.Sizes, size] }).Value.Sizes.Count);
        Assert.Equal("sizes/2/name", Job.Change(job => job with { Sizes = [.. job.Sizes, size, size] }).Refusal.Field);
        var doors = new Doors
        {
            Id = "d",
            Box = "box-1",
            Count = 5,
        };
        Assert.Equal("pieces/d/count", Job.AddPiece(doors).Refusal.Field);
    }

    [Fact]
    public void A_piece_taken_away_leaves_rows_and_runs_and_a_box_with_doors_stays()
    {
        Assert.Equal(
            "The doors \"doors-1\" hang on \"box-1\": take them away first.",
            Job.RemovePiece("box-1").Refusal.Message
        );
        var bare = Job.RemovePiece("doors-1").Then(job => job.RemovePiece("box-1")).Value;
        Assert.Equal(["filler"], bare.Pieces.Select(piece => piece.Id));
        Assert.Equal(["filler"], bare.Rows[0].Pieces);
        Assert.Empty(bare.Runs[0].Panels);
    }

    [Fact]
    public void A_piece_gets_another_name_wherever_it_is_named()
    {
        var renamed = Job.RenamePiece("box-1", "tall").Value;
        Assert.Equal("tall.height + 2 * a-box-1.gap - box-10.width", renamed.Sizes[0].Size.Text);
        Assert.Equal("tall", Assert.IsType<Doors>(renamed.Pieces[1]).Box);
        Assert.Equal("(48 in - tall.width) / 2", Assert.IsType<Filler>(renamed.Pieces[2]).Width.Text);
        Assert.Equal(["tall", "filler"], renamed.Rows[0].Pieces);
        Assert.Equal(["doors-1.left", "tall.back"], renamed.Runs[0].Panels);
        Assert.Equal(JobFile.Write(Job), JobFile.Write(renamed.RenamePiece("tall", "box-1").Value));
    }

    [Fact]
    public void A_field_set_to_what_it_says_already_changes_nothing() =>
        AnyJob.Project.Sample(
            job =>
                Assert.All(
                    AllFields(job).Where(field => field.Text.Length > 0 || field.CanBeEmpty),
                    field => Assert.Equal(JobFile.Write(job), JobFile.Write(job.SetField(field.Path, field.Text).Value))
                ),
            iter: 10
        );

    private static IEnumerable<Field> AllFields(Project job) =>
        [
            .. job.Pieces.SelectMany(job.FieldsOf),
            .. job.Sizes.SelectMany(job.FieldsOf),
            .. job.Readings.SelectMany(job.FieldsOf),
            .. job.Rows.SelectMany(job.FieldsOf),
            .. job.Shop.Sheets.SelectMany(job.FieldsOf),
            .. job.Shop.Edgings.SelectMany(job.FieldsOf),
            .. job.Room.Readings.SelectMany(job.FieldsOf),
            .. job.Room.Things.SelectMany(job.FieldsOf),
            .. job.FieldsOfShop(),
            .. job.FieldsOfCutting(),
            .. job.FieldsOfJob(),
        ];

    private sealed class SeenAlike : IEqualityComparer<Records.Leaf>
    {
        public static readonly SeenAlike Comparer = new();

        public bool Equals(Records.Leaf? a, Records.Leaf? b) => (a!.Path, a.Text) == (b!.Path, b.Text);

        public int GetHashCode(Records.Leaf leaf) => leaf.Path.GetHashCode(StringComparison.Ordinal);
    }
}

using System.Text.Json.Nodes;
using Nookwright.Files;

namespace Nookwright.Tests.Files;

public class MigrationsTests
{
    private static readonly Migrations Later = new([
        new(2, "the name moves into a title", Retitle),
        new(3, "a title is a list", job => job["title"] = new JsonArray(job["title"]?.DeepClone())),
    ]);

    [Fact]
    public void An_older_document_takes_every_step_from_its_own_version_on()
    {
        var job = JsonNode.Parse("""{ "version": 1, "name": "Bay" }""")!.AsObject();
        Assert.Null(Later.BringUpToDate(job));
        Assert.Equal("""{"version":3,"title":["Bay"]}""", job.ToJsonString());
    }

    [Fact]
    public void A_document_half_way_takes_only_the_rest()
    {
        var job = JsonNode.Parse("""{ "version": 2, "title": "Bay" }""")!.AsObject();
        Assert.Null(Later.BringUpToDate(job));
        Assert.Equal("""{"version":3,"title":["Bay"]}""", job.ToJsonString());
    }

    [Theory]
    [InlineData(
        "4",
        "This document has version 4 and this program knows versions up to 3: open it with a newer Nookwright. The file is as it was."
    )]
    [InlineData("0", "Expected the version of the document's form, from 1 to 3: write \"version\": 3 if it is new.")]
    [InlineData(
        "\"3\"",
        "Expected the version of the document's form, from 1 to 3: write \"version\": 3 if it is new."
    )]
    [InlineData("2.5", "Expected the version of the document's form, from 1 to 3: write \"version\": 3 if it is new.")]
    public void A_version_it_does_not_know_is_refused_and_the_document_left_alone(string version, string message)
    {
        var text = $$"""{"version":{{version}},"name":"Bay"}""";
        var job = JsonNode.Parse(text)!.AsObject();
        Assert.Equal(message, Later.BringUpToDate(job)!.Message);
        Assert.Equal(text, job.ToJsonString());
    }

    [Fact]
    public void Steps_lead_on_without_a_gap() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Migrations([new(3, "too far", _ => { })]));

    [Fact]
    public void An_issued_plan_goes_through_every_step_untouched()
    {
        const string Issued =
            """[{"round":1,"date":"2026-11-25","plan":{"format":"nookwright-plan","version":1,"x":600.000001}}]""";
        var job = JsonNode.Parse($$"""{ "version": 1, "name": "Bay", "issued": {{Issued}} }""")!.AsObject();
        Assert.Null(Later.BringUpToDate(job));
        Assert.Equal(Issued, job["issued"]!.ToJsonString());
    }

    [Fact]
    public void A_document_of_version_1_opens_for_ever()
    {
        var opened = JobFile.Open(House.Checkout.File("tests", "Tests", "Document", "Files", "version-1.nook.json"));
        Assert.Empty(opened.Refusals);
        Assert.Equal(
            ["carcass", "doors", "toe-base", "top", "runner", "support-box", "shelf", "filler", "trim", "panel"],
            opened.Project!.Pieces.Select(piece => piece.Id)
        );
        Assert.Equal(Migrations.Known.Newest, opened.Project.Version);
        Assert.Equal("a person", opened.Project.Unknown!["addedBy"].GetString());
    }

    [Fact]
    public void An_older_document_is_opened_by_the_reader_through_its_steps()
    {
        var steps = new Migrations([new(2, "units are said in full", job => job["units"] = "inches")]);
        var opened = JobText.Open("""{ "format": "nookwright-job", "version": 1, "units": "in" }""", "a", steps);
        Assert.Equal(2, opened.Project!.Version);
    }

    private static void Retitle(JsonObject job)
    {
        job["title"] = job["name"]?.DeepClone();
        job.Remove("name");
    }
}

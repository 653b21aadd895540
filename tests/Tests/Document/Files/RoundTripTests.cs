using System.Text.Json.Nodes;
using CsCheck;
using Nookwright.Files;
using Nookwright.Projects;
using Nookwright.Records;

namespace Nookwright.Tests.Files;

public class RoundTripTests
{
    private const int Times = 300;

    [Fact]
    public void What_is_read_is_what_the_file_says_field_by_field() =>
        AnyJob.Json.Sample(
            json =>
            {
                var project = Read(json.ToJsonString());
                Assert.All(
                    Leaves.Of(project).Where(leaf => In(json, leaf.Path) is not null),
                    leaf => Assert.Equal(Text(In(json, leaf.Path)!), leaf.Text)
                );
            },
            iter: Times
        );

    [Fact]
    public void What_is_written_reads_back_as_the_same_and_writes_the_same_again() =>
        AnyJob.Project.Sample(
            project =>
            {
                var text = JobFile.Write(project);
                var again = Read(text);
                Assert.Equal(Leaves.Of(project).Select(Seen), Leaves.Of(again).Select(Seen));
                Assert.Equal(text, JobFile.Write(again));
            },
            iter: Times
        );

    [Fact]
    public void A_field_nobody_knows_is_kept_wherever_it_stands() =>
        AnyJob.Json.Sample(
            json =>
            {
                var strange = Strange(json).ToList();
                var written = JsonNode.Parse(JobFile.Write(Read(json.ToJsonString())))!.AsObject();
                Assert.Equal(strange, Strange(written));
            },
            iter: Times
        );

    [Fact]
    public void Comments_and_trailing_commas_are_taken_and_a_bare_number_stays_as_it_was_written()
    {
        const string Text = """
            {
              // from the kitchen table
              "format": "nookwright-job", "version": 1, "units": "millimetres",
              "sizes": [ { "name": "a", "size": 12.50, }, ], /* done */
            }
            """;
        Assert.Equal("12.50", Read(Text).Sizes.Single().Size.Text);
    }

    [Fact]
    public void A_field_that_is_null_counts_as_left_out()
    {
        const string Text = """
            { "format": "nookwright-job", "version": 1, "units": "inches", "room": null, "pieces": [
              { "kind": "trim", "id": "t", "length": "1", "width": "1", "at": null, "lie": null, "note": null } ] }
            """;
        var trim = Assert.IsType<Trim>(Read(Text).Pieces.Single());
        Assert.Equal(PanelLie.UprightAlongX, trim.Lie);
        Assert.NotNull(trim.At);
        Assert.Empty(Read(Text).Room.Readings);
    }

    private static Project Read(string text) => JobFile.ReadText(text, "any.nook.json").Value;

    private static (string, string) Seen(Leaf leaf) => (leaf.Path, leaf.Text);

    private static JsonNode? In(JsonNode? json, string path) =>
        path.Split('/')
            .Aggregate(
                json,
                (at, step) =>
                    at switch
                    {
                        JsonArray list => list[FieldPath.IndexOf(list, step)],
                        JsonObject thing => thing[step],
                        _ => null,
                    }
            );

    private static string Text(JsonNode json) =>
        json switch
        {
            JsonArray => "",
            JsonObject => json.ToJsonString(RecordJson.Options),
            JsonValue value when value.TryGetValue(out bool yes) => yes ? "yes" : "no",
            _ => json.ToString(),
        };

    private static IEnumerable<string> Strange(JsonNode? json) =>
        json switch
        {
            JsonObject thing => thing
                .OrderBy(field => field.Key, StringComparer.Ordinal)
                .SelectMany(field =>
                    field.Key.StartsWith("x-", StringComparison.Ordinal)
                        ? [$"{thing.GetPath()} {field.Key} {field.Value!.ToJsonString()}"]
                        : Strange(field.Value)
                ),
            JsonArray list => list.SelectMany(Strange),
            _ => [],
        };
}

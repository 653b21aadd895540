using CsCheck;
using Nookwright.Files;
using Nookwright.Records;

namespace Nookwright.Tests.Files;

public class FieldLinesTests
{
    private const string Text = """
        {
          "format": "nookwright-job", "version": 1,
          // a comment with { and "
          "units": "inches",
          "shop": { "sheets": [
            { "nominal": "3/4 in",
              "id": "ply" }
          ] },
          "pieces": [
            {
              "kind": "trim", "length": "9 in",
              "width": "1 in",
              "id": "cap"
            }
          ]
        }
        """;

    private static readonly FieldLines Lines = JobText.Open(Text, "a").Lines;

    [Theory]
    [InlineData("units", 4)]
    [InlineData("shop/sheets/ply/nominal", 6)]
    [InlineData("shop/sheets/ply/id", 7)]
    [InlineData("pieces/cap", 10)]
    [InlineData("pieces/cap/width", 12)]
    [InlineData("pieces/0/width", 12)]
    [InlineData("pieces/cap/at/x", 10)]
    [InlineData("pieces/gone/width", 9)]
    [InlineData("rows", 1)]
    public void A_field_is_found_by_its_path_and_a_missing_one_where_it_is_missing(string path, int line) =>
        Assert.Equal(line, Lines.LineOf(path));

    [Fact]
    public void Line_ends_of_two_signs_count_once() =>
        Assert.Equal(12, JobText.Open(Text.Replace("\n", "\r\n"), "a").Lines.LineOf("pieces/cap/width"));

    [Fact]
    public void Every_field_that_is_written_stands_on_the_line_it_is_said_to() =>
        AnyJob.Project.Sample(
            job =>
            {
                var text = JobFile.Write(job);
                var (lines, found) = (text.Split('\n'), JobText.Open(text, "a").Lines);
                var written = Leaves.Of(job).Where(leaf => leaf.Field.Name is "length" or "planned" or "nominal");
                Assert.All(
                    written,
                    leaf => Assert.Contains($"\"{leaf.Field.Name}\": ", lines[found.LineOf(leaf.Path) - 1])
                );
            },
            iter: 100
        );
}

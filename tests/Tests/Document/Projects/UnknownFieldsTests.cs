using Nookwright.Files;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Tests.Projects;

public class UnknownFieldsTests
{
    private const string Text = """
        { "format": "nookwright-job", "version": 1, "units": "inches", "shop": {
            "sheets": [ { "id": "ply", "nominal": "3/4", "measurd": "0.71" } ] },
          "pieces": [ { "kind": "trim", "id": "cap", "length": "9", "width": "1", "at": { "colour": "red" } } ] }
        """;

    [Fact]
    public void A_field_nobody_knows_is_told_of_with_what_may_have_been_meant()
    {
        var findings = UnknownFields.Of(JobFile.ReadText(Text, "a").Value).ToList();
        Assert.All(
            findings,
            finding => Assert.Equal(("document.unknown-field", Severity.Note), (finding.Rule, finding.Severity))
        );
        Assert.Equal(["shop/sheets/ply/measurd", "pieces/cap/at/colour"], findings.Select(finding => finding.Field));
        Assert.Equal(
            "The field \"measurd\" is not known here and changes nothing; it is kept as it stands: write \"measured\" if that was meant.",
            findings[0].Message
        );
    }
}

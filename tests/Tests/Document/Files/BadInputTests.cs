using Nookwright.Files;

namespace Nookwright.Tests.Files;

public class BadInputTests
{
    private const string Top = "{ \"format\": \"nookwright-job\", \"version\": 1, \"units\": \"inches\"";

    public static TheoryData<string, string> Broken =>
        new()
        {
            {
                "",
                "a.nook.json:1: The file is empty: a job begins with { \"format\": \"nookwright-job\", \"version\": 1, … }."
            },
            {
                "{ \"format\": \"nookwright-job\",\n \"version\": 1,\n \"name\": \"Ba",
                "a.nook.json:3: The file ends too early: a closing } or ] or a quote is missing, and what followed may be "
                    + "lost. Mend it, or go back to the version before, kept beside it as .bak."
            },
            {
                Top + ",\n \"name\": \"Bay\"\n \"note\": \"\" }",
                "a.nook.json:3: This is not JSON from ‹\"note\": \"\" }› on: look there, or just before, for a missing "
                    + "comma, quote or bracket."
            },
            {
                "\n[1, 2]",
                "a.nook.json:2: This is JSON but not a job: a job begins with { \"format\": \"nookwright-job\", \"version\": 1, … }."
            },
            {
                "{\n\"name\": \"nookwright\" }",
                "a.nook.json:1: format: This file does not say that it is a job: a job begins with "
                    + "{ \"format\": \"nookwright-job\", \"version\": 1, … }."
            },
            {
                "{\n\"format\": \"garden\" }",
                "a.nook.json:2: format: This is a file of another kind: a job begins with "
                    + "{ \"format\": \"nookwright-job\", \"version\": 1, … }."
            },
            {
                "{ \"format\": \"nookwright-job\",\n \"version\": 7 }",
                "a.nook.json:2: version: This document has version 7 and this program knows versions up to 1: open it "
                    + "with a newer Nookwright. The file is as it was."
            },
            {
                "{ \"format\": \"nookwright-job\",\n \"version\": \"1\" }",
                "a.nook.json:2: version: Expected the version of the document's form, from 1 to 1: write \"version\": 1 if it is new."
            },
            {
                "{ \"format\": \"nookwright-job\", \"version\": 1 }",
                "a.nook.json:1: units: This field is missing and cannot be left out: write one of \"inches\", \"millimetres\"."
            },
            {
                Top
                    + ", \"pieces\": [\n { \"kind\": \"runner\", \"id\": \"r\",\n \"length\": true, \"height\": \"2\" } ] }",
                "a.nook.json:3: pieces/r/length: Expected a size such as \"23 3/4 in\" or a formula, found true."
            },
            {
                Top + ", \"pieces\": [\n { \"id\": \"r\",\n \"kind\": \"drawbridge\" } ] }",
                "a.nook.json:3: pieces/r/kind: Expected one of \"carcass\", \"doors\", \"toe-base\", \"top\", \"shelf\", "
                    + "\"support-box\", \"runner\", \"filler\", \"trim\", \"panel\", found \"drawbridge\"."
            },
            {
                Top
                    + ", \"room\": { \"readings\": [\n {\"id\": \"w\", \"kind\": \"width\",\n \"at\": \"LeftFront\" } ] } }",
                "a.nook.json:3: room/readings/w/at: Expected one of \"front\", \"middle\", \"back\", \"left\", \"right\", "
                    + "\"left-front\", \"right-front\", \"left-back\", \"right-back\", found \"LeftFront\"."
            },
            {
                Top + ",\n \"name\": \"a\",\n \"name\": \"b\" }",
                "a.nook.json:3: name: This field is written twice, first on line 2: take one away."
            },
            { Top + ", \"pieces\": [\n 5 ] }", "a.nook.json:2: pieces/0: Expected fields in { }, found 5." },
        };

    [Theory]
    [MemberData(nameof(Broken))]
    public void What_is_wrong_is_said_with_file_line_and_field(string text, string message) =>
        Assert.Equal(message, JobFile.ReadText(text, "a.nook.json").Refusal.ToString());
}

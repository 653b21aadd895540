using System.Text.Json;
using System.Xml.Linq;
using CsCheck;
using Json.Schema;
using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Files;

/// <summary>The published schema, held to the code, and documents held to the schema by a general validator (JSON Schema draft 2020-12).</summary>
public class SchemaTests
{
    private static readonly string Published = Checkout.File("docs", "nookwright-job.schema.json");

    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromText(File.ReadAllText(Published)));

    [Fact]
    public void The_published_schema_is_what_the_code_says()
    {
        var comments = XDocument.Load(Path.Combine(AppContext.BaseDirectory, "Nookwright.Document.xml"));
        var written = SchemaWriter.Write(comments);
        if (Environment.GetEnvironmentVariable("GOLDEN") == "update")
            File.WriteAllText(Published, written);
        Assert.Equal(File.ReadAllText(Published), written);
    }

    [Theory]
    [InlineData(LengthUnit.Inches)]
    [InlineData(LengthUnit.Millimetres)]
    public void A_new_document_fits_the_schema(LengthUnit unit) =>
        Assert.True(Fits(JobFile.Write(NewProject.Blank(unit))));

    [Theory]
    [MemberData(nameof(DemoTests.Demos), MemberType = typeof(DemoTests))]
    public void A_demo_fits_the_schema_as_it_stands(string demo) =>
        Assert.True(Fits(File.ReadAllText(Checkout.File("demo", demo))));

    [Fact]
    public void The_kept_sample_of_version_1_fits_the_schema() =>
        Assert.True(
            Fits(File.ReadAllText(Checkout.File("tests", "Tests", "Document", "Files", "version-1.nook.json")))
        );

    [Fact]
    public void Any_job_that_is_written_fits_the_schema() =>
        AnyJob.Project.Sample(job => Assert.True(Fits(JobFile.Write(job))), iter: 50);

    [Fact]
    public void The_schema_itself_is_one()
    {
        using var schema = JsonDocument.Parse(File.ReadAllText(Published));
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
    }

    [Theory]
    [InlineData("\"kind\": \"carcass\"", "\"kind\": \"drawbridge\"")]
    [InlineData("\"width\": ", "\"breadth\": ")]
    [InlineData("\"units\": \"inches\"", "\"units\": \"cubits\"")]
    [InlineData("\"version\": 1", "\"version\": 2")]
    [InlineData("\"stock\": [", "\"stock\": 5, \"other\": [")]
    public void The_schema_and_the_reader_refuse_the_same(string good, string bad)
    {
        var text = JobFile.Write(NewProject.Blank(LengthUnit.Inches));
        var broken = text.Replace(good, bad);
        Assert.NotEqual(text, broken);
        Assert.False(Fits(broken));
        Assert.False(JobFile.ReadText(broken, "a").Ok);
    }

    private static bool Fits(string text)
    {
        var options = new JsonDocumentOptions
        {
            CommentHandling = JsonCommentHandling.Skip,
            AllowTrailingCommas = true,
        };
        using var document = JsonDocument.Parse(text, options);
        return Schema.Value.Evaluate(document.RootElement).IsValid;
    }
}

namespace Nookwright.Tests.Cli;

/// <summary>What the command line says of a job that is wrong: one clear sentence, the right exit code, the file untouched.</summary>
public sealed class BadInput : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("nookwright-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [InlineData("\"size\": \"20 in\"", "\"size\": \"20 furlong\"", "There is no unit \"furlong\"")]
    [InlineData("\"size\": \"20 in\"", "\"size\": \"-20 in\"", "a size must be more than nought")]
    [InlineData("\"size\": \"20 in\"", "\"size\": \"0 in\"", "a size must be more than nought")]
    [InlineData("\"size\": \"20 in\"", "\"size\": \"box-depth + 1 in\"", "box-depth needs itself")]
    [InlineData("\"size\": \"20 in\"", "\"size\": \"box-dpeth\"", "is \"box-depth\" meant?")]
    [InlineData("\"size\": \"20 in\"", "\"size\": \"20 in + 3 deg\"", "20 in is a length and 3 deg is an angle")]
    [InlineData("\"material\": \"birch\"", "\"material\": \"beech\"", "There is no material \"beech\"")]
    [InlineData("\"value\": \"112 in\"", "\"value\": \"112 ells\"", "There is no unit \"ells\"")]
    [InlineData("\"value\": \"112 in\"", "\"value\": \"-112 in\"", "a distance is above nought")]
    [InlineData("\"version\": 1", "\"version\": 99", "open it with a newer Nookwright")]
    [InlineData("\"units\": \"inches\"", "\"units\": \"cubits\"", "\"cubits\"")]
    public void What_cannot_be_taken_as_written_is_refused_by_file_and_line(string right, string wrong, string said)
    {
        var path = Spoilt(text => text.Replace(right, wrong, StringComparison.Ordinal));
        var asked = Asked.For("check", path);
        Assert.Equal(2, asked.Exit);
        Assert.Contains(said, asked.Errors);
        Assert.Matches($@"^{System.Text.RegularExpressions.Regex.Escape(path)}:\d+: ", asked.Errors);
    }

    [Theory]
    [InlineData("\"length\": \"120 in\"", "\"length\": \"100 in\"", "cutting.part-larger-than-sheet")]
    [InlineData("(box-4.opening - 3 * 1/16 in) / 2", "13 in", "doors.wider-than-opening")]
    public void What_cannot_be_built_is_a_finding(string right, string wrong, string rule)
    {
        var path = Spoilt(text => text.Replace(right, wrong, StringComparison.Ordinal));
        var asked = Asked.For("check", path, "--json");
        Assert.Equal(1, asked.Exit);
        var findings = asked.Json["findings"]!.AsArray();
        Assert.Contains(findings, f => (string?)f!["rule"] == rule && (string?)f["severity"] == "must-mend");
    }

    [Fact]
    public void A_run_of_grain_longer_than_a_sheet_says_what_would_make_it_possible()
    {
        var path = Spoilt(text =>
            text.Replace("\"length\": \"96 in\"", "\"length\": \"80 in\"", StringComparison.Ordinal)
                .Replace("\"length\": \"120 in\"", "\"length\": \"80 in\"", StringComparison.Ordinal)
        );
        var findings = Asked.For("check", path, "--json").Json["findings"]!.AsArray();
        var run = Assert.Single(findings, f => (string?)f!["rule"] == "cutting.run-longer-than-sheet");
        Assert.Contains("split the run, or add a larger sheet", (string)run!["message"]!);
    }

    [Fact]
    public void A_file_that_ends_too_early_is_refused_and_left_as_it_was()
    {
        var path = Spoilt(text => text[..9000]);
        var before = File.ReadAllBytes(path);
        foreach (var command in new[] { "check", "parts", "cut", "packet" })
        {
            var asked = Asked.For(command, path, "--json");
            Assert.Equal((2, ""), (asked.Exit, asked.Output));
            Assert.Contains("The file ends too early", asked.Errors);
        }
        Assert.Equal(before, File.ReadAllBytes(path));
        Assert.Equal([path], Directory.GetFiles(_folder));
    }

    [Fact]
    public void Ten_thousand_parts_in_a_list_are_planned()
    {
        var parts = Write("parts.csv", "label,quantity,length,width\na,5000,600,300\nb,5000,450,300\n");
        var stock = Write("stock.csv", "length,width\n2440,1220\n");
        var asked = Asked.For("cut", "--parts", parts, "--stock", stock, "--units", "mm", "--json");
        Assert.Equal((0, ""), (asked.Exit, asked.Errors));
        Assert.Equal(3, (int)asked.Json["visits"]!);
    }

    [Fact]
    public void A_job_of_ten_thousand_pieces_is_refused_in_words()
    {
        var pieces = Enumerable
            .Range(0, 10_000)
            .Select(i => $$"""{"kind":"panel","id":"p{{i}}","length":"1 in","width":"1 in"}""");
        var path = Write(
            "many.nook.json",
            $$"""{"format":"nookwright-job","version":1,"units":"inches","pieces":[{{string.Join(",", pieces)}}]}"""
        );
        var asked = Asked.For("check", path);
        Assert.Equal(2, asked.Exit);
        Assert.Contains("make several jobs of it", asked.Errors);
    }

    [Theory]
    [InlineData("frob", "frob")]
    [InlineData("check", "FILE")]
    [InlineData("cut", "--parts FILE and --stock FILE")]
    public void A_command_typed_wrong_is_refused(string typed, string said)
    {
        var asked = Asked.For(typed);
        Assert.Equal((2, ""), (asked.Exit, asked.Output));
        Assert.Contains(said, asked.Errors);
    }

    private string Spoilt(Func<string, string> spoil)
    {
        var right = File.ReadAllText(Asked.Demo("window-nook"));
        var wrong = spoil(right);
        Assert.NotEqual(right, wrong);
        return Write("spoilt.nook.json", wrong);
    }

    private string Write(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }
}

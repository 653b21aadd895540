using System.Text.Json.Nodes;

namespace Nookwright.Tests.Cli;

public sealed class Commands : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("nookwright-").FullName;

    public static TheoryData<string> Demos => ["window-nook", "shelf-wall"];

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_demo_has_nothing_that_must_be_mended_or_decided(string demo)
    {
        var asked = Asked.For("check", Asked.Demo(demo), "--json");
        Assert.Equal((0, ""), (asked.Exit, asked.Errors));
        Assert.All(asked.Json["findings"]!.AsArray(), finding => Assert.Equal("note", (string?)finding!["severity"]));
    }

    /// <summary>The issue asks for 45 to 70 parts of two materials.</summary>
    [Theory]
    [MemberData(nameof(Demos))]
    public void A_demo_is_a_job_of_believable_size(string demo)
    {
        var parts = Asked.For("parts", Asked.Demo(demo), "--json").Json["parts"]!.AsArray();
        Assert.InRange(parts.Count, 45, 70);
        Assert.True(parts.Select(p => (string?)p!["material"]).Distinct().Count() >= 2);
        Assert.Contains(parts, p => p!["held"] is not null);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_demo_is_cut_with_one_visit_for_every_dimension(string demo)
    {
        var check = Asked.For("check", Asked.Demo(demo), "--json").Json;
        var plan = Asked.For("cut", Asked.Demo(demo), "--json").Json;
        Assert.True((bool)plan["valid"]!);
        Assert.Equal((int)check["visits"]!, (int)plan["visits"]!);
        Assert.Equal((int)plan["settings"]!, (int)plan["visits"]!);
    }

    [Fact]
    public void A_table_of_parts_has_a_line_for_every_letter()
    {
        var lines = Asked.For("parts", Asked.Demo("window-nook")).Output.Split('\n');
        Assert.Contains(lines, line => line.StartsWith("A  ", StringComparison.Ordinal));
        Assert.Contains(lines, line => line.Contains("left door of box 1"));
    }

    [Fact]
    public void A_packet_is_written_into_the_folder()
    {
        var asked = Asked.For("packet", Asked.Demo("shelf-wall"), "--out", _folder);
        Assert.Equal((0, ""), (asked.Exit, asked.Errors));
        var bytes = File.ReadAllBytes(Path.Combine(_folder, "shelf-wall.pdf"));
        Assert.Equal("%PDF-"u8.ToArray(), bytes[..5]);
    }

    [Fact]
    public void A_number_tells_where_it_comes_from_down_to_the_reading()
    {
        var asked = Asked.For("why", Asked.Demo("window-nook"), "box-1.bottom.length");
        Assert.Equal(0, asked.Exit);
        Assert.Contains("birch.thickness = 45/64 in", asked.Output);
        Assert.Contains("read on 2026-10-03", asked.Output);
    }

    [Fact]
    public void A_number_nobody_knows_is_refused_with_the_nearest_name()
    {
        var asked = Asked.For("why", Asked.Demo("window-nook"), "box-1.widht");
        Assert.Equal((2, ""), (asked.Exit, asked.Output));
        Assert.Contains("Did you mean box-1.width?", asked.Errors);
    }

    [Theory]
    [InlineData("in")]
    [InlineData("mm")]
    [InlineData("inches")]
    public void A_new_job_works_at_once(string units)
    {
        Assert.Equal(0, Asked.For("new", "hall", "--units", units, "--out", _folder).Exit);
        var path = Path.Combine(_folder, "hall.nook.json");
        Assert.Equal(0, Asked.For("check", path).Exit);
        Assert.Equal(0, Asked.For("cut", path).Exit);
    }

    [Fact]
    public void A_new_job_never_takes_the_place_of_another()
    {
        var path = Path.Combine(_folder, "hall.nook.json");
        File.WriteAllText(path, "mine");
        var asked = Asked.For("new", "hall", "--out", _folder);
        Assert.Equal(2, asked.Exit);
        Assert.Contains("There is a job of that name already", asked.Errors);
        Assert.Equal("mine", File.ReadAllText(path));
    }

    [Fact]
    public void A_bare_list_is_cut_like_a_job()
    {
        var asked = Asked.For("cut", "--parts", Parts(), "--stock", Stock(), "--json");
        Assert.Equal((0, ""), (asked.Exit, asked.Errors));
        Assert.Equal(
            (3, 3, true),
            ((int)asked.Json["visits"]!, (int)asked.Json["settings"]!, (bool)asked.Json["valid"]!)
        );
    }

    /// <summary>As the published instances are cut: no kerf, no dressing, sheets alone.</summary>
    [Theory]
    [InlineData]
    [InlineData("--sheets-first")]
    public void A_list_is_cut_without_kerf_and_dressing_when_the_shop_says_so(params string[] more)
    {
        var shop = Write("shop.json", """{ "tableSaw": { "kerf": 0 }, "trackSaw": { "kerf": 0 }, "dressing": 0 }""");
        var parts = Write("parts.csv", "label,quantity,length,width,grain\na,2,48,48,length\nb,4,48,24,length\n");
        var asked = Asked.For(["cut", "--parts", parts, "--stock", Stock(), "--shop", shop, "--json", .. more]);
        Assert.Equal((0, ""), (asked.Exit, asked.Errors));
        Assert.Equal((2, 0.0), ((int)asked.Json["sheets"]!, (double)asked.Json["waste"]!));
    }

    [Fact]
    public void A_list_without_its_stock_is_refused()
    {
        var asked = Asked.For("cut", "--parts", Parts());
        Assert.Equal(2, asked.Exit);
        Assert.Contains("needs both --parts FILE and --stock FILE", asked.Errors);
    }

    /// <summary>96 in less twice 1/4 in of dressing is 95 1/2 in; 48 in gives 47 1/2 in.</summary>
    [Fact]
    public void A_list_in_inches_is_answered_in_inches()
    {
        var parts = Write("long.csv", "label,length,width\nlong,100 1/8,20\n");
        var asked = Asked.For("cut", "--parts", parts, "--stock", Stock());
        Assert.Equal(1, asked.Exit);
        Assert.Contains("needs 100 1/8 in along the figure by 20 in across", asked.Errors);
        Assert.Contains("gives 95 1/2 in by 47 1/2 in after dressing", asked.Errors);
    }

    [Fact]
    public void A_chunk_nobody_can_handle_is_named_with_its_limit()
    {
        var shop = Write("shop.json", """{ "chunkLength": "30 in", "chunkWidth": "30 in" }""");
        var asked = Asked.For("cut", "--parts", Parts(), "--stock", Stock(), "--shop", shop);
        Assert.Contains("one person handles 30 in by 30 in", asked.Errors);
        Assert.Contains("side-1 needs a chunk of 30 1/2 in by 23 in", asked.Errors);
    }

    [Fact]
    public void A_name_that_holds_numbers_tells_some_of_them()
    {
        var asked = Asked.For("why", Asked.Demo("window-nook"), "box-1");
        Assert.Equal(2, asked.Exit);
        Assert.Contains("box-1 is no number itself; it has, among others, box-1.", asked.Errors);
    }

    [Fact]
    public void A_plan_is_written_as_text_and_json_side_by_side()
    {
        Assert.Equal(0, Asked.For("cut", Asked.Demo("shelf-wall"), "--out", _folder).Exit);
        Assert.True((bool)JsonNode.Parse(File.ReadAllText(Path.Combine(_folder, "plan.json")))!["valid"]!);
        Assert.Contains("Visit 1:", File.ReadAllText(Path.Combine(_folder, "plan.txt")));
    }

    [Fact]
    public void The_front_is_a_small_table_and_says_what_can_be_traded()
    {
        var asked = Asked.For("cut", "--parts", Parts(), "--stock", Stock(), "--front");
        Assert.Equal(0, asked.Exit);
        Assert.StartsWith("Nothing to trade", asked.Output);
        Assert.Matches(@"\*\s+0\s+3\s+1\s", asked.Output);
    }

    [Fact]
    public void The_front_in_JSON_marks_the_plan_that_is_chosen()
    {
        var front = Asked
            .For("cut", "--parts", Parts(), "--stock", Stock(), "--front", "--extra-visits", "3", "--json")
            .Json;
        Assert.Equal("nookwright-front", (string?)front["format"]);
        Assert.True((bool)front["plans"]![0]!["chosen"]!);
        Assert.Equal(3, (int)front["extraVisits"]!);
    }

    [Theory]
    [InlineData("0 or more", "--extra-visits", "-1")]
    [InlineData("one end of the front", "--sheets-first", "--front")]
    public void A_front_that_makes_no_sense_is_refused(string said, params string[] options)
    {
        var asked = Asked.For(["cut", "--parts", Parts(), "--stock", Stock(), .. options]);
        Assert.Equal(2, asked.Exit);
        Assert.Contains(said, asked.Errors);
    }

    private string Parts() => Write("parts.csv", "label,quantity,length,width\nside,2,30,22 1/2\nrail,3,30,14\n");

    private string Stock() => Write("stock.csv", "length,width\n96,48\n");

    private string Write(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }
}

using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Nookwright.Files;
using Nookwright.Projects;
using UglyToad.PdfPig;

namespace Nookwright.Tests.Cli;

/// <summary>Two boxes side by side and a top over them, whose length waits until the built boxes are read.</summary>
public sealed class IssuedJobs : IDisposable
{
    private const string Job = """
        { "format": "nookwright-job", "version": 1, "units": "millimetres", "name": "Two boxes",
          "shop": { "sheets": [ { "id": "birch", "name": "birch ply", "nominal": "18 mm", "measured": "18 mm",
            "stock": [ { "length": "2440 mm", "width": "1220 mm", "price": 80 } ] } ] },
          "sizes": [ { "name": "spare", "size": "0 mm" } ],
          "readings": [ { "name": "boxes.width", "what": "both boxes, joined", "planned": "1200 mm" } ],
          "pieces": [
            { "kind": "carcass", "id": "box-1", "material": "birch", "width": "600 mm", "height": "720 mm", "depth": "400 mm" },
            { "kind": "carcass", "id": "box-2", "material": "birch", "width": "600 mm", "height": "720 mm", "depth": "400 mm" },
            { "kind": "panel", "id": "top", "material": "birch", "length": "boxes.width", "width": "420 mm" } ] }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("nookwright-").FullName;

    private string FilePath => Path.Combine(_folder, "boxes.nook.json");

    public IssuedJobs() => File.WriteAllText(FilePath, Job);

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void After_issue_and_reading_only_the_top_is_cut_and_nothing_else_has_moved()
    {
        var before = Cut();
        Assert.Equal(0, Issue().Exit);
        Edit(job => job.TakeReading("boxes.width", "1198.5 mm", new(2026, 11, 26)));
        var after = Cut();
        Assert.True((bool)after["valid"]!);
        var first = Visits(before).Select(v => v!.ToJsonString()).ToList();
        Assert.Equal(first, Visits(after).Take(first.Count).Select(v => v!.ToJsonString()));
        Assert.All(Visits(after).Skip(first.Count), v => Assert.Equal(2, (int)v!["round"]!));
        var made = after["plan"]!["workpieces"]!.AsArray().Where(w => (string?)w!["use"] == "part").ToList();
        var top = Assert.Single(made, w => (string?)w!["part"] == "top.panel");
        Assert.Equal((1198.5m, 420m), ((decimal)top!["length"]!, (decimal)top["width"]!));
        Assert.Equal(before["plan"]!["sheets"]!.ToJsonString(), after["plan"]!["sheets"]!.ToJsonString());
        Assert.Equal(2, after["rounds"]!.AsArray().Count);
    }

    [Fact]
    public void The_text_of_the_plan_tells_one_round_after_the_other()
    {
        Issue();
        Edit(job => job.TakeReading("boxes.width", "1198.5 mm", new(2026, 11, 26)));
        var text = Asked.For("cut", FilePath).Output;
        var (first, second) = (text.IndexOf("Round 1, issued"), text.IndexOf("Round 2, not issued yet"));
        Assert.InRange(first, 0, second);
        Assert.Contains("until boxes.width is read", text[first..second]);
        Assert.Contains("left before: birch", text[second..]);
    }

    [Fact]
    public void A_later_round_is_printed_by_itself_with_the_track_saws_work_on_what_was_set_aside()
    {
        Issue();
        Edit(job => job.TakeReading("boxes.width", "1198.5 mm", new(2026, 11, 26)));
        Assert.Equal(0, Asked.For("packet", FilePath, "--round", "2", "--out", _folder).Exit);
        var file = Path.GetFileName(FilePath).Replace(".nook.json", "-round-2.pdf");
        using var pdf = PdfDocument.Open(Path.Combine(_folder, file));
        var pages = pdf.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text))).ToList();
        var plan = Assert.Single(
            pages,
            p => p.Contains("Round 2: cutting plan") && p.Contains("track-saw cuts in order")
        );
        Assert.Matches(@"S\d+-H\d+: dress the bottom edge", plan);
        Assert.Contains(pages, p => Regex.IsMatch(p, @"First prepare S\d+-H\d+"));
        Assert.DoesNotContain(pages, p => p.Contains("Setting 1 of"));
    }

    [Fact]
    public void The_whole_packet_prints_every_round_as_it_was_cut()
    {
        Issue();
        Edit(job => job.TakeReading("boxes.width", "1198.5 mm", new(2026, 11, 26)));
        Assert.Equal(0, Asked.For("packet", FilePath, "--out", _folder).Exit);
        using var pdf = PdfDocument.Open(
            Path.Combine(_folder, Path.GetFileName(FilePath).Replace(".nook.json", ".pdf"))
        );
        var text = string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));
        Assert.Contains("set it aside", text);
        Assert.Contains("Setting 1 of", text);
        Assert.Contains("Round 2: cutting plan", text);
    }

    [Fact]
    public void A_round_that_is_not_there_is_not_printed_and_those_that_are_are_told()
    {
        var asked = Asked.For("packet", FilePath, "--round", "2");
        Assert.Equal((2, ""), (asked.Exit, asked.Output));
        Assert.Contains("There is no round 2, only round 1", asked.Errors);
    }

    [Fact]
    public void Round_2_is_issued_in_turn_and_withdrawn_again()
    {
        Issue();
        Edit(job => job.TakeReading("boxes.width", "1198.5 mm", new(2026, 11, 26)));
        var issued = Asked.For("issue", FilePath, "--json");
        Assert.Equal((0, 2), (issued.Exit, (int)issued.Json["round"]!));
        Assert.Equal(2, Asked.For("issue", FilePath).Exit);
        Assert.Contains("Round 2 is withdrawn", Asked.For("issue", FilePath, "--withdraw").Output);
        Assert.Single(Project.Issued);
    }

    [Fact]
    public void An_edit_after_issue_is_told_with_both_sizes_and_moves_nothing()
    {
        var before = Cut();
        Issue();
        Edit(job => job.SetField("pieces/box-2/height", "724 mm"));
        var after = Cut();
        var first = Visits(before).Select(v => v!.ToJsonString()).ToList();
        Assert.Equal(first, Visits(after).Take(first.Count).Select(v => v!.ToJsonString()));
        var findings = after["findings"]!.AsArray().Select(f => (string)f!["message"]!);
        Assert.Contains(findings, m => m.Contains("was issued as") && m.Contains("and is now"));
        Assert.Equal(0, Asked.For("packet", FilePath, "--out", _folder).Exit);
    }

    [Fact]
    public void Where_nothing_is_issued_nothing_is_withdrawn()
    {
        var asked = Asked.For("issue", FilePath, "--withdraw");
        Assert.Equal(2, asked.Exit);
        Assert.Contains("No plan is issued", asked.Errors);
        Assert.Equal(Job, File.ReadAllText(FilePath));
    }

    [Fact]
    public void After_an_issue_the_front_is_of_what_is_left_and_says_why_there_is_none()
    {
        Issue();
        Assert.Contains("all that can be cut now is issued", Asked.For("cut", FilePath, "--front").Output);
        Edit(job => job.TakeReading("boxes.width", "1198.5 mm", new(2026, 11, 26)));
        Assert.Contains("no sheet is bought", Asked.For("cut", FilePath, "--front").Output);
    }

    [Fact]
    public void What_is_proven_of_an_issued_plan_is_told_with_the_next_round()
    {
        Issue();
        Edit(job => job.TakeReading("boxes.width", "1198.5 mm", new(2026, 11, 26)));
        Assert.Equal(2, Cut()["proof"]!["rounds"]!.AsArray().Count);
        var text = Asked.For("cut", FilePath).Output.ReplaceLineEndings(" ");
        Assert.Contains("Each round is held against the best", text);
    }

    [Theory]
    [InlineData("\"kind\": \"sizing\"", "\"kind\": \"chop\"", "\"chop\" cannot be read here")]
    [InlineData("\"distance\": 420", "\"distance\": 421", "The issued plan cannot be cut as it stands here")]
    public void An_issued_plan_that_was_spoiled_is_told_with_its_line_and_nothing_is_planned_past_it(
        string good,
        string bad,
        string why
    )
    {
        Issue();
        Edit(job => job.TakeReading("boxes.width", "1198.5 mm", new(2026, 11, 26)));
        Issue();
        var text = File.ReadAllText(FilePath);
        var at = text.LastIndexOf(good, StringComparison.Ordinal);
        Assert.True(at > 0);
        var spoiled = text[..at] + bad + text[(at + good.Length)..];
        File.WriteAllText(FilePath, spoiled);
        var asked = Asked.For("cut", FilePath);
        Assert.Equal((2, ""), (asked.Exit, asked.Output));
        Assert.Contains(why, asked.Errors);
        Assert.Matches(@"boxes\.nook\.json:\d+: must be mended", asked.Errors);
        Assert.Equal(spoiled, File.ReadAllText(FilePath));
        Assert.Equal(2, Asked.For("check", FilePath).Exit);
    }

    [Fact]
    public void Offcuts_go_onto_the_rack_of_another_job_once()
    {
        var other = Path.Combine(_folder, "next.nook.json");
        File.WriteAllText(other, Job);
        Assert.Equal(2, Asked.For("offcuts", FilePath, "--into", other).Exit);
        Issue();
        var listed = Asked.For("offcuts", FilePath, "--json").Json.AsArray();
        Assert.NotEmpty(listed);
        Assert.Equal(0, Asked.For("offcuts", FilePath, "--into", other).Exit);
        Assert.Contains("0 offcuts put on the rack", Asked.For("offcuts", FilePath, "--into", other).Output);
        var rack = JobFile.Read(other).Value.Shop.Sheets[0].Stock.Where(s => s.Offcut).ToList();
        Assert.Equal(listed.Count, rack.Count);
        Assert.Equal($"boxes-{(string)listed[0]!["mark"]!}", rack[0].Id);
        Assert.Equal((string)listed[0]!["length"]!["text"]!, rack[0].Length.Text);
        Assert.Equal(0, Asked.For("cut", other).Exit);
    }

    [Theory]
    [InlineData("birch", "oak", "There is no material \"birch\" here")]
    [InlineData("18 mm", "12 mm", "\"birch\" is 18 mm thick where it was cut and 12 mm here")]
    public void An_offcut_finds_no_rack_where_its_material_is_missing_or_of_another_thickness(
        string was,
        string now,
        string says
    )
    {
        Issue();
        var other = Path.Combine(_folder, "next.nook.json");
        File.WriteAllText(other, Job.Replace(was, now));
        var asked = Asked.For("offcuts", FilePath, "--into", other);
        Assert.Equal(2, asked.Exit);
        Assert.Contains(says, asked.Errors);
        Assert.DoesNotContain(JobFile.Read(other).Value.Shop.Sheets[0].Stock, s => s.Offcut);
    }

    private Project Project => JobFile.Read(FilePath).Value;

    private JsonNode Cut() => Asked.For("cut", FilePath, "--json").Json;

    private Asked Issue() => Asked.For("issue", FilePath);

    private static JsonArray Visits(JsonNode plan) => plan["plan"]!["visits"]!.AsArray();

    private void Edit(Func<Project, Nookwright.Trouble.Outcome<Project>> edit) =>
        Assert.Null(JobFile.Save(edit(Project).Value, FilePath));
}

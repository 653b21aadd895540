using Nookwright.Projects;
using Nookwright.Trouble;
using static Nookwright.Tests.Parts.PartsGiven;

namespace Nookwright.Tests.Parts;

public class RunTests
{
    [Fact]
    public void A_running_grain_keeps_its_order_and_each_part_knows_its_place()
    {
        var list = PartsOf(JobWith("d2.x", "d1.x"), Panel("d1.x", 690, 400), Panel("d2.x", 690, 500));
        Assert.Equal(["d2.x", "d1.x"], Assert.Single(list.Runs).Parts);
        Assert.Equal([2, 1], list.Parts.Select(part => part.Run!.Order));
    }

    [Fact]
    public void A_panel_that_is_not_there_is_named_and_the_rest_still_runs()
    {
        var list = PartsOf(JobWith("d1.x", "d9.x", "d2.x"), Panel("d1.x", 690, 400), Panel("d2.x", 690, 500));
        Assert.Equal(["d1.x", "d2.x"], Assert.Single(list.Runs).Parts);
        var finding = Assert.Single(list.Findings, f => f.Rule == "run.unknown-panel");
        Assert.Equal((Severity.MustMend, "runs/run/panels"), (finding.Severity, finding.Field));
    }

    [Fact]
    public void A_panel_of_a_piece_that_could_not_be_made_is_not_blamed_on_the_running_grain()
    {
        var job = JobWith("d1.x", "notice.panel") with
        {
            Pieces =
            [
                new FreePanel
                {
                    Id = "notice",
                    Length = "0 mm",
                    Width = "300 mm",
                },
            ],
        };
        Assert.DoesNotContain(PartsOf(job, Panel("d1.x", 690, 400)).Findings, f => f.Rule.StartsWith("run."));
    }

    [Fact]
    public void Doors_of_different_height_cannot_come_off_one_strip()
    {
        var list = PartsOf(JobWith("d1.x", "d2.x"), Panel("d1.x", 690, 400), Panel("d2.x", 640, 500));
        Assert.Contains(
            "d1.x 690 mm by 400 mm, d2.x 640 mm by 500 mm",
            Assert.Single(list.Findings, f => f.Rule == "run.heights-differ").Message
        );
    }

    [Fact]
    public void Parts_of_two_materials_cannot_come_off_one_sheet()
    {
        var other = Panel("d2.x", 690, 500) with { Material = "mdf-18" };
        Assert.Contains(
            PartsOf(JobWith("d1.x", "d2.x"), Panel("d1.x", 690, 400), other).Findings,
            f => f.Rule == "run.material-differs"
        );
    }

    [Fact]
    public void A_part_is_in_one_running_grain_only()
    {
        var job = Job with
        {
            Runs = [new() { Id = "r1", Panels = ["a.x", "b.x"] }, new() { Id = "r2", Panels = ["b.x", "c.x", "d.x"] }],
        };
        var list = PartsOf(job, [.. new[] { "a.x", "b.x", "c.x", "d.x" }.Select(id => Panel(id, 600, 300))]);
        Assert.Contains(list.Findings, f => f.Rule == "run.panel-twice" && f.Message.Contains("in r1 already"));
        Assert.Equal(["c.x", "d.x"], list.Runs[1].Parts);
    }

    [Fact]
    public void A_running_grain_waits_as_a_whole_since_it_comes_off_one_strip()
    {
        var list = PartsOf(
            JobWith("d1.x", "d2.x"),
            Panel("d1.x", 690, 400),
            Panel("d2.x", Written(690), Awaited("run.width", 500))
        );
        Assert.All(list.Parts, part => Assert.Equal(["run.width"], part.Blank!.Awaits));
        Assert.Contains(list.Findings, f => f is { Rule: "run.waits-together", Severity: Severity.Note });
    }

    [Fact]
    public void One_part_alone_is_no_running_grain() =>
        Assert.Contains(PartsOf(JobWith("d1.x"), Panel("d1.x", 690, 400)).Findings, f => f.Rule == "run.too-short");

    private static Project JobWith(params string[] run) => Job with { Runs = [new() { Id = "run", Panels = run }] };
}

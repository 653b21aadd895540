using System.Text.Json.Nodes;
using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Tests.Projects;

public class IssueEditsTests
{
    private static readonly DateOnly Day = new(2026, 11, 25);

    private static readonly Project Job = NewProject.Blank(LengthUnit.Inches) with
    {
        Pieces =
        [
            new Carcass
            {
                Id = "box-1",
                Width = "30 in",
                Height = "30 in",
                Depth = "14 in",
            },
        ],
    };

    [Fact]
    public void An_issued_round_is_saved_with_its_day_and_opens_as_it_was()
    {
        var issued = Job.IssueRound(Plan(), Day).Value;
        var again = JobFile.ReadText(JobFile.Write(issued), "a").Value;
        var round = Assert.Single(again.Issued);
        Assert.Equal((1, Day), (round.Round, round.Date));
        Assert.Equal(600.000001m, round.Plan.GetProperty("setting").GetDecimal());
        Assert.Equal("kept", round.Plan.GetProperty("x-new").GetString());
        Assert.Equal(JobFile.Write(issued), JobFile.Write(again));
    }

    [Fact]
    public void Rounds_follow_each_other_and_the_latest_is_withdrawn_first()
    {
        var two = Job.IssueRound(Plan(), Day).Then(job => job.IssueRound(Plan(), Day)).Value;
        Assert.Equal([1, 2], two.Issued.Select(r => r.Round));
        var one = two.WithdrawRound().Value;
        Assert.Equal([1], one.Issued.Select(r => r.Round));
        Assert.Equal(JobFile.Write(Job), JobFile.Write(one.WithdrawRound().Value));
    }

    [Fact]
    public void Where_nothing_is_issued_nothing_is_withdrawn() =>
        Assert.Equal("issued", Job.WithdrawRound().Refusal.Field);

    [Fact]
    public void A_piece_that_goes_by_another_id_does_so_in_the_issued_plan()
    {
        var renamed = Job.IssueRound(Plan(), Day).Then(job => job.RenamePiece("box-1", "left-box")).Value;
        var plan = renamed.Issued[0].Plan;
        Assert.Equal("left-box.bottom", plan.GetProperty("part").GetString());
        Assert.Equal("left-box", plan.GetProperty("piece").GetString());
        Assert.Equal("box-10.bottom", plan.GetProperty("other").GetString());
        Assert.Equal(600.000001m, plan.GetProperty("setting").GetDecimal());
    }

    [Fact]
    public void An_issued_plan_is_changed_by_no_typed_text()
    {
        var issued = Job.IssueRound(Plan(), Day).Value;
        Assert.Contains("never moves", issued.SetField("issued/0/plan", "{}").Refusal.Message);
    }

    [Theory]
    [InlineData("\"nookwright-plan\"", "\"poem\"", "issued/0/plan")]
    [InlineData("\"round\": 1", "\"round\": 3", "issued/0/round")]
    [InlineData("\"2026-11-25\"", "\"soon\"", "issued/0/date")]
    public void An_issued_round_that_cannot_be_one_is_refused_with_its_field(string good, string bad, string field)
    {
        var text = JobFile.Write(Job.IssueRound(Plan(), Day).Value);
        Assert.Contains(good, text);
        Assert.Equal(field, JobFile.ReadText(text.Replace(good, bad), "a").Refusal.Field);
    }

    private static JsonObject Plan() =>
        JsonNode
            .Parse(
                """
                { "format": "nookwright-plan", "version": 1, "part": "box-1.bottom", "piece": "box-1",
                  "other": "box-10.bottom", "setting": 600.000001, "x-new": "kept" }
                """
            )!
            .AsObject();
}

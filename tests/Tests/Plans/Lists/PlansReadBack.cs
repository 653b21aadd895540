using System.Text.Json.Nodes;
using CsCheck;
using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Measure;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Lists;

public class PlansReadBack
{
    private static readonly Lazy<string> Sample = new(() => Written(RandomJobs.Of(7)));

    [Fact]
    public void A_plan_reads_back_as_it_was_written_with_all_it_was_asked_for() =>
        RandomJobs.Any.Sample(
            request =>
            {
                var text = Written(request with { Rules = request.Rules with { Effort = 0 } });
                var (plan, asked) = Read(text);
                Assert.Equal(text, PlanJson.Write(plan, asked));
            },
            iter: 20
        );

    [Fact]
    public void Limits_that_are_none_and_odd_nanometres_are_exact()
    {
        var request = Jobs.Request(Jobs.Part("a", 396.875001m, 100.000001m)) with { Saws = Jobs.Ideal };
        var asked = Read(Written(request)).Request;
        Assert.Equal(Length.Unlimited, asked.Saws.RipReach);
        Assert.Equal(new Length(396_875_001), asked.Parts[0].Length);
    }

    [Theory]
    [InlineData("plan/visits/0/setting", "\"wide\"", "\"wide\" cannot be read here")]
    [InlineData("plan/visits/0/setting", "0.0000001", "0.0000001 cannot be read here")]
    [InlineData("plan/visits/0/setting", "1e30", "1e30 cannot be read here")]
    [InlineData("plan/breakdown/0/kind", "\"chop\"", "\"chop\" cannot be read here")]
    [InlineData("asked/saws/dressing", "null", "cannot be read here")]
    [InlineData("parts/0/awaits", "7", "7 cannot be read here")]
    [InlineData("version", "99", "up to version 1")]
    [InlineData("format", "\"poem\"", "This is no plan")]
    [InlineData("asked", null, "This field is missing")]
    public void What_cannot_be_read_is_named_by_its_field(string field, string? value, string message)
    {
        var json = JsonNode.Parse(Sample.Value)!;
        Put(json, field.Split('/'), value);
        var refusal = PlanJson.Read(json).Refusal;
        Assert.Contains(message, refusal.Message);
        Assert.StartsWith(field, refusal.Field);
    }

    [Fact]
    public void Nothing_at_all_is_no_plan() => Assert.Equal("format", PlanJson.Read(null).Refusal.Field);

    [Fact]
    public void A_field_a_newer_program_wrote_is_passed_over()
    {
        var json = JsonNode.Parse(Sample.Value)!;
        json["plan"]!["visits"]![0]!["x-sharpness"] = 3;
        Assert.True(PlanJson.Read(json).Ok);
    }

    private static void Put(JsonNode json, string[] steps, string? value)
    {
        var at = steps[..^1].Aggregate(json, (node, step) => int.TryParse(step, out var i) ? node[i]! : node[step]!);
        if (value is null)
            at.AsObject().Remove(steps[^1]);
        else
            at[steps[^1]] = JsonNode.Parse(value);
    }

    private static ReadPlan Read(string text) => PlanJson.Read(JsonNode.Parse(text)).Value;

    private static string Written(CutRequest request) => PlanJson.Write(Jobs.PlanOf(request), request);
}

using System.Text.Json;
using Json.Schema;
using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Tests.Cutting;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Lists;

/// <summary>Held against the published schema by a general library (JsonSchema.Net).</summary>
public class PlansAsJson
{
    private static readonly JsonSchema Schema = JsonSchema.FromFile(Checkout.File("docs", "plan.schema.json"));

    [Fact]
    public void A_plan_fits_the_published_schema()
    {
        foreach (var seed in Enumerable.Range(0, 5))
        {
            var request = RandomJobs.Of(seed);
            var json = JsonDocument.Parse(PlanJson.Write(Jobs.PlanOf(request), request)).RootElement;
            var result = Schema.Evaluate(json, new EvaluationOptions { OutputFormat = OutputFormat.List });
            Assert.True(
                result.IsValid,
                string.Join("\n", (result.Details ?? []).Where(d => !d.IsValid).Select(d => d.InstanceLocation))
            );
        }
    }

    [Fact]
    public void The_top_says_how_good_the_plan_is()
    {
        // One sheet of 2440 × 1220, one part of 600 × 400: two settings, two visits.
        var request = Jobs.Request(Jobs.Part("a", 600, 400));
        var json = JsonDocument.Parse(PlanJson.Write(Jobs.PlanOf(request), request)).RootElement;
        Assert.Equal(1, json.GetProperty("sheets").GetInt32());
        Assert.Equal(2, json.GetProperty("settings").GetInt32());
        Assert.Equal(2, json.GetProperty("visits").GetInt32());
        Assert.True(json.GetProperty("valid").GetBoolean());
    }

    [Fact]
    public void Waste_is_what_is_neither_part_nor_worth_keeping()
    {
        // Without dressing and kerf, a sheet of 1000 × 500 gives a part of 950 × 500 and a strip of 50 too narrow to keep: 5 %.
        var request = Jobs.Request(Jobs.Part("a", 950, 500)) with
        {
            Stock = [Jobs.Sheet(1000, 500)],
            Saws = Jobs.Ideal,
        };
        Assert.Equal(0.05, PlanAreas.Waste(Jobs.PlanOf(request)), 12);
    }

    [Fact]
    public void Lengths_are_exact_millimetres()
    {
        var request = Jobs.Request(Jobs.Part("a", 396.875m, 100.000001m));
        Assert.Contains("100.000001", PlanJson.Write(Jobs.PlanOf(request), request));
    }
}

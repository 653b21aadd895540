using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;
using Nookwright.Cutting;
using Nookwright.Lists;
using Nookwright.Planning;
using Nookwright.Tests.Cutting;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Lists;

/// <summary>Held against the published schema by a general library (JsonSchema.Net).</summary>
public class PlansAsJson
{
    // The others refer to it: it is read first.
    private static readonly JsonSchema Proof = JsonSchema.FromFile(Checkout.File("docs", "proof.schema.json"));
    private static readonly JsonSchema Schema = JsonSchema.FromFile(Checkout.File("docs", "plan.schema.json"));
    private static readonly JsonSchema Front = JsonSchema.FromFile(Checkout.File("docs", "front.schema.json"));

    [Fact]
    public void A_plan_fits_the_published_schema()
    {
        foreach (var seed in Enumerable.Range(0, 5))
        {
            var request = RandomJobs.Of(seed);
            Fits(Schema, PlanJson.Write(Jobs.PlanOf(request), request));
        }
    }

    [Fact]
    public void A_front_fits_its_published_schema()
    {
        foreach (var seed in Enumerable.Range(0, 3))
        {
            var request = RandomJobs.Of(seed, 12) with { Rules = new(Effort: 5) };
            var front = Planner.Front(request, null, null, TestContext.Current.CancellationToken);
            Fits(Front, FrontJson.Write(front, 0));
        }
    }

    [Fact]
    public void A_plan_says_how_far_from_the_best_it_can_be_and_reads_it_back()
    {
        // Four parts of 1200 × 600 are 2.88 of the 2.98 m² of a sheet of 2440 × 1220; dressing and kerf leave room for all but one.
        var request = Jobs.Request([.. "abcd".Select(id => Jobs.Part($"{id}", 1216, 602))]);
        var plan = Jobs.PlanOf(request);
        var json = JsonNode.Parse(PlanJson.Write(plan, request))!;
        var wood = json["proof"]!["materials"]![0]!;
        Assert.Equal((2, 2), ((int)json["proof"]!["visits"]!, (int)json["proof"]!["visitsAtLeast"]!));
        Assert.Equal((2, 2), ((int)wood["sheets"]!, (int)wood["sheetsAtLeast"]!));
        Assert.Equal("square-metres", (string?)wood["measure"]);
        Assert.Equal(plan.Proof!.Materials[0].Method, (string?)wood["method"]);
        Fits(Proof, json["proof"]!.ToJsonString());
        Assert.Equal(plan.Proof.Sentence, PlanJson.Read(json).Value.Plan.Proof!.Sentence);
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

    private static void Fits(JsonSchema schema, string text)
    {
        var json = JsonDocument.Parse(text).RootElement;
        var result = schema.Evaluate(json, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(
            result.IsValid,
            string.Join(
                "\n",
                (result.Details ?? [])
                    .Where(d => !d.IsValid)
                    .SelectMany(d => (d.Errors ?? []).Select(e => $"{d.InstanceLocation}: {e.Key} {e.Value}"))
            )
        );
    }
}

using Nookwright.Bounds;
using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Bounds;

/// <summary>What a plan says about how good it is.</summary>
public class Proofs
{
    [Fact]
    public void A_plan_of_one_sheet_with_one_visit_per_dimension_is_proven_best()
    {
        var proof = PlanOf(Request(Part("a", 700, 400), Part("b", 600, 400))).Proof!;
        Assert.True(proof.IsProvenBest);
        Assert.Equal((3, 3), (proof.Visits, proof.VisitsAtLeast));
        Assert.Equal("Proven: no plan needs fewer visits or fewer sheets.", proof.Sentence);
    }

    [Fact]
    public void The_same_request_has_the_same_proof_though_it_is_found_beside_the_search()
    {
        var job = RandomJobs.Of(5, 40) with { Rules = new(Effort: 10) };
        var proofs = Enumerable.Range(0, 3).Select(_ => PlanOf(job).Proof!).ToList();
        Assert.Single(proofs.Select(p => p.Sentence).Distinct());
        Assert.Single(proofs.Select(p => string.Join(";", p.Materials)).Distinct());
    }

    /// <summary>The solver's work is counted too; were it the clock's, no two runs would agree.</summary>
    [Fact]
    public void The_same_question_takes_the_same_steps_and_no_more_than_it_may()
    {
        const double May = 3_000_000;
        var job = RandomJobs.Of(5, 40);
        List<double> Steps() => [.. new BoundFinder(job, job.Parts[0].Material).Sharpen(May)];
        var steps = Steps();
        Assert.NotEmpty(steps);
        Assert.Equal(steps, Steps());
        Assert.InRange(steps.SkipLast(1).Sum(), 0, May);
    }

    [Fact]
    public void What_is_not_proven_is_told_with_its_numbers_and_the_method()
    {
        var proof = new PlanProof(0, [new(1, 24, 24), new(2, 4, 3)], [Wood(5, 4), Wood(2, 2)]);
        Assert.False(proof.IsProvenBest);
        Assert.Equal(
            "At most 1 visit more than the fewest possible: 28 made, at least 27 (distinct dimensions). "
                + "At most 1 sheet of Birch ply above the best possible: 5 used, at least 4 (column generation). "
                + "Each round is held against the best it could do with what the rounds before it left.",
            proof.Say(_ => "Birch ply")
        );
    }

    [Fact]
    public void A_plan_that_lacks_a_part_is_never_proven_best()
    {
        var request = Request(Part("a", 2000, 1000), Part("b", 2000, 1000)) with { Stock = [Sheet(quantity: 1)] };
        var proof = PlanOf(request).Proof!;
        Assert.False(proof.IsProvenBest);
        Assert.StartsWith("1 part has no place, so nothing is proven about the job as a whole", proof.Sentence);
    }

    [Fact]
    public void As_few_sheets_at_a_higher_price_is_not_the_best()
    {
        var wood = Wood(2, 2) with { Used = 130, AtLeast = 117.5m };
        Assert.Equal(
            "Proven: no plan needs fewer visits. birch: at most 12.50 in price above the best possible: 130.00 used, at least "
                + "117.50 (column generation).",
            new PlanProof(0, [new(1, 3, 3)], [wood]).Sentence
        );
    }

    /// <summary>A side as long as a sheet with trusted edges comes without a cut: only 400 needs a visit.</summary>
    [Fact]
    public void What_a_trusted_sheet_measures_already_needs_no_visit()
    {
        var plan = PlanOf(Request(Part("a", 400, 1220, PanelFigure.Length)) with { Saws = Ideal });
        Assert.Equal((1, 1), (plan.Proof!.Visits, plan.Proof.VisitsAtLeast));
    }

    private static MaterialProof Wood(int used, int atLeast) =>
        new("birch", used, atLeast, WoodMeasure.Money, used, atLeast, BoundWay.Columns.Name, BoundWay.Columns.Source);
}

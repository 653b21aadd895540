using CsCheck;
using Nookwright.Cutting;
using Nookwright.Sawing;
using Nookwright.Shop;
using Nookwright.Tests.Cutting;
using Nookwright.Trouble;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

/// <summary>Jobs drawn by lot for shops drawn by lot: thin and thick kerf, trusted edges, short track, small chunks, few sheets, either order of aims.</summary>
public class PlansForAnyShop
{
    private static readonly Gen<SawLimits> AnySaws = Gen.Select(
        Gen.OneOf(1.8m, 2.4m, 3m, 3.2m),
        Gen.OneOf(0m, 2m, 6m, 10m),
        Gen.OneOf(400m, 610m, 760m),
        Gen.OneOf(800m, 1300m, 2440m),
        Gen.OneOf(1270m, 1400m, 2750m),
        Gen.OneOf(900m, 1300m, 2440m),
        Gen.OneOf(650m, 1220m),
        (kerf, dressing, rip, crosscut, track, chunkLength, chunkWidth) =>
            new SawLimits(
                Mm(kerf),
                Mm(2),
                Mm(dressing),
                Mm(rip),
                Mm(crosscut),
                Mm(track),
                Mm(chunkLength),
                Mm(chunkWidth),
                Mm(25)
            )
    );

    private static readonly Gen<CutRequest> AnyJob = Gen.Select(
        RandomJobs.Any,
        AnySaws,
        Gen.Int[0, 6],
        Gen.Bool,
        Gen.Bool,
        (job, saws, sheets, hasRack, visitsFirst) =>
            job with
            {
                Saws = saws,
                Stock = Stock(job, sheets, hasRack),
                Rules = job.Rules with { VisitsFirst = visitsFirst, Effort = 2 },
            }
    );

    [Fact]
    public void Every_plan_can_be_cut() =>
        AnyJob.Sample(job => Assert.Null(VirtualSaw.Run(PlanOf(job), job).Why), iter: 100, threads: 1);

    [Fact]
    public void Each_part_is_made_or_kept_or_a_finding_says_why_not_and_never_both() =>
        AnyJob.Sample(
            job =>
            {
                var plan = PlanOf(job);
                var runs = job.Runs.ToDictionary(r => r.Id, r => r.Parts);
                var there = plan
                    .Workpieces.Where(w => w.Use is WorkpieceUse.Part or WorkpieceUse.Held)
                    .SelectMany(w => runs.TryGetValue(w.Part!, out var members) ? members : [w.Part!])
                    .ToList();
                var missing = plan
                    .Findings.Where(f => f.Severity == Severity.MustMend)
                    .SelectMany(f => f.About)
                    .Where(id => !runs.ContainsKey(id));
                Assert.Equal(job.Parts.Select(p => p.Id).Order(), there.Concat(missing).Order());
            },
            iter: 50,
            threads: 1
        );

    [Fact]
    public void A_part_that_goes_on_an_offcut_is_cut_from_it() =>
        Gen.Select(Gen.Int[100, 600], Gen.Int[100, 400])
            .Sample(
                (length, width) =>
                {
                    var rack = Sheet(700, 500, quantity: 1) with { IsOffcut = true };
                    var plan = PlanOf(Request(Part("a", length, width)) with { Stock = [Sheet(), rack] });
                    Assert.Equal(rack.Id, Assert.Single(plan.Sheets).Stock);
                },
                iter: 20,
                threads: 1
            );

    private static List<StockPiece> Stock(CutRequest job, int sheets, bool hasRack)
    {
        List<StockPiece> stock = [.. job.Stock.Select(s => s with { Quantity = sheets == 0 ? null : sheets })];
        if (hasRack)
            stock.Add(Sheet(900, 700, quantity: 2) with { Id = "rack", IsOffcut = true });
        return stock;
    }
}

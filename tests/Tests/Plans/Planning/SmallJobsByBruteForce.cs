using CsCheck;
using Nookwright.Cutting;
using Nookwright.Projects;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

/// <summary>Jobs small enough to try everything.</summary>
public class SmallJobsByBruteForce
{
    private const int SheetX = 9;
    private const int SheetY = 7;

    private static readonly Gen<CutPart[]> TinyParts = Gen.Select(Gen.Int[1, SheetX], Gen.Int[1, SheetY], Gen.Bool)
        .Array[1, 8]
        .Select(sizes =>
            sizes
                .Select((s, i) => Part($"p{i}", s.Item1, s.Item2, s.Item3 ? PanelFigure.Any : PanelFigure.Length))
                .ToArray()
        );

    /// <summary>Up to eight parts on sheets of 9 × 7, some of which may be turned, with no kerf and no dressing.</summary>
    [Fact]
    public void Never_fewer_sheets_than_the_fewest_there_can_be_and_seldom_more()
    {
        var (jobs, more) = (0, 0);
        TinyParts.Sample(
            parts =>
            {
                var fewest = new GuillotineByTrying(parts).FewestSheets(SheetX, SheetY);
                var request = Request(parts) with
                {
                    Stock = [Sheet(SheetX, SheetY)],
                    Saws = Ideal,
                    Rules = new(VisitsFirst: false, Effort: 20),
                };
                var sheets = PlanOf(request).Sheets.Count;
                Assert.InRange(sheets, fewest, fewest + 1);
                (jobs, more) = (jobs + 1, more + sheets - fewest);
            },
            iter: 150,
            threads: 1
        );
        TestContext.Current.TestOutputHelper?.WriteLine($"{more} of {jobs} jobs take a sheet more than the fewest.");
        Assert.InRange(more, 0, jobs / 20);
    }

    /// <summary>Where all edges are dressed each dimension must be cut, and none needs a second visit: larger before smaller always goes.</summary>
    [Fact]
    public void As_many_visits_as_there_are_different_dimensions() =>
        Gen.Select(Gen.Int[1, 8], Gen.Int[1, 8], Gen.Int[0, 2])
            .Array[1, 8]
            .Sample(
                sizes =>
                {
                    var parts = sizes.Select(
                        (s, i) => Part($"p{i}", s.Item1 * 130, s.Item2 * 130, (PanelFigure)s.Item3)
                    );
                    var plan = PlanOf(Request([.. parts]));
                    var dimensions = sizes.SelectMany(s => new[] { s.Item1, s.Item2 }).Distinct().Count();
                    Assert.Equal(dimensions, plan.Visits.Count);
                    Assert.Equal(dimensions, plan.DimensionsNow);
                },
                iter: 60,
                threads: 1
            );

    /// <summary>
    /// Up to eight parts of at most four dimensions, all in steps of 130 mm, on sheets of 900 × 700: of all plans with one visit
    /// for each dimension, none takes fewer sheets than brute force, and few take more.
    /// </summary>
    [Fact]
    public void Fewest_visits_and_then_fewest_sheets_are_those_of_brute_force()
    {
        var (jobs, more) = (0, 0);
        Gen.Select(Gen.Int[1, 5].Array[4], Gen.Select(Gen.Int[0, 3], Gen.Int[0, 3], Gen.Bool).Array[2, 8])
            .Sample(
                (steps, sizes) =>
                {
                    CutPart[] parts =
                    [
                        .. sizes.Select(
                            (s, i) =>
                                Part(
                                    $"p{i}",
                                    steps[s.Item1] * 130,
                                    steps[s.Item2] * 130,
                                    s.Item3 ? PanelFigure.Any : PanelFigure.Length
                                )
                        ),
                    ];
                    // 12 of 900 × 700 is dressed off each way; a rough cut takes its kerf of 2 and dresses 6 at either side.
                    var trying = new VisitsAndSheetsByTrying(parts, kerf: 3, roughGap: 14, longest: 888);
                    var fewest = trying.FewestSheets(888, 688);
                    var plan = PlanOf(Request(parts) with { Stock = [Sheet(900, 700)], Rules = new(Effort: 20) });
                    Assert.Equal(trying.Visits, plan.Visits.Count);
                    Assert.InRange(plan.Sheets.Count, fewest, fewest + 1);
                    (jobs, more) = (jobs + 1, more + plan.Sheets.Count - fewest);
                },
                iter: 20,
                threads: 1
            );
        TestContext.Current.TestOutputHelper?.WriteLine($"{more} of {jobs} jobs take a sheet more than the fewest.");
        Assert.InRange(more, 0, jobs / 20);
    }

    /// <summary>Where factory edges are trusted, 400 × 1220 is a whole sheet wide, and only 400 is cut.</summary>
    [Fact]
    public void A_dimension_the_sheet_has_already_needs_no_visit_where_its_edges_are_trusted()
    {
        var request = Request(Part("a", 400, 1220, PanelFigure.Length)) with { Saws = Ideal };
        Assert.Equal([Mm(400)], PlanOf(request).Visits.Select(v => v.Setting));
    }

    [Fact]
    public void A_part_as_large_as_the_sheet_needs_no_visit_where_its_edges_are_trusted()
    {
        var request = Request(Part("a", 2440, 1220, PanelFigure.Length)) with { Saws = Ideal };
        Assert.Empty(PlanOf(request).Visits);
    }
}

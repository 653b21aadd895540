using CsCheck;
using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Sawing;
using Nookwright.Shop;
using Nookwright.Tests.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Tests.Planning;

/// <summary>Sheets as they are: with bad areas, out of square, with edges good enough to measure from, heavy.</summary>
public sealed class StockTruth
{
    private static readonly BadArea Knot = new(Jobs.Mm(1000), Jobs.Mm(500), Jobs.Mm(60), Jobs.Mm(40), "knot");

    [Fact]
    public void A_part_that_fits_beside_a_bad_area_is_cut_beside_it()
    {
        var request = Jobs.Request(Jobs.Part("a", 1300, 600), Jobs.Part("b", 900, 1100)) with
        {
            Stock = [Jobs.Sheet(quantity: 1) with { Bad = [Knot] }],
        };
        var plan = Jobs.PlanOf(request);
        Assert.Equal(2, plan.Workpieces.Count(w => w.Use == WorkpieceUse.Part));
    }

    /// <summary>By hand: beside a knot at 1000 to 1060 of 2440 the longest full-height rest is 1380, less 6 dressed at each end.</summary>
    [Fact]
    public void A_part_too_large_for_every_clear_place_is_told_with_what_is_clear()
    {
        var request = Jobs.Request(Jobs.Part("long", 2000, 800), Jobs.Part("short", 600, 300)) with
        {
            Stock = [Jobs.Sheet() with { Bad = [Knot] }],
        };
        var plan = Jobs.PlanOf(request);
        var finding = Assert.Single(plan.Findings, f => f.Severity == Severity.MustMend);
        Assert.Equal("cutting.part-on-bad-area", finding.Rule);
        Assert.Equal(["long"], finding.About);
        Assert.Contains("1368 mm by 1208 mm beside the bad areas", finding.Message);
        Assert.Contains(plan.Workpieces, w => w.Part == "short");
    }

    [Fact]
    public void A_held_blank_stays_off_bad_areas_too()
    {
        var request = Jobs.Request(Jobs.Held("waits", 1300, 1000), Jobs.Part("now", 900, 900)) with
        {
            Stock = [Jobs.Sheet(quantity: 1) with { Bad = [Knot] }],
        };
        Assert.DoesNotContain(Jobs.PlanOf(request).Findings, f => f.Severity == Severity.MustMend);
    }

    [Fact]
    public void A_bad_area_in_the_edge_that_is_dressed_off_costs_nothing()
    {
        var rim = new BadArea(Length.Zero, Length.Zero, Jobs.Mm(2440), Jobs.Mm(5), "dents");
        var request = Jobs.Request(Jobs.Part("a", 2400, 1180)) with { Stock = [Jobs.Sheet() with { Bad = [rim] }] };
        Assert.Contains(Jobs.PlanOf(request).Workpieces, w => w.Part == "a");
    }

    /// <summary>The first cuts of a sheet that is out of square: a long edge, then an end, 6 mm and what it is out by.</summary>
    [Fact]
    public void A_sheet_out_of_square_is_squared_before_anything_else()
    {
        var request = Jobs.Request(Jobs.Part("a", 2400, 500), Jobs.Part("b", 2400, 500)) with
        {
            Stock = [Jobs.Sheet() with { OutOfSquare = Jobs.Mm(5) }],
        };
        var plan = Jobs.PlanOf(request);
        var first = plan.Breakdown.Take(2).ToList();
        Assert.All(first, cut => Assert.Equal(CutKind.Dressing, cut.Kind));
        Assert.Equal([SheetAxis.Width, SheetAxis.Length], first.Select(cut => cut.Along));
        Assert.Equal(Jobs.Mm(6 + 5 - 2), first[1].Distance);
        Assert.Equal(2, plan.Workpieces.Count(w => w.Use == WorkpieceUse.Part));
    }

    /// <summary>By hand: 2440 − 2 · (6 + 5) = 2418.</summary>
    [Theory]
    [InlineData(2418, true)]
    [InlineData(2418.5, false)]
    public void What_a_sheet_out_of_square_gives_is_less_by_that_at_each_end(double length, bool fits)
    {
        var request = Jobs.Request(Jobs.Part("a", (decimal)length, 500)) with
        {
            Stock = [Jobs.Sheet() with { OutOfSquare = Jobs.Mm(5) }],
        };
        Assert.Equal(fits, Jobs.PlanOf(request).Workpieces.Any(w => w.Part == "a"));
    }

    [Fact]
    public void A_sheet_out_of_square_that_the_track_cannot_square_is_not_used()
    {
        var request = Jobs.Request(Jobs.Part("a", 500, 500)) with
        {
            Stock = [Jobs.Sheet(3050) with { OutOfSquare = Jobs.Mm(5) }],
        };
        Assert.Contains(Jobs.PlanOf(request).Findings, f => f.Rule == "cutting.sheet-not-squared");
    }

    [Fact]
    public void Trusted_factory_edges_are_measured_from_undressed()
    {
        var request = Jobs.Request(Jobs.Part("a", 2438, 600), Jobs.Part("b", 2438, 600)) with
        {
            Stock = [Jobs.Sheet(quantity: 1) with { TrustsEdges = true }],
        };
        var plan = Jobs.PlanOf(request);
        Assert.Equal(2, plan.Workpieces.Count(w => w.Use == WorkpieceUse.Part));
        Assert.Empty(plan.Breakdown);
    }

    /// <summary>By hand: 2.44 m × 1.22 m at 12 kg/m² is 35.7 kg, so a sheet comes apart before one person lifts 20 kg of it.</summary>
    [Fact]
    public void Chunks_are_light_enough_for_one_person()
    {
        var request = Heavy(20, Jobs.Part("a", 1100, 600), Jobs.Part("b", 1100, 600), Jobs.Part("c", 700, 1100));
        var plan = Jobs.PlanOf(request);
        var pieces = plan.Workpieces.ToDictionary(w => w.Id);
        Assert.All(
            plan.Visits.SelectMany(v => v.Cuts).Select(c => pieces[c.On]),
            piece => Assert.True(12 * piece.Length.Millimetres * piece.Width.Millimetres / 1e6 <= 20)
        );
        Assert.Equal(3, plan.Workpieces.Count(w => w.Use == WorkpieceUse.Part));
    }

    [Fact]
    public void A_part_too_heavy_for_one_person_is_told_with_its_weight()
    {
        var finding = Assert.Single(Jobs.PlanOf(Heavy(20, Jobs.Part("top", 2000, 1000))).Findings);
        Assert.Equal("cutting.part-beyond-saws", finding.Rule);
        Assert.Equal(
            "top needs a chunk of 24.2 kg, and one person handles 20 kg; join it from two, or raise the shop's chunk kilograms and "
                + "have a second pair of hands.",
            finding.Message
        );
    }

    /// <summary>The fence reaches 760 mm, so that 1 500 is cut at the stop: from strips, for no whole sheet fits its guide.</summary>
    [Theory]
    [InlineData(400)]
    [InlineData(720)]
    [InlineData(1000)]
    public void What_is_cut_at_the_stop_is_no_wider_than_the_crosscut_guide_takes(decimal width)
    {
        var longs = Enumerable.Range(1, 6).Select(i => Jobs.Part($"long{i}", 1500, 300));
        var others = Enumerable.Range(1, 4).Select(i => Jobs.Part($"other{i}", 650, 250));
        var request = Jobs.Request([.. longs, .. others]) with
        {
            Saws = Jobs.Shop with { CrosscutWidth = Jobs.Mm(width) },
        };
        var plan = Jobs.PlanOf(request);
        Assert.Null(VirtualSaw.Run(plan, request).Why);
        Assert.Equal(10, plan.Workpieces.Count(w => w.Use == WorkpieceUse.Part));
    }

    /// <summary>By hand: the fence reaches 760 mm on neither side, and the strip for one is 800 wide at least.</summary>
    [Fact]
    public void A_part_the_crosscut_guide_cannot_take_is_told_with_its_limit()
    {
        var request = Jobs.Request(Jobs.Part("top", 900, 800)) with
        {
            Saws = Jobs.Shop with { CrosscutWidth = Jobs.Mm(600) },
        };
        var finding = Assert.Single(Jobs.PlanOf(request).Findings, f => f.Severity == Severity.MustMend);
        Assert.Equal("cutting.part-beyond-saws", finding.Rule);
        Assert.Contains("the crosscut guide takes pieces 600 mm wide", finding.Message);
    }

    /// <summary>Sheets with any bad areas at all: the virtual saw, which knows nothing of how they are parted off, accepts every plan.</summary>
    [Fact]
    public void Whatever_is_bad_about_a_sheet_nothing_is_cut_from_it()
    {
        var sheet = Gen.Select(
            Gen.Select(Gen.Int[0, 2300], Gen.Int[0, 1100], Gen.Int[5, 300], Gen.Int[5, 300]).List[0, 3],
            Gen.Int[0, 12],
            Gen.Bool,
            Gen.Select(Gen.Int[15, 60], Gen.Int[200, 1300])
        );
        Gen.Select(sheet, Gen.Select(Gen.Int[100, 1500], Gen.Int[80, 700], Gen.Bool).List[1, 12])
            .Sample(
                (kind, sizes) =>
                {
                    var (bad, oos, trusts, (kilograms, guide)) = kind;
                    var stock = Jobs.Sheet() with
                    {
                        Bad = [.. bad.Select(b => Area(b.Item1, b.Item2, b.Item3, b.Item4))],
                        OutOfSquare = Jobs.Mm(oos),
                        TrustsEdges = trusts,
                        KilogramsPerSquareMetre = 12,
                    };
                    var parts = sizes.Select(
                        (s, i) => s.Item3 ? Jobs.Part($"p{i}", s.Item1, s.Item2) : Jobs.Held($"p{i}", s.Item1, s.Item2)
                    );
                    var request = Jobs.Request([.. parts]) with
                    {
                        Stock = [stock],
                        Saws = Jobs.Shop with { ChunkKilograms = kilograms, CrosscutWidth = Jobs.Mm(guide) },
                        Rules = new(Effort: 5),
                    };
                    var verdict = VirtualSaw.Run(Jobs.PlanOf(request), request);
                    Assert.True(verdict.Accepted, verdict.Why);
                },
                iter: 200
            );
    }

    private static BadArea Area(int x, int y, int length, int width) =>
        new(Jobs.Mm(x), Jobs.Mm(y), Jobs.Mm(length), Jobs.Mm(width));

    private static CutRequest Heavy(decimal kilograms, params CutPart[] parts) =>
        Jobs.Request(parts) with
        {
            Stock = [Jobs.Sheet() with { KilogramsPerSquareMetre = 12 }],
            Saws = Jobs.Shop with { ChunkKilograms = kilograms },
        };
}

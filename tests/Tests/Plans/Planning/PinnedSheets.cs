using CsCheck;
using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Planning;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Shop;
using Nookwright.Tests.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Tests.Planning;

/// <summary>Sheets that are kept as they were planned.</summary>
public class PinnedSheets
{
    [Fact]
    public void A_kept_sheet_gives_the_same_parts_at_the_same_places_whatever_else_is_wanted()
    {
        var job = Cabinets();
        var pinned = Pinned(job, 1);
        var more = pinned with { Parts = [.. pinned.Parts, Jobs.Part("long", 2000, 90), Jobs.Part("odd", 455, 333)] };
        var plan = Jobs.PlanOf(more);
        Assert.True(VirtualSaw.Run(plan, more).Accepted);
        var kept = Assert.Single(plan.Sheets, s => s.Pin == "keep");
        Assert.Equal(Places(pinned.PinnedSheets[0].Plan, 1), Places(plan, kept.Number));
        Assert.DoesNotContain(plan.Findings, f => f.Severity == Severity.MustMend);
        Assert.Equal(plan.DimensionsNow, plan.Visits.Count);
    }

    [Theory]
    [InlineData(true, false)]
    [InlineData(false, false)]
    [InlineData(true, true)]
    public void Any_sheet_of_any_job_can_be_kept(bool isVisitsFirst, bool isBoxByBox) =>
        Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 5])
            .Sample(
                (seed, which) =>
                {
                    var job = RandomJobs.Of(seed, 20);
                    var rules = new CutRules(isVisitsFirst, Seed: 1, Effort: 5, isBoxByBox);
                    job = job with { Rules = rules };
                    var plan = Jobs.PlanOf(job);
                    var pin = PinnedSheet.Of("keep", plan, 1 + (which % plan.Sheets.Count), job);
                    var request = job with { PinnedSheets = [pin], Rules = rules with { Seed = 2 } };
                    var kept = Jobs.PlanOf(request);
                    return VirtualSaw.Run(kept, request).Accepted && kept.Sheets.Any(s => s.Pin == "keep");
                },
                iter: 8
            );

    [Fact]
    public void A_sheet_that_takes_two_visits_to_one_distance_is_kept_and_costs_them()
    {
        var job = Cabinets();
        var sheetsFirst = job with { Rules = new(VisitsFirst: false, Effort: 20) };
        var plan = Jobs.PlanOf(sheetsFirst);
        foreach (var sheet in plan.Sheets)
        {
            var request = job with { PinnedSheets = [PinnedSheet.Of("keep", plan, sheet.Number, sheetsFirst)] };
            var kept = Jobs.PlanOf(request);
            Assert.True(VirtualSaw.Run(kept, request).Accepted);
            Assert.Contains(kept.Sheets, s => s.Pin == "keep");
        }
    }

    [Fact]
    public void All_sheets_kept_are_the_plan_as_it_was()
    {
        var job = Cabinets();
        var plan = Jobs.PlanOf(job);
        var request = job with
        {
            PinnedSheets = [.. plan.Sheets.Select(s => PinnedSheet.Of($"keep-{s.Number}", plan, s.Number, job))],
        };
        var kept = Jobs.PlanOf(request);
        Assert.Empty(MovedParts.Of(plan, kept));
        Assert.Equal(plan.Visits.Select(v => v.Setting).Order(), kept.Visits.Select(v => v.Setting).Order());
    }

    [Fact]
    public void The_wood_of_a_kept_sheet_is_beyond_question_and_what_is_proven_is_about_the_others()
    {
        var pinned = Pinned(Cabinets(), 1);
        var proof = Jobs.PlanOf(pinned).Proof!;
        Assert.All(proof.Materials, m => Assert.True(m.SheetsAtLeast <= m.Sheets && m.AtLeast <= m.Used));
        Assert.Equal(0, proof.Missing);
    }

    [Fact]
    public void A_front_keeps_the_sheet_in_all_its_plans()
    {
        var request = Pinned(Cabinets(), 1);
        var front = Planner.Front(request, null, null, TestContext.Current.CancellationToken);
        Assert.All(front.Plans, step => Assert.True(VirtualSaw.Run(step.Plan, request).Accepted));
    }

    [Fact]
    public void A_sheet_of_a_part_that_is_gone_is_named_and_the_rest_is_planned()
    {
        var pinned = Pinned(Cabinets(), 1);
        var gone = pinned.PinnedSheets[0].Parts[0];
        var request = pinned with { Parts = [.. pinned.Parts.Where(p => p.Id != gone)], Matches = [] };
        Refused(request, "cutting.pinned-sheet-gone", $"{gone} is no part of the job any more");
    }

    [Fact]
    public void A_sheet_of_a_part_of_another_size_is_named_and_the_rest_is_planned()
    {
        var pinned = Pinned(Cabinets(), 1);
        var changed = pinned.PinnedSheets[0].Parts[0];
        var request = pinned with
        {
            Parts = [.. pinned.Parts.Select(p => p.Id == changed ? p with { Length = p.Length + Jobs.Mm(5) } : p)],
            Matches = [],
        };
        Refused(request, "cutting.pinned-sheet-changed", $"{changed} is now");
    }

    [Fact]
    public void A_sheet_with_a_bad_place_found_later_under_a_part_is_named_and_the_rest_is_planned()
    {
        var pinned = Pinned(Cabinets(), 1);
        var bad = new BadArea(Jobs.Mm(100), Jobs.Mm(100), Jobs.Mm(50), Jobs.Mm(50));
        Refused(
            pinned with
            {
                Stock = [.. pinned.Stock.Select(s => s with { Bad = [bad] })],
            },
            "cutting.pinned-sheet-not-cut",
            "lies on the bad area"
        );
    }

    [Fact]
    public void A_wider_kerf_is_told_too() =>
        Refused(
            Pinned(Cabinets(), 1) is var pinned
                ? pinned with
                {
                    Saws = pinned.Saws with { TableKerf = Jobs.Mm(3.2m) },
                }
                : null!,
            "cutting.pinned-sheet-not-cut",
            "can no longer be cut as it was"
        );

    [Fact]
    public void Two_kept_sheets_with_a_part_in_common_keep_the_first()
    {
        var pinned = Pinned(Cabinets(), 1);
        var request = pinned with
        {
            PinnedSheets = [pinned.PinnedSheets[0], pinned.PinnedSheets[0] with { Id = "again" }],
        };
        Refused(request, "cutting.pinned-sheet-twice", "also come from keep");
    }

    [Fact]
    public void The_virtual_saw_refuses_a_plan_that_has_moved_a_part_of_a_kept_sheet()
    {
        var job = Cabinets();
        var pinned = Pinned(job, 1);
        var pin = pinned.PinnedSheets[0];
        var moved = pin with
        {
            Plan = pin.Plan with
            {
                Workpieces =
                [
                    .. pin.Plan.Workpieces.Select(w =>
                        w.Use == WorkpieceUse.Part ? w with { X = w.X + Jobs.Mm(1) } : w
                    ),
                ],
            },
        };
        var verdict = VirtualSaw.Run(Jobs.PlanOf(pinned), pinned with { PinnedSheets = [moved] });
        Assert.Contains("is cut as it was when it was pinned", verdict.Why, StringComparison.Ordinal);
    }

    private static void Refused(CutRequest request, string rule, string why)
    {
        var plan = Jobs.PlanOf(request);
        Assert.True(VirtualSaw.Run(plan, request).Accepted);
        var finding = Assert.Single(plan.Findings, f => f.Rule == rule);
        Assert.Contains(why, finding.Message, StringComparison.Ordinal);
        Assert.Equal(request.Parts.Count, plan.Workpieces.Count(w => w.Use == WorkpieceUse.Part));
    }

    private static CutRequest Pinned(CutRequest job, int sheet) =>
        job with
        {
            PinnedSheets = [PinnedSheet.Of("keep", Jobs.PlanOf(job), sheet, job)],
        };

    private static HashSet<(string?, Length, Length, Length, Length)> Places(Plan plan, int sheet) =>
        [
            .. plan
                .Workpieces.Where(w => w.Sheet == sheet && w.Use == WorkpieceUse.Part)
                .Select(w => (w.Part, w.X, w.Y, w.Length, w.Width)),
        ];

    /// <summary>Three boxes with shelves and doors that run: more than one sheet of parts.</summary>
    private static CutRequest Cabinets()
    {
        var parts = new List<CutPart>();
        for (var box = 1; box <= 3; box++)
        {
            parts.Add(Jobs.Part($"left-{box}", 720, 560, PanelFigure.Length));
            parts.Add(Jobs.Part($"right-{box}", 720, 560, PanelFigure.Length));
            parts.Add(Jobs.Part($"bottom-{box}", 764, 560, PanelFigure.Length));
            parts.Add(Jobs.Part($"shelf-{box}", 762, 540, PanelFigure.Length));
            parts.Add(Jobs.Part($"rail-{box}", 764, 100, PanelFigure.Length));
        }
        parts.Add(Jobs.Part("door-1", 700, 390, PanelFigure.Length));
        parts.Add(Jobs.Part("door-2", 700, 390, PanelFigure.Length));
        return Jobs.Request([.. parts]) with
        {
            Runs = [new("doors", ["door-1", "door-2"]) { Height = MatchedSide.Length }],
            Matches = [Jobs.Match("sides", MatchedSide.Length, "left-1", "right-1", "left-2", "right-2")],
            Rules = new(Effort: 20),
        };
    }
}

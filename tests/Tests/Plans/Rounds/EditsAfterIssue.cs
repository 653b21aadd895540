using CsCheck;
using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Rounds;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;
using Nookwright.Tests.Planning;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Rounds;

public class EditsAfterIssue
{
    private static readonly CutRequest Job = Request(
        Part("side-1", 598, 300, PanelFigure.Length),
        Part("side-2", 598, 300, PanelFigure.Length),
        Part("bottom", 500, 300, PanelFigure.Length),
        Held("top", 825, 325, PanelFigure.Length)
    );

    [Fact]
    public void A_part_changed_after_it_was_issued_is_named_with_both_sizes_and_planned_once_more()
    {
        var issued = Issued.Of(Job);
        var (plan, whole) = Issued.Next(issued, Job.Sized("side-2", 600, 300));
        var finding = Assert.Single(plan.Findings, f => f.Rule == "cutting.issued-part-changed");
        Assert.Contains("issued as 598 mm by 300 mm in round 1 and is now 600 mm by 300 mm", finding.Message);
        var made = Issued.Made(plan);
        Assert.Equal(Mm(600), Assert.Single(made["side-2"]).Length);
        Assert.Equal(Mm(598), Assert.Single(made["side-2 (round 1)"]).Length);
        Assert.True(whole.Parts.Single(p => p.Id == "side-2 (round 1)").IsSpare);
    }

    [Fact]
    public void What_is_proven_of_an_issued_round_stays_told_and_the_next_is_proven_by_itself()
    {
        var first = PlanOf(Job);
        var issued = IssuedPlan.Of([new(1, first, Job, Issued.Day)]).Value;
        var more = Job with { Parts = [.. Job.Parts, Part("back", 2000, 1100)] };
        var (plan, _) = Issued.Next(issued, more);
        Assert.Equal([1, 2], plan.Proof!.Rounds.Select(r => r.Round));
        Assert.Equal(plan.Visits.Count, plan.Proof.Visits);
        var wood = Assert.Single(plan.Proof.Materials);
        Assert.Equal((2, 2), (wood.Sheets, wood.SheetsAtLeast));
        Assert.Equal(first.Proof!.Visits, Issued.Next(issued, Job).Plan.Proof!.Visits);
    }

    /// <summary>The issued part takes a whole sheet of its own; so what is added later has the front it has alone.</summary>
    [Fact]
    public void A_round_after_an_issue_has_its_own_front_and_the_issued_round_is_the_same_in_all_of_it()
    {
        var later = FrontsOfPlans.OneMoreVisitSavesASheet;
        var first = later with { Parts = [Part("z", 1000, 700)] };
        var issued = IssuedPlan.Of([new(1, PlanOf(first), first, Issued.Day)]).Value;
        var now = later with { Parts = [.. first.Parts, .. later.Parts] };
        var front = NextRound.Front(issued, now, null, null, TestContext.Current.CancellationToken);
        Assert.Equal([(8, 4), (9, 3)], front.Plans.Select(p => (p.Visits, p.Sheets)));
        Assert.StartsWith("One sheet fewer for 1 more visit; ", front.First.Next);
        Assert.All(front.Plans, p => Assert.Equal(issued.Rounds, p.Plan.Rounds.Take(1)));
        Assert.All(front.Plans, p => Assert.Null(VirtualSaw.Run(p.Plan, Changes.Of(issued, now).Whole).Why));
    }

    [Fact]
    public void What_a_blank_gives_is_no_wood_that_is_bought()
    {
        var issued = IssuedPlan.Of([new(1, PlanOf(Job), Job, Issued.Day)]).Value;
        var (plan, _) = Issued.Next(issued, Job.Sized("top", 800, 300));
        Assert.Equal(["birch"], plan.Proof!.Materials.Select(m => m.Material));
        Assert.True(plan.Proof.IsProvenBest);
    }

    [Fact]
    public void What_is_cut_once_more_comes_off_what_is_left_over_before_any_new_sheet()
    {
        var (plan, _) = Issued.Next(Issued.Of(Job), Job.Sized("side-2", 600, 300));
        Assert.Empty(plan.Rounds[1].Plan.Sheets);
        Assert.Single(plan.Sheets);
    }

    [Fact]
    public void A_new_part_that_no_leftover_takes_gets_a_new_sheet_with_the_next_number()
    {
        var more = Job with { Parts = [.. Job.Parts, Part("back", 2000, 1100)] };
        var (plan, _) = Issued.Next(Issued.Of(Job), more);
        var sheet = Assert.Single(plan.Rounds[1].Plan.Sheets);
        Assert.Equal((2, "S2"), (sheet.Number, sheet.Workpiece));
    }

    [Fact]
    public void A_round_that_is_not_issued_yet_keeps_what_the_next_edit_does_not_touch()
    {
        var backs = Enumerable.Range(1, 4).Select(i => Part($"back-{i}", 1160 - i, 1180));
        var more = Job with { Parts = [.. Job.Parts, .. backs] };
        var issued = Issued.Of(Job);
        var before = NextRound.Plan(issued, more, null, TestContext.Current.CancellationToken);
        var edited = more with { Parts = [.. more.Parts, Part("rail", 300, 60)] };
        var after = NextRound.Plan(issued, edited, null, TestContext.Current.CancellationToken, before);
        Assert.Empty(MovedParts.Of(before, after));
        Assert.Contains(after.Workpieces, p => p.Part == "rail");
    }

    /// <summary>By hand: the blank is 825 + 2 × 6 long; planned 30 longer than before, the top needs 830 of it and its dressings.</summary>
    [Fact]
    public void An_edit_that_outgrows_a_blank_is_told_while_the_reading_is_still_awaited()
    {
        var issued = Issued.Of(Job);
        var finding = Assert.Single(Changes.Of(issued, Longer(855)).Warnings);
        Assert.Contains("now planned as 830 mm by 300 mm", finding.Message);
        Assert.Contains("too little", finding.Message);
        Assert.Empty(Changes.Of(issued, Longer(835)).Warnings);

        CutRequest Longer(decimal length) =>
            Job with
            {
                Parts = [.. Job.Parts.Select(p => p.Id == "top" ? p with { Length = Mm(length) } : p)],
            };
    }

    [Fact]
    public void What_is_no_longer_needed_is_named_and_a_blank_is_free()
    {
        var less = Job with { Parts = [.. Job.Parts.Where(p => p.Id is not ("bottom" or "top"))] };
        var (plan, whole) = Issued.Next(Issued.Of(Job), less);
        var finding = Assert.Single(plan.Findings, f => f.Rule == "cutting.issued-part-not-needed");
        Assert.Equal(["bottom", "top"], finding.About);
        Assert.Contains("keep it as spare", finding.Message);
        Assert.Contains("bottom (round 1)", whole.Parts.Select(p => p.Id));
        Assert.Contains(KeptOffcut.Of(plan), o => o.Workpiece.Contains("-H"));
    }

    [Fact]
    public void A_reading_that_is_taken_back_leaves_the_part_that_was_cut_and_says_so()
    {
        var (second, _) = Issued.Next(Issued.Of(Job), Job.Sized("top", 800, 300));
        var (plan, _) = Issued.Next(Issued.Of(second), Job);
        Assert.Equal(2, plan.Rounds.Count);
        Assert.Single(plan.Findings, f => f.Rule == "cutting.cut-part-waits");
    }

    [Fact]
    public void Sheets_that_are_cut_are_not_in_stock_any_more()
    {
        var one = Job with { Stock = [Sheet(quantity: 1)] };
        var more = one with { Parts = [.. one.Parts, Part("back", 2000, 1100)] };
        var (plan, _) = Issued.Next(Issued.Of(one), more);
        Assert.Contains(plan.Findings, f => f.Rule == "cutting.stock-too-few" && f.About.Contains("back"));
    }

    [Fact]
    public void A_sheet_size_that_left_the_shop_after_issue_is_taken_no_more_and_still_known()
    {
        var other = Job with { Stock = [Sheet(2500, 1250)], Parts = [.. Job.Parts, Part("back", 2000, 1100)] };
        var (plan, whole) = Issued.Next(Issued.Of(Job), other);
        Assert.Equal(["birch-2440x1220", "birch-2500x1250"], plan.Sheets.Select(s => s.Stock));
        Assert.Equal(0, whole.Stock.Single(s => s.Id == "birch-2440x1220").Quantity);
        Assert.Equal(0, PlanScore.Of(plan, whole).Missing);
    }

    [Fact]
    public void A_saw_with_another_blade_cuts_the_next_round_and_the_issued_one_stays_as_it_was()
    {
        var thin = Job.Sized("top", 800, 300) with
        {
            Saws = Jobs.Shop with { TableKerf = Mm(2.2m), TrackKerf = Mm(1.8m) },
        };
        var (plan, _) = Issued.Next(Issued.Of(Job), thin);
        Assert.Equal([Mm(3), Mm(2.2m)], plan.Rounds.Select(r => r.Asked.Saws.TableKerf));
    }

    [Fact]
    public void To_look_twice_at_what_changed_is_to_look_once() =>
        Gen.Select(RandomJobs.Any, RandomJobs.Any)
            .Sample(
                (before, after) =>
                {
                    var issued = Issued.Of(before);
                    var once = Changes.Of(issued, after with { Runs = [], Matches = [] });
                    var twice = Changes.Of(issued, once.Whole);
                    Assert.Equal(once.Whole.Parts.Select(Seen), twice.Whole.Parts.Select(Seen));
                    Assert.Equal(once.Next.Parts.Select(Seen), twice.Next.Parts.Select(Seen));
                    Assert.Equal(once.Findings.Select(f => f.Message), twice.Findings.Select(f => f.Message));
                },
                iter: 10
            );

    /// <summary>Another job altogether under the same names: parts changed, added, taken away; nothing issued moves.</summary>
    [Fact]
    public void Whatever_is_edited_the_virtual_saw_accepts_what_comes_of_it() =>
        Gen.Select(RandomJobs.Any, Gen.Int[0, 1000])
            .Sample(
                (before, seed) =>
                {
                    var random = new Random(seed);
                    CutPart Edited(CutPart p) =>
                        random.Next(4) == 0 ? p with { Length = p.Length + Mm(2), Awaits = [] } : p;
                    var after = before with
                    {
                        Parts =
                        [
                            .. before.Parts.Where(p => p.Id.StartsWith("door") || random.Next(6) > 0).Select(Edited),
                        ],
                        Matches = [],
                    };
                    Issued.Next(Issued.Of(before), after);
                },
                iter: 25
            );

    private static (string, string, string, bool, string) Seen(CutPart p) =>
        (p.Id, p.Letter, $"{p.Length} {p.Width}", p.IsSpare, string.Join(",", p.Awaits));
}

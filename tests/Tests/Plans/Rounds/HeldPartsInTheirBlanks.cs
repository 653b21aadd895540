using CsCheck;
using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Rounds;

public class HeldPartsInTheirBlanks
{
    /// <summary>Two boxes' sides and a top that waits for the boxes; its blank is 25 mm over each way.</summary>
    private static readonly CutRequest Boxes = Request(
        Part("side-1", 720, 400, PanelFigure.Length),
        Part("side-2", 720, 400, PanelFigure.Length),
        Part("side-3", 720, 400, PanelFigure.Length),
        Part("shelf", 560, 380, PanelFigure.Length),
        Held("top", 1225, 425, PanelFigure.Length)
    );

    [Fact]
    public void After_the_reading_only_what_was_held_is_cut_and_out_of_its_own_blank()
    {
        var issued = Issued.Of(Boxes);
        var (plan, _) = Issued.Next(issued, Boxes.Sized("top", 1199.5m, 400));
        var round = plan.Rounds[1];
        Assert.Empty(round.Plan.Sheets);
        Assert.All(round.Plan.Visits, v => Assert.Equal(2, v.Round));
        var made = Assert.Single(round.Plan.Workpieces, p => p.Use == WorkpieceUse.Part);
        var blank = issued.Rounds[0].Plan.Workpieces.Single(p => p.Use == WorkpieceUse.Held);
        Assert.Equal(("top", Mm(1199.5m), Mm(400)), (made.Part, made.Length, made.Width));
        Assert.True(Issued.IsWithin(made, blank));
        Assert.DoesNotContain(plan.Workpieces, p => p.Use == WorkpieceUse.Held);
    }

    /// <summary>The edge the blank shares with the chunk beside it was dressed while both were one; the other low edge is rough.</summary>
    [Fact]
    public void The_edges_of_a_blank_that_are_still_rough_are_dressed_before_its_visits()
    {
        var (plan, _) = Issued.Next(Issued.Of(Boxes), Boxes.Sized("top", 1199.5m, 400));
        var dressed = Assert.Single(plan.Rounds[1].Plan.Breakdown);
        Assert.Equal((CutKind.Dressing, SheetAxis.Width), (dressed.Kind, dressed.Along));
        Assert.Equal(Enumerable.Range(1, plan.Cuts.Count()), plan.Cuts.Select(c => c.Number));
    }

    [Fact]
    public void While_the_reading_is_awaited_nothing_is_cut_again()
    {
        var (plan, whole) = Issued.Next(Issued.Of(Boxes), Boxes);
        Assert.Single(plan.Rounds);
        Assert.Equal(Boxes.Parts.Select(p => p.Id), whole.Parts.Select(p => p.Id));
    }

    /// <summary>400 mm is the depth of sides and top: one visit in each round.</summary>
    [Fact]
    public void A_dimension_that_occurs_in_two_rounds_is_two_visits_and_the_plan_says_so()
    {
        var (plan, _) = Issued.Next(Issued.Of(Boxes), Boxes.Sized("top", 1199.5m, 400));
        var again = Assert.Single(SettingAgain.Of(plan));
        Assert.Equal((Mm(400), 2), (again.Setting, again.Visits.Count));
        Assert.Contains(plan.Findings, f => f.Rule == "cutting.price-of-waiting" && f.Message.Contains("400 mm"));
    }

    /// <summary>The blank is 1225 + 12 by 425 + 12; dressed, 1225 by 425. 1240 is 15 mm too much.</summary>
    [Fact]
    public void A_part_that_has_outgrown_its_blank_is_named_with_what_is_missing_and_cut_from_other_wood()
    {
        var issued = Issued.Of(Boxes);
        var (plan, _) = Issued.Next(issued, Boxes.Sized("top", 1240, 400));
        var finding = Assert.Single(plan.Findings, f => f.Rule == "cutting.blank-too-small");
        Assert.True(finding.Message.Contains("15 mm too little"), finding.Message);
        Assert.Equal(["top"], finding.About);
        Assert.Equal(Mm(1240), Assert.Single(Issued.Made(plan)["top"]).Length);
        Assert.DoesNotContain(plan.Workpieces, p => p.Use == WorkpieceUse.Held);
    }

    [Fact]
    public void A_part_just_as_large_as_its_blank_allows_comes_out_of_it()
    {
        var (plan, _) = Issued.Next(Issued.Of(Boxes), Boxes.Sized("top", 1225, 425));
        Assert.Empty(plan.Rounds[1].Plan.Sheets);
        Assert.DoesNotContain(plan.Findings, f => f.Rule == "cutting.blank-too-small");
    }

    [Fact]
    public void Round_2_issued_is_fixed_and_round_3_waits_for_its_own_reading()
    {
        var two = Boxes with { Parts = [.. Boxes.Parts, Held("filler", 740, 90) with { Awaits = ["gap"] }] };
        var (second, _) = Issued.Next(Issued.Of(two), two.Sized("top", 1199.5m, 400));
        Assert.Contains(second.Workpieces, p => p is { Use: WorkpieceUse.Held, Part: "filler" });
        var (third, _) = Issued.Next(Issued.Of(second), two.Sized("top", 1199.5m, 400).Sized("filler", 715, 61.5m));
        Assert.Equal(3, third.Rounds.Count);
        Assert.Equal(["filler"], Parts(third.Rounds[2]));
    }

    /// <summary>Three drawer fronts off one strip, each 25 mm over until the boxes are read; the kerf is 3 mm.</summary>
    [Fact]
    public void A_run_held_in_one_piece_is_cut_in_order_with_nothing_but_kerfs_between()
    {
        CutPart Front(string id, decimal width) => Held(id, 225, width, PanelFigure.Width);
        var request = Request(Front("a", 425), Front("b", 425), Front("c", 525), Part("side", 720, 400)) with
        {
            Runs = [new("fronts", ["a", "b", "c"])],
        };
        var issued = Issued.Of(request);
        var (plan, _) = Issued.Next(issued, request.Sized("a", 200, 397).Sized("b", 200, 398).Sized("c", 200, 500));
        var blank = issued.Rounds[0].Plan.Workpieces.Single(p => p.Use == WorkpieceUse.Held);
        var made = Issued.Made(plan);
        var fronts = new[] { "a", "b", "c" }.Select(id => made[id].Single()).OrderBy(p => p.X).ToList();
        Assert.All(fronts, p => Assert.True(Issued.IsWithin(p, blank)));
        Assert.Contains(string.Concat(fronts.Select(p => p.Part)), (string[])["abc", "cba"]);
        Assert.All(
            fronts.Zip(fronts.Skip(1), (one, next) => next.X - one.X - one.Length),
            gap => Assert.True(gap >= Mm(3) && gap <= Mm(6), $"{gap}")
        );
    }

    /// <summary>Whatever the readings bring within the allowance: all is cut, round 1 stays, the virtual saw accepts the whole.</summary>
    [Fact]
    public void Any_job_goes_on_after_its_readings_and_moves_nothing() =>
        Gen.Select(RandomJobs.Any, Gen.Int[0, 1_000_000])
            .Sample(
                (request, seed) =>
                {
                    var random = new Random(seed);
                    Length Read(Length blank) => blank - Mm(random.Next(0, 50) * 0.5m);
                    CutPart Final(CutPart part) =>
                        part.IsHeld
                            ? part with
                            {
                                Length = Length.Max(Mm(10), Read(part.Length)),
                                Width = Length.Max(Mm(10), Read(part.Width)),
                                Awaits = [],
                            }
                            : part;
                    var issued = Issued.Of(request);
                    var (plan, whole) = Issued.Next(issued, request with { Parts = [.. request.Parts.Select(Final)] });
                    var excused = plan.Findings.SelectMany(f => f.About).ToHashSet();
                    var made = Issued.Made(plan);
                    Assert.All(whole.Parts, p => Assert.True(made.Contains(p.Id) || excused.Contains(p.Id), p.Id));
                    Assert.All(
                        plan.Rounds.Skip(1).SelectMany(r => r.Plan.Workpieces).Where(p => p.Use == WorkpieceUse.Part),
                        p => Assert.Contains(request.Parts, part => part.Id == p.Part && part.IsHeld)
                    );
                },
                iter: 25
            );

    private static IEnumerable<string> Parts(CutRound round) =>
        round.Plan.Workpieces.Where(p => p.Use == WorkpieceUse.Part).Select(p => p.Part!);
}

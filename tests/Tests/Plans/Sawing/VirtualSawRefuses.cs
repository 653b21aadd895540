using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Sawing;

/// <summary>A plan that can be cut, spoiled in one place each time.</summary>
public class VirtualSawRefuses
{
    private static readonly CutRequest Asked = Request(
        Part("a", 700, 300, PanelFigure.Length),
        Part("b", 700, 410, PanelFigure.Length),
        Part("c", 500, 300, PanelFigure.Length),
        Held("h", 800, 250)
    ) with
    {
        Matches = [Match("m", MatchedSide.Length, "a", "b")],
    };

    private static readonly Plan Good = PlanOf(Asked);

    [Fact]
    public void The_plan_it_starts_from_can_be_cut() => Assert.Null(VirtualSaw.Run(Good, Asked).Why);

    [Fact]
    public void A_cut_at_another_distance_than_its_visit()
    {
        var (visit, at) = FirstSizing();
        var moved = Change(visit, at, c => c with { Distance = c.Distance + Mm(1) });
        Refused(moved, "stands at");
    }

    [Fact]
    public void A_whole_visit_at_another_distance()
    {
        var visits = Good.Visits.ToList();
        var wrong = visits[0].Setting + Mm(1);
        visits[0] = visits[0] with
        {
            Setting = wrong,
            Cuts = [.. visits[0].Cuts.Select(c => c with { Distance = wrong })],
        };
        Refused(Good with { Visits = visits }, "comes out");
    }

    [Fact]
    public void Two_visits_in_the_wrong_order()
    {
        var swapped = Good.Visits.Reverse().Select((v, i) => v with { Number = i + 1 });
        Refused(Renumbered(Good with { Visits = [.. swapped] }), "is not there");
    }

    [Fact]
    public void Two_parts_that_changed_places()
    {
        var pieces = Good.Workpieces.Select(p =>
            p.Part switch
            {
                "a" => p with { Part = "b" },
                "b" => p with { Part = "a" },
                _ => p,
            }
        );
        Refused(Good with { Workpieces = [.. pieces] }, "should be");
    }

    [Fact]
    public void A_chunk_that_was_not_dressed()
    {
        var breakdown = Good.Breakdown.ToList();
        breakdown.RemoveAt(breakdown.FindLastIndex(c => c.Kind == CutKind.Dressing));
        Refused(Renumbered(Good with { Breakdown = breakdown }), "");
    }

    [Fact]
    public void A_sizing_cut_measured_from_a_rough_edge()
    {
        var (visit, at) = FirstSizing();
        Refused(Change(visit, at, c => c with { From = FromEdge.High }), "still rough");
    }

    [Fact]
    public void A_dressing_pass_that_takes_too_little()
    {
        var breakdown = Good.Breakdown.ToList();
        var at = breakdown.FindIndex(c => c.Kind == CutKind.Dressing);
        breakdown[at] = breakdown[at] with { Distance = Mm(1) };
        Refused(Good with { Breakdown = breakdown }, "makes that edge true");
    }

    [Fact]
    public void A_part_that_is_missing_without_a_word()
    {
        var pieces = Good.Workpieces.Select(p => p.Part == "c" ? p with { Use = WorkpieceUse.Waste, Part = null } : p);
        Refused(Good with { Workpieces = [.. pieces] }, "c is not made");
    }

    [Fact]
    public void A_held_part_that_is_called_finished()
    {
        var pieces = Good.Workpieces.Select(p => p.Part == "h" ? p with { Use = WorkpieceUse.Part } : p);
        Refused(Good with { Workpieces = [.. pieces] }, "waits for boxes.width");
    }

    [Fact]
    public void A_visit_past_the_fence() =>
        Refused(
            Good,
            "reaches 100 mm",
            Asked with
            {
                Saws = Jobs.Shop with { RipReach = Mm(100), CrosscutReach = Mm(100) },
            }
        );

    [Fact]
    public void A_chunk_that_nobody_can_handle() =>
        Refused(Good, "one person handles", Asked with { Saws = Jobs.Shop with { ChunkLength = Mm(200) } });

    [Fact]
    public void A_cut_longer_than_the_track() =>
        Refused(Good, "the track", Asked with { Saws = Jobs.Shop with { TrackLength = Mm(100) } });

    [Fact]
    public void Sheets_that_are_not_there() =>
        Refused(Good, "there are 0", Asked with { Stock = [Sheet(quantity: 0)] });

    [Fact]
    public void Another_kerf_than_was_planned_for() =>
        Refused(Good, "comes out", Asked with { Saws = Jobs.Shop with { TableKerf = Mm(4) } });

    [Fact]
    public void A_part_that_lies_against_its_figure()
    {
        var parts = Asked.Parts.Select(p => p.Id == "a" ? p with { Figure = PanelFigure.Width } : p);
        Refused(Good, "along the sheet", Asked with { Parts = [.. parts] });
    }

    [Fact]
    public void A_match_whose_dimension_comes_from_two_visits()
    {
        // The same cut in a visit of its own: 700 is then set twice, and "a" and "b" no longer share it.
        var at = Good.Visits.Single(v => v.Setting == Mm(700));
        var cuts = at.Cuts.ToList();
        var visits = Good.Visits.SelectMany(v =>
            v == at ? [v with { Cuts = [.. cuts.Take(1)] }, v with { Cuts = [.. cuts.Skip(1)] }] : (Visit[])[v]
        );
        var split = Renumbered(Good with { Visits = [.. visits.Select((v, i) => v with { Number = i + 1 })] });
        var verdict = VirtualSaw.Run(split, Asked);
        Assert.Equal([Mm(700)], verdict.Repeats);
        Assert.Contains("is split", verdict.Why);
    }

    private static void Refused(Plan plan, string says, CutRequest? asked = null)
    {
        var verdict = VirtualSaw.Run(plan, asked ?? Asked);
        Assert.False(verdict.Accepted);
        Assert.Contains(says, verdict.Why);
    }

    private static (int Visit, int Cut) FirstSizing() =>
        Good
            .Visits.SelectMany((v, i) => v.Cuts.Select((c, j) => (c, i, j)))
            .Where(c => c.c.Kind == CutKind.Sizing)
            .Select(c => (c.i, c.j))
            .First();

    private static Plan Change(int visit, int cut, Func<SawCut, SawCut> change)
    {
        var visits = Good.Visits.ToList();
        var cuts = visits[visit].Cuts.ToList();
        cuts[cut] = change(cuts[cut]);
        visits[visit] = visits[visit] with { Cuts = cuts };
        return Good with { Visits = visits };
    }

    private static Plan Renumbered(Plan plan)
    {
        var number = 0;
        SawCut Next(SawCut cut) => cut with { Number = ++number };
        return plan with
        {
            Breakdown = [.. plan.Breakdown.Select(Next)],
            Visits = [.. plan.Visits.Select(v => v with { Cuts = [.. v.Cuts.Select(Next)] })],
        };
    }
}

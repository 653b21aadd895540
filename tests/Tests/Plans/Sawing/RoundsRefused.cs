using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Tests.Rounds;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Sawing;

/// <summary>Rounds spoiled by hand, each in one way.</summary>
public class RoundsRefused
{
    private static readonly CutRequest Job = Request(
        Part("side", 720, 400, PanelFigure.Length),
        Held("top", 1225, 425, PanelFigure.Length),
        Held("filler", 740, 90, PanelFigure.Length) with
        {
            Awaits = ["gap"],
        }
    );

    private static readonly (Plan Plan, CutRequest Whole) Good = Issued.Next(
        Issued.Of(Job),
        Job.Sized("top", 1200, 400)
    );

    [Fact]
    public void A_visit_of_an_earlier_round_among_those_of_a_later_one() =>
        Refused(
            "says that it is of round 1",
            Second(plan => plan with { Visits = [.. plan.Visits.Select(v => v with { Round = 1 })] })
        );

    [Fact]
    public void Rounds_in_another_order() =>
        Refused("it is called round 2", Good.Plan with { Rounds = [.. Good.Plan.Rounds.Reverse()] });

    [Fact]
    public void A_blank_that_still_waits_and_is_touched()
    {
        var other = Good.Plan.Rounds[0].Plan.Workpieces.Single(p => p.Part == "filler");
        var stock = Good.Plan.Rounds[1].Asked.Stock;
        var touched = stock[0] with { Id = "x", LeftAs = other.Id, Length = other.Length, Width = other.Width };
        Refused("is kept for filler", SecondAsked(asked => asked with { Stock = [.. stock, touched] }));
    }

    [Fact]
    public void A_blank_that_no_round_left() =>
        Refused(
            "no earlier round left it",
            SecondAsked(asked => asked with { Stock = [.. asked.Stock.Select(s => s with { LeftAs = "S9-H1" })] })
        );

    [Fact]
    public void A_leftover_of_another_size_than_it_was_left_in() =>
        Refused(
            "was left as",
            SecondAsked(asked =>
                asked with
                {
                    Stock = [asked.Stock[0] with { Length = Mm(1300) }, .. asked.Stock.Skip(1)],
                }
            )
        );

    [Fact]
    public void A_cut_on_a_blank_that_the_round_was_not_given() =>
        Refused(
            "there is no piece",
            SecondAsked(asked =>
                asked with
                {
                    Stock = [.. asked.Stock.Where(s => s.LeftAs is null)],
                    Parts = [.. asked.Parts.Select(p => p with { From = null })],
                }
            )
        );

    [Fact]
    public void A_piece_of_the_whole_that_lies_elsewhere_than_its_round_says() =>
        Refused(
            "is not where its round says",
            Good.Plan with
            {
                Workpieces = [.. Good.Plan.Workpieces.Select(p => p.Part == "top" ? p with { X = p.X + Mm(1) } : p)],
            }
        );

    [Fact]
    public void A_whole_with_fewer_visits_than_its_rounds() =>
        Refused("other visits", Good.Plan with { Visits = [.. Good.Plan.Visits.SkipLast(1)] });

    [Fact]
    public void A_part_cut_to_size_in_the_round_that_keeps_its_blank()
    {
        var blank = Good.Plan.Rounds[0].Plan.Workpieces.Single(p => p.Part == "top");
        var first = Good.Plan.Rounds[0];
        var pieces = first.Plan.Workpieces.Select(p => p.Part == "side" ? p with { Part = "top" } : p);
        var spoiled = first with { Plan = first.Plan with { Workpieces = [.. pieces] } };
        Assert.NotNull(blank);
        Assert.False(VirtualSaw.Run(Good.Plan with { Rounds = [spoiled, Good.Plan.Rounds[1]] }, Good.Whole).Accepted);
    }

    [Fact]
    public void A_visit_that_claims_to_keep_a_match_it_has_nothing_to_do_with()
    {
        var request = Request(Part("a", 600, 400), Part("b", 600, 300)) with
        {
            Matches = [Match("m", MatchedSide.Length, "a", "b")],
        };
        var plan = PlanOf(request);
        var visits = plan.Visits.Select(v => v with { Matches = ["m"] }).ToList();
        Assert.Contains("gives none of its sizes", VirtualSaw.Run(plan with { Visits = visits }, request).Why);
    }

    [Fact]
    public void A_visit_at_which_nothing_is_cut()
    {
        var plan = PlanOf(Request(Part("a", 600, 400)));
        var idle = plan.Visits[0] with { Number = plan.Visits.Count + 1, Cuts = [] };
        var verdict = VirtualSaw.Run(plan with { Visits = [.. plan.Visits, idle] }, Request(Part("a", 600, 400)));
        Assert.Contains("Nothing is cut", verdict.Why);
    }

    private static void Refused(string why, Plan spoiled) =>
        Assert.Contains(why, VirtualSaw.Run(spoiled, Good.Whole).Why);

    private static Plan Second(Func<Plan, Plan> spoil)
    {
        var second = Good.Plan.Rounds[1];
        var plan = spoil(second.Plan);
        return Good.Plan with
        {
            Visits = [.. Good.Plan.Rounds[0].Plan.Visits, .. plan.Visits],
            Rounds = [Good.Plan.Rounds[0], second with { Plan = plan }],
        };
    }

    private static Plan SecondAsked(Func<CutRequest, CutRequest> spoil)
    {
        var second = Good.Plan.Rounds[1];
        return Good.Plan with { Rounds = [Good.Plan.Rounds[0], second with { Asked = spoil(second.Asked) }] };
    }
}

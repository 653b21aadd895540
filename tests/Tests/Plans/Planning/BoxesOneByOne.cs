using CsCheck;
using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

/// <summary>One piece is finished before the next is begun, and what must match stays whole all the same.</summary>
public class BoxesOneByOne
{
    private static readonly CutRules OneByOne = new(Effort: 5, BoxByBox: true);

    /// <summary>Two boxes alike: three dimensions each, so six visits instead of three; the sheet has room for both.</summary>
    private static readonly CutRequest TwoBoxes = Request([.. Box("box-1"), .. Box("box-2")]) with { Rules = OneByOne };

    [Fact]
    public void Two_boxes_alike_take_each_dimension_twice_and_the_price_is_told()
    {
        var plan = PlanOf(TwoBoxes);
        Assert.Equal(6, plan.Visits.Count);
        Assert.Equal(["box-1", "box-2"], Pieces(plan, TwoBoxes).Distinct());
        Assert.Contains(plan.Findings, f => f.Rule == "cutting.box-by-box" && f.Message.Contains("3 more visits"));
    }

    /// <summary>The depth of all sides must match: it is cut with the first box, so that one visit is saved.</summary>
    [Fact]
    public void What_must_match_across_boxes_is_cut_with_the_first_of_them()
    {
        var match = Match("depth", MatchedSide.Width, "box-1.left", "box-1.right", "box-2.left", "box-2.right");
        var plan = PlanOf(TwoBoxes with { Matches = [match] });
        Assert.Single(plan.Visits, v => v.Matches.Contains("depth"));
        Assert.InRange(plan.Visits.Count, 5, 6);
    }

    /// <summary>The virtual saw has run each of them; a visit is for one piece only, and pieces come in their order.</summary>
    [Fact]
    public void Pieces_are_finished_in_the_order_of_the_document() =>
        RandomJobs.Any.Sample(
            drawn =>
            {
                var parts = drawn.Parts.Select((p, i) => p with { Piece = $"box-{i % 3}" });
                var request = drawn with { Parts = [.. parts], Matches = [], Runs = [], Rules = OneByOne };
                var pieces = Pieces(PlanOf(request), request).ToList();
                Assert.Equal(pieces.Order(), pieces);
            },
            iter: 15,
            threads: 1
        );

    private static CutPart[] Box(string piece) =>
        [
            .. new[]
            {
                Part($"{piece}.left", 720, 560),
                Part($"{piece}.right", 720, 560),
                Part($"{piece}.bottom", 800, 560),
            }.Select(p => p with { Piece = piece }),
        ];

    /// <summary>The pieces of the parts that visits finish, in order.</summary>
    private static IEnumerable<string> Pieces(Plan plan, CutRequest request)
    {
        var piece = request.Parts.ToDictionary(p => p.Id, p => p.Piece!);
        var made = plan.Workpieces.Where(w => w.Use == WorkpieceUse.Part).ToDictionary(w => w.Id, w => piece[w.Part!]);
        foreach (var cut in plan.Visits.SelectMany(v => v.Cuts))
        foreach (var id in new[] { cut.Gives, cut.Leaves }.OfType<string>())
            if (made.TryGetValue(id, out var of))
                yield return of;
    }
}

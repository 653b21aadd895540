using CsCheck;
using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Tests.Cutting;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Rounds;

/// <summary>What an issued round leaves still has the edges of its sheet: an end out of square, or a factory edge that is trusted.</summary>
public class LeftoversAsTheyAre
{
    /// <summary>
    /// By hand: squared, the sheet begins at 14; a part of 1200 and a kerf of 3 leave 2440 - 1217 = 1223 mm. Were its far end square,
    /// twice 6 of dressing would leave 1211, just enough; but 14 must come off that end.
    /// </summary>
    [Fact]
    public void A_leftover_with_an_end_out_of_square_is_not_counted_on_to_its_end()
    {
        var first = Request(Part("a", 1200, 1190, PanelFigure.Length)) with
        {
            Stock = [Sheet() with { OutOfSquare = Mm(8) }],
        };
        var issued = Issued.Of(first);
        var left = issued.Rounds[0].Plan.Workpieces.Where(w => w.Use == WorkpieceUse.Offcut).MaxBy(w => w.Length)!;
        Assert.Equal(Mm(1223), left.Length);
        var (plan, _) = Issued.Next(
            issued,
            first with
            {
                Parts = [.. first.Parts, Part("b", 1211, 300, PanelFigure.Length)],
            }
        );
        Assert.False(Issued.IsWithin(Assert.Single(Issued.Made(plan)["b"]), left));
    }

    /// <summary>The blank keeps the low edges of its sheet; those are true from the factory, and no pass is made along them.</summary>
    [Fact]
    public void A_trusted_edge_of_a_blank_is_not_dressed_in_the_next_round()
    {
        var first = Request(Held("top", 1225, 425, PanelFigure.Length)) with
        {
            Stock = [Sheet() with { TrustsEdges = true }],
        };
        var issued = Issued.Of(first);
        var blank = issued.Rounds[0].Plan.Workpieces.Single(w => w.Use == WorkpieceUse.Held);
        Assert.Equal((Length.Zero, Length.Zero), (blank.X, blank.Y));
        var (plan, _) = Issued.Next(issued, first.Sized("top", 1199.5m, 400));
        Assert.Empty(plan.Rounds[1].Plan.Breakdown);
        Assert.Equal((Length.Zero, Length.Zero), Issued.Made(plan)["top"].Select(w => (w.X, w.Y)).Single());
    }

    [Fact]
    public void Whatever_edges_a_sheet_has_the_next_round_cuts_what_is_left_of_it() =>
        Gen.Select(
                Gen.Select(Gen.Bool, Gen.Int[0, 12], Gen.Int[1, 8]),
                Gen.Select(Gen.Int[300, 2300], Gen.Int[200, 1100]),
                Gen.Select(Gen.Int[300, 1100], Gen.Int[200, 900]),
                Gen.Select(Gen.Int[300, 1100], Gen.Int[200, 900])
            )
            .Sample(
                (sheet, held, now, next) =>
                {
                    var (trusts, square, dressing) = sheet;
                    var first = Request(Held("h", held.Item1, held.Item2), Part("a", now.Item1, now.Item2)) with
                    {
                        Stock = [Sheet() with { TrustsEdges = trusts, OutOfSquare = Mm(square) }],
                        Saws = Jobs.Shop with { Dressing = Mm(dressing) },
                    };
                    var then = first.Sized("h", held.Item1, held.Item2);
                    var more = then with { Parts = [.. then.Parts, Part("b", next.Item1, next.Item2)] };
                    var (plan, _) = Issued.Next(Issued.Of(first), more);
                    Assert.Equal(3, plan.Workpieces.Count(w => w.Use == WorkpieceUse.Part));
                },
                iter: 40,
                threads: 1
            );
}

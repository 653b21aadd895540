using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Tests.Cutting;
using Nookwright.Trouble;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

public class PlanExamples
{
    /// <summary>
    /// By hand: 1220 less 6 at either edge is 1208; n strips of w take n·w + (n − 1)·3. Three of 400.5 take 1207.5, of 401
    /// they take 1209; seven of 170 take 1190 + 18 = 1208, of 170.5 they take 1211.5.
    /// </summary>
    [Theory]
    [InlineData(3, 400.5, 1)]
    [InlineData(3, 401, 2)]
    [InlineData(7, 170, 1)]
    [InlineData(7, 170.5, 2)]
    public void Strips_of_a_sheet_of_1220(int strips, double width, int sheets)
    {
        var parts = Enumerable.Range(0, strips).Select(i => Part($"p{i}", 2000, (decimal)width, PanelFigure.Length));
        Assert.Equal(sheets, PlanOf(Request([.. parts])).Sheets.Count);
    }

    /// <summary>By hand: 48 in less 1/4 at either edge is 47 1/2; 4 × 11 3/4 and 3 × 1/8 are 47 3/8, 4 × 11 13/16 and 3/8 are 47 5/8.</summary>
    [Theory]
    [InlineData(12, 1)]
    [InlineData(13, 2)]
    public void Strips_of_a_sheet_of_four_feet(int sixteenths, int sheets)
    {
        var width = Length.FromInches(11, sixteenths, 16);
        var part = Part("p", 1, 1, PanelFigure.Length) with { Length = Length.FromInches(72), Width = width };
        var request = Request([.. Enumerable.Range(0, 4).Select(i => part with { Id = $"p{i}" })]) with
        {
            Stock = [Sheet(2438.4m, 1219.2m)],
            Saws = Jobs.Shop with { TableKerf = Length.FromInches(0, 1, 8), Dressing = Length.FromInches(0, 1, 4) },
        };
        Assert.Equal(sheets, PlanOf(request).Sheets.Count);
    }

    /// <summary>
    /// By hand: 400 + 350 + 452 and two kerfs of 3 are 1208, just what dressing leaves of 1220; half a millimetre more does not go.
    /// Each door begins where the one before ended and one kerf later, or two where the strip had to be parted.
    /// </summary>
    [Fact]
    public void Running_grain_takes_the_sum_of_its_widths_and_kerfs()
    {
        var doors = PlanOf(Doors(400, 350, 452)).Workpieces.Where(w => w.Use == WorkpieceUse.Part).ToList();
        Assert.Equal(3, doors.Count);
        Assert.Single(doors.Select(d => (d.Sheet, d.X, d.Length)).Distinct());
        Assert.Equal(
            "cutting.run-longer-than-sheet",
            Assert.Single(PlanOf(Doors(400, 350, 452.5m)).Findings, f => f.Severity == Severity.MustMend).Rule
        );
    }

    /// <summary>Half a sheet each of two materials is two sheets, and yet one visit for each dimension: the fence does not know the material.</summary>
    [Fact]
    public void Two_materials_share_visits_and_no_sheet()
    {
        var request = Request(Part("a", 1000, 500), Part("b", 1000, 500, material: "mdf")) with
        {
            Stock = [Sheet(), Sheet(material: "mdf")],
        };
        var plan = PlanOf(request);
        Assert.Equal(["birch", "mdf"], plan.Sheets.Select(s => s.Material).Order());
        Assert.Equal(2, plan.Visits.Count);
        Assert.All(plan.Visits, v => Assert.Equal(2, v.Cuts.Count(c => c.Kind == CutKind.Sizing)));
    }

    /// <summary>Four parts of 1000 × 550 fill a sheet of 2440 × 1220. With one sheet in stock the fifth takes the other size there is.</summary>
    [Fact]
    public void When_the_sheets_of_one_size_run_out_another_size_is_taken()
    {
        var parts = Enumerable.Range(0, 5).Select(i => Part($"p{i}", 1000, 550, PanelFigure.Length));
        var request = Request([.. parts]) with { Stock = [Sheet(quantity: 1, price: 50), Sheet(1220, 610, price: 45)] };
        var plan = PlanOf(request);
        Assert.Equal(["birch-1220x610", "birch-2440x1220"], plan.Sheets.Select(s => s.Stock).Order());
        Assert.Equal(5, plan.Workpieces.Count(w => w.Use == WorkpieceUse.Part));
    }

    private static CutRequest Doors(params decimal[] widths)
    {
        var doors = widths.Select((w, i) => Part($"door{i}", 700, w, PanelFigure.Length)).ToArray();
        return Request(doors) with { Runs = [new("doors", [.. doors.Select(d => d.Id)])] };
    }
}

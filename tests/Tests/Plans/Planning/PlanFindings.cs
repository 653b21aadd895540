using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;
using Nookwright.Trouble;
using static Nookwright.Tests.Cutting.Jobs;

namespace Nookwright.Tests.Planning;

/// <summary>What cannot be cut is named with its cure, in the job's unit, and the rest is planned all the same.</summary>
public class PlanFindings
{
    private static readonly CutPart Rest = Part("rest", 508, 254);

    /// <summary>2692.4 mm is 106 in, 1219.2 mm 48 in; 2438.4 mm less twice 6.35 is 95 1/2 in, 1219.2 less 12.7 is 47 1/2 in.</summary>
    [Fact]
    public void A_part_too_large()
    {
        var finding = Only("cutting.part-larger-than-sheet", Inches(Rest, Part("top", 2692.4m, 1219.2m)));
        Assert.Equal(["top"], finding.About);
        Assert.StartsWith("top needs 106", finding.Message);
        Says(finding, "48 in", "95 1/2 in", "47 1/2 in", "make it smaller", "larger sheet");
    }

    /// <summary>Five doors of 254 mm and four kerfs of 3.175 mm are 1282.7 mm, 50 1/2 in, and the sheet gives 47 1/2 in.</summary>
    [Fact]
    public void A_run_too_long()
    {
        var doors = Doors(254, 254, 254, 254, 254);
        var request = Inches([Rest, .. doors]) with
        {
            Runs = [new("front", [.. doors.Select(d => d.Id)]) { Height = MatchedSide.Length }],
        };
        var finding = Only("cutting.run-longer-than-sheet", request);
        Assert.Equal(["front", "door0", "door1", "door2", "door3", "door4"], finding.About);
        Says(finding, "front", "50 1/2 in", "47 1/2 in", "split the run");
    }

    [Fact]
    public void Heights_of_a_run_that_differ()
    {
        var doors = Doors(254, 304.8m);
        doors[1] = doors[1] with { Length = doors[1].Length + Length.FromInches(1) };
        var request = Inches([Rest, .. doors]) with { Runs = [new("front", ["door0", "door1"])] };
        Says(
            Only("cutting.run-heights-differ", request),
            "front",
            "door0 20 in × 10 in",
            "door1 21 in × 12 in",
            "equal"
        );
    }

    /// <summary>Each large part takes a sheet of its own, and one of the two sheets there are is missing for the third.</summary>
    [Fact]
    public void Too_few_sheets()
    {
        var parts = Enumerable.Range(0, 3).Select(i => Part($"large{i}", 1500, 1000, PanelFigure.Length));
        var request = Inches([Rest, .. parts]) with { Stock = [Sheet(2438.4m, 1219.2m, quantity: 2)] };
        var finding = Only("cutting.stock-too-few", request);
        var left = Assert.Single(finding.About);
        Says(finding, "birch", left, "with 1 part left", "add 1 more of 96 in by 48 in");
    }

    [Fact]
    public void No_sheet_of_the_material() =>
        Says(
            Only("cutting.no-sheet-of-material", Inches(Rest, Part("shelf", 500, 300, material: "oak"))),
            "shelf",
            "oak",
            "add one"
        );

    /// <summary>The group is named with both sizes, and both parts are cut: the maker may have meant it.</summary>
    [Fact]
    public void Sides_of_a_match_that_differ()
    {
        var request = Inches(Rest, Part("left", 762, 304.8m), Part("right", 768.35m, 304.8m)) with
        {
            Matches = [Match("sides", MatchedSide.Length, "left", "right")],
        };
        Says(
            Only("cutting.match-sizes-differ", request),
            "sides",
            "left 30 in",
            "right 30 1/4 in",
            "make the sizes equal"
        );
        Assert.Equal(3, PlanOf(request).Workpieces.Count(w => w.Use == WorkpieceUse.Part));
    }

    /// <summary>A side of 60 in lies beyond a fence of 24 in and a stop of 48 in.</summary>
    [Fact]
    public void A_side_beyond_the_saws()
    {
        var request = Inches(Rest, Part("bench", 1524, 500));
        request = request with
        {
            Saws = request.Saws with { RipReach = Length.FromInches(24), CrosscutReach = Length.FromInches(48) },
        };
        Says(Only("cutting.part-beyond-saws", request), "bench", "24 in", "48 in", "rip reach or crosscut reach");
    }

    /// <summary>The same job in millimetres says no inches.</summary>
    [Fact]
    public void Sizes_are_said_in_the_unit_of_the_job()
    {
        var request = Inches(Rest, Part("top", 2692.4m, 1219.2m)) with { Units = LengthUnit.Millimetres };
        var finding = Only("cutting.part-larger-than-sheet", request);
        Says(finding, "2692.4 mm", "1219.2 mm");
        Assert.DoesNotContain(" in ", finding.Message);
    }

    /// <summary>Sheets of 8 ft by 4 ft, a kerf of 1/8 in and 1/4 in of dressing.</summary>
    private static CutRequest Inches(params CutPart[] parts) =>
        Request(parts) with
        {
            Stock = [Sheet(2438.4m, 1219.2m)],
            Saws = Jobs.Shop with { TableKerf = Length.FromInches(0, 1, 8), Dressing = Length.FromInches(0, 1, 4) },
            Units = LengthUnit.Inches,
        };

    private static List<CutPart> Doors(params decimal[] widths) =>
        [.. widths.Select((w, i) => Part($"door{i}", 508, w, PanelFigure.Length))];

    /// <summary>The one finding that must be mended; what it is not about is made, and the virtual saw has made it.</summary>
    private static Finding Only(string rule, CutRequest request)
    {
        var plan = PlanOf(request);
        Assert.Null(VirtualSaw.Run(plan, request).Why);
        Assert.Contains(plan.Workpieces, w => w.Use == WorkpieceUse.Part && w.Part == Rest.Id);
        var finding = Assert.Single(plan.Findings, f => f.Severity == Severity.MustMend);
        Assert.Equal(rule, finding.Rule);
        return finding;
    }

    private static void Says(Finding finding, params string[] words) =>
        Assert.All(words, word => Assert.Contains(word, finding.Message));
}

using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Sawing;
using Nookwright.Tests.Cutting;

namespace Nookwright.Tests.Planning;

/// <summary>A fence at 14 3/8 serves both thicknesses.</summary>
public class SharedVisits
{
    private static readonly Length Depth = Length.FromInches(14, 3, 8);

    [Fact]
    public void Two_thicknesses_of_one_dimension_share_its_visit()
    {
        var request = Both(Depth);
        var plan = Jobs.PlanOf(request);
        Assert.True(VirtualSaw.Run(plan, request).Accepted);
        var visit = Assert.Single(plan.Visits, v => v.Setting == Depth);
        var pieces = plan.Workpieces.ToDictionary(p => p.Id);
        var materials = visit.Cuts.Select(c => plan.Sheets[pieces[c.On].Sheet - 1].Material).Distinct();
        Assert.Equal(["back-1/4", "ply-3/4"], materials.Order());
        Assert.Equal((3, 3), (plan.DimensionsNow, plan.Visits.Count));
    }

    /// <summary>A hair apart is another setting: there is no epsilon.</summary>
    [Fact]
    public void A_nanometre_apart_they_do_not()
    {
        var plan = Jobs.PlanOf(Both(Depth + new Length(1)));
        Assert.Equal((4, 4), (plan.DimensionsNow, plan.Visits.Count));
    }

    [Fact]
    public void What_must_match_over_two_thicknesses_is_cut_in_one_visit()
    {
        var request = Both(Depth);
        request = request with
        {
            Matches = [Jobs.Match("depth", MatchedSide.Width, "side", "shelf", "back")],
            Rules = new(VisitsFirst: false),
        };
        var plan = Jobs.PlanOf(request);
        Assert.True(VirtualSaw.Run(plan, request).Accepted);
        Assert.Single(plan.Visits, v => v.Matches.Contains("depth"));
    }

    private static CutRequest Both(Length ofBack)
    {
        CutPart Part(string id, decimal length, Length width, string material) =>
            Jobs.Part(id, length, 1, material: material) with
            {
                Width = width,
            };
        return Jobs.Request(
            Part("side", 720, Depth, "ply-3/4"),
            Part("shelf", 600, Depth, "ply-3/4"),
            Part("back", 720, ofBack, "back-1/4")
        ) with
        {
            Stock = [Jobs.Sheet(material: "ply-3/4"), Jobs.Sheet(material: "back-1/4")],
        };
    }
}

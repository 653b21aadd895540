using Bunit;
using Nookwright.Cutting;
using Nookwright.Web.Places;

namespace Nookwright.Browser.Places;

/// <summary>The plans between fewest visits and fewest sheets, as a little picture.</summary>
public sealed class FrontPictureTests : BunitContext
{
    private static readonly PlanFront Three = new([PlanOf(24, 7), PlanOf(26, 6), PlanOf(34, 4)]);

    [Fact]
    public void Each_plan_is_a_button_that_says_its_visits_and_sheets_and_the_chosen_one_is_pressed()
    {
        var buttons = Picture(Three, Three.Plans[1]).FindAll("button");
        Assert.Equal(
            ["24 visits, 7 sheets", "26 visits, 6 sheets", "34 visits, 4 sheets"],
            buttons.Select(button => button.GetAttribute("aria-label"))
        );
        Assert.Equal(["false", "true", "false"], buttons.Select(button => button.GetAttribute("aria-pressed")));
    }

    [Fact]
    public void Pressing_a_point_tells_its_plan()
    {
        FrontPlan? told = null;
        Picture(Three, Three.Plans[0], plan => told = plan).FindAll("button")[2].Click();
        Assert.Same(Three.Plans[2], told);
    }

    [Fact]
    public void More_visits_stand_further_right_and_fewer_sheets_lower_each_in_its_measure()
    {
        var points = new FrontChart(Three).Points;
        Assert.Equal(points.OrderBy(p => p.X), points);
        Assert.Equal(points.OrderBy(p => p.Y), points);
        // From 24 to 26 is a fifth of the way from 24 to 34; from 7 to 6 a third of that from 7 to 4.
        Assert.Equal(0.2, (points[1].X - points[0].X) / (points[2].X - points[0].X), 6);
        Assert.Equal(1 / 3.0, (points[1].Y - points[0].Y) / (points[2].Y - points[0].Y), 6);
        Assert.All(points, p => Assert.InRange(p.X, FrontChart.Left + FrontChart.PointRadius, FrontChart.Width));
    }

    [Fact]
    public void Plans_that_hardly_differ_stand_far_enough_apart_to_be_pressed()
    {
        var points = new FrontChart(
            new([PlanOf(24, 30), PlanOf(25, 29), PlanOf(26, 28), PlanOf(60, 9), PlanOf(61, 8)])
        ).Points;
        Assert.All(points.Zip(points.Skip(1)), p => Assert.True(p.Second.X - p.First.X >= 2 * FrontChart.PointRadius));
        Assert.All(points, p => Assert.InRange(p.X, FrontChart.Left + FrontChart.PointRadius, FrontChart.Width));
        Assert.All(points, p => Assert.InRange(p.Y, 0, FrontChart.Foot));
    }

    [Fact]
    public void Plans_with_equally_many_sheets_are_told_apart_by_their_price()
    {
        var front = new PlanFront([PlanOf(24, 7, 600), PlanOf(26, 7, 550)]);
        Assert.Equal("price", new FrontChart(front).UpIs);
        Assert.Equal("sheets", new FrontChart(Three).UpIs);
        Assert.Contains("24 visits, 7 sheets, 600.00", Picture(front, front.First).Markup, StringComparison.Ordinal);
    }

    private IRenderedComponent<FrontPicture> Picture(
        PlanFront front,
        FrontPlan chosen,
        Action<FrontPlan>? told = null
    ) =>
        Render<FrontPicture>(parameters =>
            parameters.Add(p => p.Front, front).Add(p => p.Chosen, chosen).Add(p => p.OnChoose, told ?? (_ => { }))
        );

    private static FrontPlan PlanOf(int visits, int sheets, decimal? price = null)
    {
        var made = Enumerable.Range(1, visits).Select(n => new Visit(n, Saw.Fence, default, 1, [], []));
        return new(new([], [], [], [.. made], [], visits), default, price, sheets, [], null);
    }
}

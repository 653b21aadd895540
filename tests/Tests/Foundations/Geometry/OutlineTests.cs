using CsCheck;
using Nookwright.Geometry;
using Nookwright.Measure;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Geometry;

public class OutlineTests
{
    private static readonly Gen<Length> AnySize = Gen.Long[1, 10_000_000_000].Select(nm => new Length(nm));

    /// <summary>By hand: 600 · 400 less the notch of 100 · 50 is 235 000 mm².</summary>
    [Fact]
    public void A_shelf_with_a_notch_has_the_area_of_its_board_less_the_notch() =>
        Assert.Equal(235_000, Notched().AreaSquareMillimetres);

    [Fact]
    public void A_notched_shelf_is_no_rectangle_but_its_bounds_are_those_of_one()
    {
        Assert.False(Notched().IsRectangle);
        Assert.Equal(Point2.Origin, Notched().Low);
        Assert.Equal(new Point2(Mm(600), Mm(400)), Notched().High);
    }

    [Fact]
    public void Corners_run_anticlockwise_however_they_were_given()
    {
        var turned = new Outline(Notched().Corners.Reverse());
        Assert.Equal(Notched().AreaSquareMillimetres, turned.AreaSquareMillimetres);
    }

    [Fact]
    public void A_rectangle_is_its_width_by_its_height() =>
        Gen.Select(AnySize, AnySize)
            .Sample(
                (width, height) =>
                {
                    var rectangle = Outline.Rectangle(width, height);
                    return rectangle.IsRectangle
                        && rectangle.High == new Point2(width, height)
                        && Math.Abs((rectangle.AreaSquareMillimetres / (width.Millimetres * height.Millimetres)) - 1)
                            < 1e-14;
                }
            );

    [Fact]
    public void Moving_changes_neither_size_nor_shape() =>
        Gen.Select(AnySize, AnySize, AnyLength, AnyLength)
            .Sample(
                (width, height, x, y) =>
                {
                    var still = Outline.Rectangle(width, height);
                    var moved = still.MovedBy(new(x, y));
                    return moved.IsRectangle
                        && moved.High - moved.Low == still.High
                        && moved.MovedBy(Point2.Origin - new Point2(x, y)).Equals(still);
                }
            );

    /// <summary>Far from the origin the products of coordinates are a million times the area; its sign must not drown in them.</summary>
    [Fact]
    public void A_sliver_far_away_keeps_its_turning_sense() =>
        Gen.Select(AnyLength, AnyLength)
            .Sample(
                (x, y) =>
                {
                    var sliver = Outline.Rectangle(new(1), new(1)).MovedBy(new(x, y));
                    var turned = new Outline(sliver.Corners.Reverse());
                    return sliver.Corners[1].X - sliver.Corners[0].X == new Length(1)
                        && turned.Corners.Count == 4
                        && Crosses(turned) > 0;
                }
            );

    [Fact]
    public void Two_corners_bound_nothing() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Outline([Point2.Origin, new(Mm(1), Mm(1))]));

    /// <summary>The turn at the second corner, exactly; above nought is anticlockwise for a shape without dents.</summary>
    private static Int128 Crosses(Outline outline)
    {
        var (a, b) = (outline.Corners[1] - outline.Corners[0], outline.Corners[2] - outline.Corners[1]);
        return ((Int128)a.X.Nanometres * b.Y.Nanometres) - ((Int128)a.Y.Nanometres * b.X.Nanometres);
    }

    private static Outline Notched() =>
        new([
            Point2.Origin,
            new(Mm(600), Mm(0)),
            new(Mm(600), Mm(350)),
            new(Mm(500), Mm(350)),
            new(Mm(500), Mm(400)),
            new(Mm(0), Mm(400)),
        ]);
}

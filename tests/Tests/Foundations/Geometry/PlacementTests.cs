using CsCheck;
using Nookwright.Geometry;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Geometry;

public class PlacementTests
{
    private static readonly Gen<Point3> AnyPoint = Gen.Select(
        AnyLength,
        AnyLength,
        AnyLength,
        (x, y, z) => new Point3(x, y, z)
    );

    /// <summary>The 24 ways to set a box square on a bench: six directions for x, and four square to it for y.</summary>
    private static readonly (Direction X, Direction Y)[] Turns =
    [
        .. from x in Enum.GetValues<Direction>()
        from y in Enum.GetValues<Direction>()
        where (int)x / 2 != (int)y / 2
        select (x, y),
    ];

    private static readonly Gen<Placement> AnyPlacement = Gen.Select(
        AnyPoint,
        Gen.Int[0, 23],
        (origin, turn) => new Placement(origin, Turns[turn].X, Turns[turn].Y)
    );

    [Fact]
    public void There_are_24_ways_to_stand_square() =>
        Assert.Equal(24, Turns.Select(turn => new Placement(Point3.Origin, turn.X, turn.Y)).Distinct().Count());

    /// <summary>By hand: a panel stood up with its x upwards and its y towards us has its thickness to the right: z is x turned into y.</summary>
    [Fact]
    public void A_side_panel_stood_up_has_its_thickness_across_the_room()
    {
        var side = new Placement(new(Mm(100), Mm(320), Mm(90)), Direction.PlusZ, Direction.MinusY);
        Assert.Equal(Direction.PlusX, side.Z);
        Assert.Equal(new Point3(Mm(118), Mm(20), Mm(790)), side.Map(new(Mm(700), Mm(300), Mm(18))));
    }

    /// <summary>Right-handed: the directions x, y, z span a volume of +1, worked out here as a determinant.</summary>
    [Fact]
    public void Z_is_always_right_handed() =>
        AnyPlacement.Sample(placement => Determinant(placement.X, placement.Y, placement.Z) == 1);

    [Fact]
    public void Placing_in_a_placed_frame_is_placing_twice() =>
        Gen.Select(AnyPlacement, AnyPlacement, AnyPoint)
            .Sample((outer, inner, point) => outer.Of(inner).Map(point) == outer.Map(inner.Map(point)));

    [Fact]
    public void Placing_three_deep_may_be_bracketed_either_way() =>
        Gen.Select(AnyPlacement, AnyPlacement, AnyPlacement).Sample((a, b, c) => a.Of(b).Of(c) == a.Of(b.Of(c)));

    [Fact]
    public void The_frame_as_it_is_changes_nothing() =>
        AnyPlacement.Sample(placement =>
            placement.Of(Placement.Identity) == placement && Placement.Identity.Of(placement) == placement
        );

    [Fact]
    public void Distances_are_kept() =>
        Gen.Select(AnyPlacement, AnyPoint, AnyPoint)
            .Sample((placement, a, b) => Square(placement.Map(a) - placement.Map(b)) == Square(a - b));

    [Fact]
    public void Moving_moves_every_point_alike() =>
        Gen.Select(AnyPlacement, AnyPoint, AnyPoint)
            .Sample(
                (placement, vector, point) => placement.MovedBy(vector).Map(point) == placement.Map(point) + vector
            );

    [Fact]
    public void Axes_that_are_not_square_are_our_own_mistake() =>
        Assert.Throws<InvalidOperationException>(() =>
            new Placement(Point3.Origin, Direction.PlusX, Direction.MinusX).Z
        );

    private static Int128 Square(Point3 v) =>
        ((Int128)v.X.Nanometres * v.X.Nanometres)
        + ((Int128)v.Y.Nanometres * v.Y.Nanometres)
        + ((Int128)v.Z.Nanometres * v.Z.Nanometres);

    private static long Determinant(Direction x, Direction y, Direction z)
    {
        var (a, b, c) = (Placement.Along(x, new(1)), Placement.Along(y, new(1)), Placement.Along(z, new(1)));
        return (a.X.Nanometres * ((b.Y.Nanometres * c.Z.Nanometres) - (b.Z.Nanometres * c.Y.Nanometres)))
            - (a.Y.Nanometres * ((b.X.Nanometres * c.Z.Nanometres) - (b.Z.Nanometres * c.X.Nanometres)))
            + (a.Z.Nanometres * ((b.X.Nanometres * c.Y.Nanometres) - (b.Y.Nanometres * c.X.Nanometres)));
    }
}

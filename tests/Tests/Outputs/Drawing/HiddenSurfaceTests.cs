using CsCheck;
using Nookwright.Design;
using Nookwright.Drawing;
using Nookwright.Geometry;

namespace Nookwright.Tests.Drawing;

/// <summary>What is painted last at a spot must be what a ray from the eye meets first, found here by slabs and not by painting.</summary>
public sealed class HiddenSurfaceTests
{
    private static readonly Gen<Panel[]> AnyBoards = Gen.Select(
            Gen.Int[0, 300].Array[3],
            Gen.Int[20, 300].Array[2],
            Gen.Int[5, 150],
            Gen.Int[0, 7]
        )
        .Select((at, size, thickness, turn) => (at, size, thickness, turn))
        .Array[2, 9]
        .Select(all => all.Select((b, i) => Board(i, b.at, b.size, b.thickness, b.turn)).ToArray());

    private static readonly Gen<Sight> AnySight = Gen.Select(Gen.Double[-80, 80], Gen.Double[5, 80])
        .Select(Sight.FromFrontAbove);

    private static readonly Sight[] SquareSights = [Sight.FromFront, Sight.FromLeft, Sight.FromRight, Sight.FromAbove];

    private static readonly Gen<Sight> AnySquareSight = Gen.Int[0, 3].Select(i => SquareSights[i]);

    [Fact]
    public void What_is_painted_last_is_what_a_ray_meets_first_even_where_boards_go_through_each_other() =>
        Gen.Select(AnyBoards, AnySight).Sample((boards, sight) => AssertPaintedRight(boards, sight), iter: 80);

    [Fact]
    public void The_same_square_from_the_front_the_sides_and_above() =>
        Gen.Select(AnyBoards, AnySquareSight).Sample((boards, sight) => AssertPaintedRight(boards, sight), iter: 60);

    [Fact]
    public void Three_bars_that_lie_over_each_other_in_a_ring_are_cut_and_painted_right()
    {
        Panel[] bars =
        [
            SampleJob.Panel("a.bar", PanelRole.Free, (300, 20), (0, 100, 100), thickness: 20),
            SampleJob.Panel("b.bar", PanelRole.Free, (20, 300), (200, 0, 120), thickness: 20),
            SampleJob.Panel("c.bar", PanelRole.Free, (20, 20), (100, 120, 0), thickness: 300),
        ];
        AssertPaintedRight(bars, Sight.FromFrontAbove(35, 35));
    }

    [Fact]
    public void A_small_board_behind_a_large_one_is_not_seen_at_all()
    {
        var front = SampleJob.Panel("front.board", PanelRole.Free, (400, 18), (0, 0, 0), thickness: 400);
        var behind = SampleJob.Panel("behind.board", PanelRole.Free, (50, 18), (150, 40, 150), thickness: 50);
        var painted = Painted([behind, front], Sight.FromFront);
        Assert.Equal("front.board", painted.At(new Spot(175, -175)));
        Assert.Equal("front.board", Painted([front, behind], Sight.FromFront).At(new Spot(175, -175)));
    }

    [Fact]
    public void Faces_that_need_no_cutting_are_painted_whole()
    {
        var solids = Solids.Of(SampleJob.BuiltIn());
        var sight = Sight.FromFrontAbove(28, 24);
        var facets = SolidFacets.Of(solids, sight, (_, _) => default).ToArray();
        Assert.Equal(facets.Length, PaintingOrder.Of(facets, sight).Count);
    }

    private static void AssertPaintedRight(Panel[] boards, Sight sight)
    {
        var painted = Painted(boards, sight);
        var solids = boards.Select(Solids.Of).ToArray();
        for (var x = -600.0; x <= 900; x += 71.3)
        for (var y = -900.0; y <= 600; y += 67.9)
        {
            var spot = new Spot(x, y);
            if (FirstMet(solids, sight, spot) is { } met)
                Assert.True(
                    met.Contains(painted.At(spot) ?? ""),
                    $"{string.Join("|", met)} at {spot}, {painted.At(spot)} painted"
                );
        }
    }

    private static Visible Painted(Panel[] boards, Sight sight)
    {
        var facets = SolidFacets.Of(boards.Select(Solids.Of), sight, (_, _) => default);
        return new(PaintingOrder.Of([.. facets], sight), sight);
    }

    /// <summary>Ids of what a ray meets first, several when they lie in one plane; null too near an edge to tell.</summary>
    private static HashSet<string>? FirstMet(Solid[] solids, Sight sight, Spot spot)
    {
        var centre = Met(solids, sight, spot);
        foreach (var (dx, dy) in new[] { (0.5, 0.0), (-0.5, 0.0), (0.0, 0.5), (0.0, -0.5) })
            if (!Met(solids, sight, new(spot.X + dx, spot.Y + dy)).SetEquals(centre))
                return null;
        return centre;
    }

    private static HashSet<string> Met(Solid[] solids, Sight sight, Spot spot)
    {
        var start = (sight.Right * spot.X) - (sight.Up * spot.Y);
        var hits = solids.Select(s => (s.Panel.Id, Near: Nearest(s, start, sight.Towards))).ToArray();
        var nearest = hits.Max(h => h.Near);
        return double.IsNegativeInfinity(nearest)
            ? [""]
            : [.. hits.Where(h => h.Near > nearest - 0.02).Select(h => h.Id)];
    }

    /// <summary>How far along the ray towards the eye its last point inside a box is: the slab method.</summary>
    private static double Nearest(Solid box, Vertex start, Vertex way)
    {
        var (from, to) = (double.NegativeInfinity, double.PositiveInfinity);
        foreach (
            var (s, w, low, high) in new[]
            {
                (start.X, way.X, box.Low.X, box.High.X),
                (start.Y, way.Y, box.Low.Y, box.High.Y),
                (start.Z, way.Z, box.Low.Z, box.High.Z),
            }
        )
            if (Math.Abs(w) < 1e-9)
            {
                if (s < low || s > high)
                    return double.NegativeInfinity;
            }
            else
            {
                var (a, b) = ((low - s) / w, (high - s) / w);
                (from, to) = (Math.Max(from, Math.Min(a, b)), Math.Min(to, Math.Max(a, b)));
            }
        return from < to ? to : double.NegativeInfinity;
    }

    private static Panel Board(int number, int[] at, int[] size, int thickness, int turn)
    {
        var panel = SampleJob.Panel(
            $"p{number}.b",
            PanelRole.Free,
            (size[0], size[1]),
            (at[0], at[1], at[2]),
            thickness: thickness
        );
        var x = (Direction)(turn % 6);
        var y = (Direction)(((turn % 6 / 2 * 2) + 2 + (turn / 4)) % 6);
        return panel with { Place = new(panel.Place.Origin, x, y) };
    }
}

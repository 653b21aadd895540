using System.Text.Json;
using CsCheck;
using Nookwright.Design;
using Nookwright.Drawing;
using Nookwright.Geometry;

namespace Nookwright.Tests.Drawing;

public sealed class SolidsTests
{
    private static readonly Gen<Placement> AnyPlace =
        from x in Gen.Int[0, 5]
        from turn in Gen.Int[1, 4]
        from at in Gen.Int[-3000, 3000].Array[3]
        select new Placement(
            SampleJob.At(at[0], at[1], at[2]),
            (Direction)x,
            (Direction)(((x / 2 * 2) + 1 + turn) % 6)
        );

    [Fact]
    public void A_solid_is_as_large_as_its_outline_carried_through_its_thickness_wherever_it_stands() =>
        Gen.Select(Gen.Int[20, 2400], Gen.Int[20, 1200], Gen.Int[3, 40], AnyPlace)
            .Sample(
                (length, width, thickness, place) =>
                {
                    var panel = SampleJob.Panel(
                        "a.b",
                        PanelRole.Free,
                        (length, width),
                        (0, 0, 0),
                        thickness: thickness
                    );
                    var volume = VolumeOf(Solids.Of(panel with { Place = place }));
                    Assert.Equal((double)length * width * thickness, volume, 1e-6 * length * width * thickness);
                }
            );

    [Fact]
    public void A_hole_takes_its_polygon_times_the_thickness_away()
    {
        var panel = SampleJob.Panel("a.b", PanelRole.Slab, (400, 300), (10, 20, 30)) with
        {
            Machining = [new Machining.Through("h", new(SampleJob.Mm(100), SampleJob.Mm(120)), SampleJob.Mm(60))],
        };
        var polygon = 24 / 2.0 * 30 * 30 * Math.Sin(Math.Tau / 24); // n/2 · r² · sin(2π/n)
        Assert.Equal(((400 * 300) - polygon) * 18, VolumeOf(Solids.Of(panel)), 1e-6);
    }

    [Fact]
    public void Every_face_looks_out_of_its_solid() =>
        AnyPlace.Sample(place =>
        {
            var solid = Solids.Of(SampleJob.Panel("a.b", PanelRole.Free, (500, 200), (0, 0, 0)) with { Place = place });
            Assert.All(solid.Faces, f => Assert.True((f.Outline[0] - solid.Centre).Dot(f.Normal) > 0));
            Assert.All(solid.Faces, f => Assert.True(NormalOf(f.Outline).Dot(f.Normal) > 0.999));
        });

    [Fact]
    public void A_board_has_twelve_edges() =>
        Assert.Equal(12, Solids.Of(SampleJob.Panel("a.b", PanelRole.Free, (500, 200), (0, 0, 0))).Edges.Count());

    [Fact]
    public void The_scene_s_triangles_close_around_the_same_volume_as_the_solids()
    {
        using var scene = JsonDocument.Parse(SceneJson.Of(SampleJob.Workbook()));
        var solids = Solids.Of(SampleJob.BuiltIn()).ToDictionary(s => s.Panel.Id, VolumeOf);
        foreach (var panel in scene.RootElement.GetProperty("panels").EnumerateArray())
        {
            var expected = solids[panel.GetProperty("id").GetString()!];
            Assert.Equal(expected, VolumeOf(panel), expected * 1e-5);
        }
        Assert.Equal(solids.Count, scene.RootElement.GetProperty("panels").GetArrayLength());
    }

    [Fact]
    public void The_scene_s_walls_and_floor_look_at_someone_in_the_recess()
    {
        var someone = new Vertex(1200, 300, 1200);
        Assert.All(
            RoomSolids.Of(SampleJob.Room()).Where(f => f.Kind != RoomFaceKind.Thing),
            f => Assert.True((someone - f.Corners[0]).Dot(f.Normal) > 0, f.Id)
        );
    }

    [Fact]
    public void Pulled_apart_a_box_opens_on_every_side_and_a_door_comes_forward()
    {
        using var scene = JsonDocument.Parse(SceneJson.Of(SampleJob.Workbook()));
        var way = scene
            .RootElement.GetProperty("panels")
            .EnumerateArray()
            .ToDictionary(p => p.GetProperty("id").GetString()!, p => Numbers(p, "explode"));
        Assert.True(way["box-2.left-side"][0] < way["box-2.shelf-1"][0]);
        Assert.True(way["box-2.right-side"][0] > way["box-2.shelf-1"][0]);
        Assert.True(way["box-2.top"][2] > way["box-2.bottom"][2]);
        Assert.True(way["box-2.back"][1] > way["box-2.shelf-1"][1]);
        Assert.True(way["door-2.door"][1] < way["box-2.shelf-1"][1]);
    }

    [Fact]
    public void A_hole_that_runs_over_the_edge_is_still_shown()
    {
        var hole = new Machining.Through("h", new(SampleJob.Mm(5), SampleJob.Mm(5)), SampleJob.Mm(60));
        var panel = SampleJob.Panel("odd.board", PanelRole.Free, (400, 300), (0, 0, 2000)) with { Machining = [hole] };
        Assert.Contains("odd.board", SceneJson.Of(SampleJob.Workbook(more: panel)));
    }

    private static double VolumeOf(Solid solid) => solid.Faces.Sum(f => f.SixfoldVolume) / 6;

    private static double VolumeOf(JsonElement panel)
    {
        var (at, corners) = (Numbers(panel, "positions"), Numbers(panel, "indices"));
        Vertex Corner(int i) =>
            new(at[3 * (int)corners[i]], at[(3 * (int)corners[i]) + 1], at[(3 * (int)corners[i]) + 2]);
        return Enumerable
            .Range(0, corners.Length / 3)
            .Sum(t => Corner(3 * t).Dot(Corner((3 * t) + 1).Cross(Corner((3 * t) + 2))) / 6);
    }

    private static double[] Numbers(JsonElement panel, string name) =>
        [.. panel.GetProperty(name).EnumerateArray().Select(n => n.GetDouble())];

    private static Vertex NormalOf(IReadOnlyList<Vertex> ring) => (ring[1] - ring[0]).Cross(ring[2] - ring[1]).Unit();
}

using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using static Nookwright.Tests.Measure.Given;
using static Nookwright.Tests.Parts.PartsGiven;

namespace Nookwright.Tests.Parts;

/// <summary>How far neighbours of a running grain stand apart in the room.</summary>
public class RunGapTests
{
    [Fact]
    public void Doors_side_by_side_stand_a_gap_apart() =>
        Assert.Equal([Mm(1.5m)], Gaps(Door("d1.x", 0), Door("d2.x", 401.5m)));

    [Fact]
    public void It_is_the_same_gap_from_the_right_to_the_left() =>
        Assert.Equal([Mm(1.5m)], Gaps(Door("d1.x", 401.5m), Door("d2.x", 0)));

    /// <summary>Edging hides none of the sheet's figure, but shows none either: 1.5 mm of air, and 0.5 mm of edging at either side.</summary>
    [Fact]
    public void Edging_on_the_facing_edges_counts_as_gap()
    {
        var edge = new PanelEdge("tape", Mm(0.5m), null);
        var edges = new PanelEdges(null, null, edge, edge);
        Assert.Equal(
            [Mm(2.5m)],
            Gaps(Door("d1.x", 0) with { Edges = edges }, Door("d2.x", 401.5m) with { Edges = edges })
        );
    }

    [Fact]
    public void Panels_that_overlap_or_look_another_way_have_no_gap_that_can_be_told()
    {
        Assert.Equal([null], Gaps(Door("d1.x", 0), Door("d2.x", 300)));
        var turned = Door("d2.x", 500) with { Place = new(Point3.Origin, Direction.PlusZ, Direction.PlusY) };
        Assert.Equal([null], Gaps(Door("d1.x", 0), turned));
    }

    private static IReadOnlyList<Length?> Gaps(params Panel[] panels) =>
        PartsOf(Job with { Runs = [new() { Id = "run", Panels = [.. panels.Select(p => p.Id)] }] }, panels)
            .Runs.Single()
            .Gaps;

    private static Panel Door(string id, decimal left) =>
        Panel(id, 690, 400, PanelRole.Door) with
        {
            Place = AsDoor.MovedBy(new(Mm(left), Length.Zero, Length.Zero)),
        };
}

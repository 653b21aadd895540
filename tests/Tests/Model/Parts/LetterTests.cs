using CsCheck;
using Nookwright.Design;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;
using static Nookwright.Tests.Measure.Given;
using static Nookwright.Tests.Parts.PartsGiven;

namespace Nookwright.Tests.Parts;

public class LetterTests
{
    /// <summary>Few sizes and few differences, so that equal parts, turned ones and mirror images are all common.</summary>
    private static readonly Gen<Panel> AnyPanel = Gen.Select(
        Gen.Int[1, 2].Select(i => i * 300),
        Gen.Int[0, 3],
        Gen.Int[0, 4],
        Gen.Bool,
        Gen.Bool,
        (length, edged, machined, isMdf, isAcross) =>
            Panel("p", length, 200) with
            {
                Material = isMdf ? "mdf-18" : "birch-18",
                Figure = isAcross ? PanelFigure.Width : PanelFigure.Length,
                Edges = EdgedAt(edged),
                Machining = Machined(machined, Mm(length)),
            }
    );

    private static readonly Gen<IReadOnlyList<Panel>> AnyPanels = AnyPanel
        .Array[1, 30]
        .Select(IReadOnlyList<Panel> (panels) => [.. panels.Select((panel, i) => panel with { Id = $"p.{i}" })]);

    [Fact]
    public void Equal_parts_share_a_letter_whatever_they_are_called() =>
        Assert.Equal("A B A", Letters(PartsOf(Panel("a.x", 600, 300), Panel("b.x", 600, 301), Panel("c.x", 600, 300))));

    [Fact]
    public void A_mirror_image_is_another_part()
    {
        Assert.Equal("A B", Letters(PartsOf(Grooved("a.left", 40), Grooved("a.right", 250))));
        Panel Grooved(string id, decimal from) =>
            Panel(id, 600, 300) with
            {
                Machining =
                [
                    new Machining.Groove(PanelFace.Show, new(Mm(100), Mm(from)), new(Mm(500), Mm(from + 10)), Mm(6)),
                    new Machining.Through("h", new(Mm(50), Mm(50)), Mm(5)),
                ],
            };
    }

    /// <summary>By hand: a hole 50 from the left and 80 from the bottom of 600 by 300 comes, half a turn on, to 550 and 220.</summary>
    [Fact]
    public void A_part_turned_by_half_a_turn_is_the_same_part()
    {
        Assert.Equal("A A B", Letters(PartsOf(Holed("a.x", 50, 80), Holed("b.x", 550, 220), Holed("c.x", 550, 80))));
        Panel Holed(string id, decimal x, decimal y) =>
            Panel(id, 600, 300) with
            {
                Machining = [new Machining.Through(id, new(Mm(x), Mm(y)), Mm(60))],
            };
    }

    [Fact]
    public void The_figure_tells_parts_apart_unless_the_material_has_none()
    {
        var across = Panel("b.x", 600, 300) with { Figure = PanelFigure.Width };
        Assert.Equal("A B", Letters(PartsOf(Panel("a.x", 600, 300), across)));
        var mdf = new[] { Panel("a.x", 600, 300), across }.Select(panel => panel with { Material = "mdf-18" });
        Assert.Equal("A A", Letters(PartsOf([.. mdf])));
    }

    [Fact]
    public void A_held_part_does_not_share_a_letter_with_one_that_is_final()
    {
        Assert.Equal(
            "A B B C",
            Letters(PartsOf(Panel("a.x", 600, 300), Held("b.x", "r"), Held("c.x", "r"), Held("d.x", "q")))
        );
        Panel Held(string id, string reading) => Panel(id, Awaited(reading, 600), Written(300));
    }

    [Fact]
    public void Each_place_in_a_running_grain_has_its_own_letter()
    {
        var job = Job with { Runs = [new() { Id = "doors", Panels = ["a.x", "b.x"] }] };
        Assert.Equal(
            "A B C C",
            Letters(PartsOf(job, [.. new[] { "a.x", "b.x", "c.x", "d.x" }.Select(id => Panel(id, 600, 300))]))
        );
    }

    [Fact]
    public void After_Z_comes_AA()
    {
        var list = PartsOf([.. Enumerable.Range(0, 703).Select(i => Panel($"p.{i}", 100 + i, 50))]);
        Assert.Equal(
            "Z AA AZ BA ZZ AAA",
            string.Join(' ', new[] { 25, 26, 51, 52, 701, 702 }.Select(i => list.Parts[i].Letter))
        );
    }

    [Fact]
    public void Letters_come_with_their_counts()
    {
        var alike = PartsOf(Panel("a.x", 600, 300), Panel("b.x", 500, 300), Panel("c.x", 600, 300)).ByLetter.ToList();
        Assert.Equal([("A", 2), ("B", 1)], alike.Select(a => (a.Letter, a.Count)));
    }

    [Fact]
    public void Every_panel_becomes_exactly_one_part() =>
        AnyPanels.Sample(panels =>
            PartsOf(panels).Parts.Select(part => part.Id).SequenceEqual(panels.Select(p => p.Id))
        );

    /// <summary>Two parts share a letter just when one, as it lies or turned about its middle, looks like the other, point by point.</summary>
    [Fact]
    public void Letters_tell_equal_parts_from_unequal_ones() =>
        AnyPanels.Sample(panels =>
        {
            var parts = PartsOf(panels).Parts;
            foreach (var a in parts)
            foreach (var b in parts)
                Assert.Equal(LooksLike(a.Panel, b.Panel), a.Letter == b.Letter);
        });

    [Fact]
    public void A_panel_added_at_the_end_changes_no_letter() =>
        AnyPanels.Sample(panels =>
        {
            var before = PartsOf([.. panels.SkipLast(1)]).Parts.Select(part => (part.Id, part.Letter));
            return PartsOf(panels).Parts.SkipLast(1).Select(part => (part.Id, part.Letter)).SequenceEqual(before);
        });

    [Fact]
    public void Panels_in_another_order_are_the_same_parts_in_the_same_groups() =>
        Gen.Select(AnyPanels, Gen.Int)
            .Sample(
                (panels, seed) =>
                {
                    var shuffled = panels.ToArray();
                    new Random(seed).Shuffle(shuffled);
                    return Groups(PartsOf(panels)).SetEquals(Groups(PartsOf(shuffled)));
                }
            );

    private static HashSet<string> Groups(PartList list) =>
        [.. list.ByLetter.Select(alike => string.Join(' ', alike.Parts.Select(part => part.Id).Order()))];

    private static PanelEdges EdgedAt(int edge) =>
        edge switch
        {
            1 => new(new("tape", Length.Zero, null), null, null, null),
            2 => new(null, new("tape", Length.Zero, null), null, null),
            3 => new(null, null, new("tape", Length.Zero, null), null),
            _ => new(),
        };

    /// <summary>A row of pins near one corner, at its turned place, at two mirrored ones, or none.</summary>
    private static IReadOnlyList<Machining> Machined(int kind, Length length)
    {
        Machining Pins(Length x, Length y) => new Machining.Pins(PanelFace.Show, new(x, y), Mm(32), 3, Mm(5), Mm(10));
        return kind switch
        {
            1 => [Pins(Mm(40), Mm(30))],
            2 => [Pins(length - Mm(40 + 64), Mm(170))],
            3 => [Pins(Mm(40), Mm(170))],
            4 => [Pins(length - Mm(40 + 64), Mm(30))],
            _ => [],
        };
    }

    /// <summary>Every hole drawn as a point, each edge by the middle of its side: compared as sets, turned about the middle.</summary>
    private static bool LooksLike(Panel a, Panel b) =>
        a.Material == b.Material
        && (a.Length.Length, a.Width.Length) == (b.Length.Length, b.Width.Length)
        && (a.Figure == b.Figure || a.Material == "mdf-18")
        && (Marks(a).SetEquals(Marks(b)) || Marks(a).Select(mark => Turned(mark, a)).ToHashSet().SetEquals(Marks(b)));

    private static HashSet<(double X, double Y)> Marks(Panel panel)
    {
        var (length, width) = (panel.Length.Length.Millimetres, panel.Width.Length.Millimetres);
        var holes = panel
            .Machining.Cast<Machining.Pins>()
            .SelectMany(pins =>
                Enumerable
                    .Range(0, pins.Count)
                    .Select(i => (pins.First.X.Millimetres + (32.0 * i), pins.First.Y.Millimetres))
            );
        var edges = new[]
        {
            (panel.Edges.Start, (0, width / 2)),
            (panel.Edges.End, (length, width / 2)),
            (panel.Edges.Low, (length / 2, 0)),
            (panel.Edges.High, (length / 2, width)),
        };
        return [.. holes, .. edges.Where(edge => edge.Item1 is not null).Select(edge => edge.Item2)];
    }

    private static (double X, double Y) Turned((double X, double Y) mark, Panel panel) =>
        (panel.Length.Length.Millimetres - mark.X, panel.Width.Length.Millimetres - mark.Y);
}

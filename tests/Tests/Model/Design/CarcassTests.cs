using CsCheck;
using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using static Nookwright.Tests.Design.DesignGiven;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

public class CarcassTests
{
    /// <summary>Trade practice, phase 6: between-part = outside - 2t, from the actual thickness.</summary>
    [Fact]
    public void A_bottom_between_the_sides_is_the_outside_less_two_measured_thicknesses()
    {
        var built = Built(Metric(Box("box", "600", "700", "500") with { Top = BoxTop.Panel }));
        Assert.Equal(Mm(565), PanelOf(built, "box.bottom").Length.Length); // 600 - 2 × 17.6 = 564.8, to the 0.5 mm
        Assert.Equal(Mm(600.2m), Size(built, "box.width")); // as built
        Assert.Equal(PanelOf(built, "box.bottom").Length.Length, PanelOf(built, "box.top").Length.Length);
    }

    /// <summary>
    /// Trade practice, phase 6 (calc): with parts cut for a nominal 3/4, each box with two sides comes out 3/32 narrow at 0.703
    /// and four boxes 3/8. Cut for the measured sheet, they come out right to the mark.
    /// </summary>
    [Fact]
    public void Nominal_thickness_would_make_each_box_three_thirty_seconds_narrower()
    {
        Carcass[] boxes = [.. Enumerable.Range(1, 4).Select(i => Box($"box-{i}", "24 in", "30 in", "20 in"))];
        var project = Imperial([.. boxes]) with
        {
            Rows = [new() { Id = "run", Pieces = [.. boxes.Select(b => b.Id)] }],
        };
        var right = Size(Built(project), "box-4.right");
        var nominal = project with { Shop = project.Shop with { Sheets = [Sheet("ply", "3/4 in")] } };
        var lostPerBox = (In(24) - Size(Built(nominal), "box-1.bottom.length") - In(0, 703, 1000) * 2).Inches;
        Assert.Equal(3 / 32.0, lostPerBox, 0.0005);
        Assert.Equal(3 / 8.0, 4 * lostPerBox, 0.002);
        Assert.True((right - In(96)).Abs() <= In(0, 1, 64) * 4);
    }

    [Fact]
    public void A_size_tells_its_arithmetic_down_to_the_sheet()
    {
        var built = Built(Imperial(Box("box-1", "31 1/2 in", "30 in", "20 in")));
        var told = string.Join("\n", WhyText.Tell(built.Sizes["box-1.bottom.length"], LengthFormat.Inches(64)));
        Assert.Contains("31 1/2 in - ply.thickness * 2", told);
        Assert.Contains("rounded to the nearest 1/32 in", told);
        Assert.Contains("shop/sheets/ply/measured", told);
    }

    [Fact]
    public void A_dado_makes_the_bottom_longer_by_two_depths_and_cuts_the_sides_on_their_inner_faces()
    {
        var box = Box("box", "600", "700", "500") with { Joint = Joint.Dado, JointDepth = "8" };
        var built = Built(Metric(box));
        Assert.Equal(Mm(581), PanelOf(built, "box.bottom").Length.Length); // 600 - 35.2 + 16 = 580.8
        foreach (var id in (string[])["box.left-side", "box.right-side"])
        {
            var groove = Assert.IsType<Machining.Groove>(PanelOf(built, id).Machining[0]);
            Assert.Equal(PanelFace.Hidden, groove.Face); // the show face of a side looks out of the box
            Assert.Equal(Mm(8), groove.Depth);
            Assert.Equal((Length.Zero, Mm(17.6m)), (groove.From.X, groove.To.X)); // at the foot, as wide as the bottom is thick
            Assert.Equal((Length.Zero, Mm(500)), (groove.From.Y, groove.To.Y));
        }
    }

    [Fact]
    public void Sides_that_stand_between_are_let_into_bottom_and_top()
    {
        var box = Box("box", "600", "700", "500") with
        {
            Through = ThroughMember.BottomAndTop,
            Joint = Joint.Rabbet,
            JointDepth = "8",
            Top = BoxTop.Panel,
        };
        var built = Built(Metric(box));
        Assert.Equal(Mm(600), PanelOf(built, "box.bottom").Length.Length);
        Assert.Equal(Mm(681), PanelOf(built, "box.left-side").Length.Length); // 700 - 35.2 + 16 = 680.8
        Assert.Empty(PanelOf(built, "box.left-side").Machining);
        Assert.Equal(PanelFace.Show, Groove(built, "box.bottom").Face); // a bottom shows its upper face
        Assert.Equal(PanelFace.Hidden, Groove(built, "box.top").Face);
    }

    [Fact]
    public void An_applied_back_is_part_of_the_depth_and_a_rabbeted_one_lies_in_the_members()
    {
        var applied = Box("box", "600", "700", "500") with { Back = new() { Material = "thin" } };
        var rabbeted = applied with { Back = applied.Back with { Fixing = BackFixing.Rabbet } };
        Assert.Equal(Mm(494), Size(Built(Metric(applied)), "box.left-side.width")); // 500 - 5.8 = 494.2
        Assert.Equal(Mm(499.8m), Size(Built(Metric(applied)), "box.depth"));
        Assert.Equal(Mm(500), Size(Built(Metric(rabbeted)), "box.left-side.width"));
        Assert.Equal(Mm(494.2m), Size(Built(Metric(rabbeted)), "box.inside-depth"));
        // 564.8 as built 565, and half a thickness of 8.8 on each side: 582.6, never larger than that.
        Assert.Equal(Mm(582.5m), Size(Built(Metric(rabbeted)), "box.back.width"));
    }

    [Fact]
    public void Slats_lie_between_the_sides_the_first_at_the_bottom_and_the_last_at_the_top()
    {
        var box = Box("box", "600", "700", "500") with
        {
            Top = BoxTop.Panel,
            Back = new() { Kind = BackKind.Slats, Slats = 3 },
        };
        var built = Built(Metric(box));
        var rises = Enumerable.Range(1, 3).Select(i => Solid(PanelOf(built, $"box.back-slat-{i}")).Low.Z).ToList();
        Assert.Equal([Mm(17.6m), Mm(300), Mm(582.4m)], rises);
        Assert.All(
            Enumerable.Range(1, 3),
            i => Assert.Equal(Mm(500), Solid(PanelOf(built, $"box.back-slat-{i}")).High.Y)
        );
    }

    [Fact]
    public void Front_edges_are_edged_on_every_member_that_shows_there()
    {
        var box = Box("box", "600", "700", "500") with
        {
            FrontEdge = "strip",
            Partitions = [new() { Id = "middle" }],
            Top = BoxTop.Stretchers,
        };
        var built = Built(Metric(box));
        var edged = built.Panels.Where(p => p.Edges != new PanelEdges()).Select(p => p.Id);
        Assert.Equal(["box.left-side", "box.right-side", "box.bottom", "box.front-stretcher", "box.middle"], edged);
        Assert.Equal(Mm(8), PanelOf(built, "box.left-side").Edges.Low!.Counted);
        Assert.Equal(Mm(8), PanelOf(built, "box.right-side").Edges.High!.Counted); // the other hand
    }

    [Fact]
    public void The_panels_of_any_box_fill_exactly_its_outside() =>
        AnyBox(Enum.GetValues<Joint>())
            .Sample(given =>
            {
                var built = Built(Job(LengthUnit.Millimetres, given.Thickness, "5 mm", given.Box));
                var piece = Assert.Single(built.Pieces);
                var (low, high) = Corners(piece.Panels);
                Assert.Equal((piece.Low, piece.High), (low, high));
                var size = new[] { high.X - low.X, high.Y - low.Y, high.Z - low.Z }.Order();
                var named = new[] { "box.width", "box.depth", "box.height" }.Select(n => Size(built, n)).Order();
                Assert.Equal(named, size);
            });

    [Fact]
    public void No_two_panels_of_a_butt_jointed_box_overlap() =>
        AnyBox(Joint.PocketScrews, Joint.Screws)
            .Where(given => given.Box.Back is not { Kind: BackKind.Panel, Fixing: BackFixing.Rabbet })
            .Sample(given =>
            {
                var built = Built(Job(LengthUnit.Millimetres, given.Thickness, "5 mm", given.Box));
                if (built.Findings.Any(finding => finding.Rule == "carcass.stretchers-overlap"))
                    return; // Too shallow for two stretchers, and told so.
                var panels = built.Panels.ToList();
                Assert.All(Pairs(panels), pair => Assert.False(Overlap(pair.A, pair.B), $"{pair.A.Id} {pair.B.Id}"));
            });

    [Fact]
    public void What_members_share_in_a_let_in_joint_is_what_is_cut_out_of_one_of_them() =>
        AnyBox(Joint.Dado, Joint.Rabbet)
            .Sample(given =>
            {
                var box = given.Box with
                {
                    Partitions = [],
                    Back = new() { Kind = BackKind.Open },
                };
                var panels = Built(Job(LengthUnit.Millimetres, given.Thickness, "5 mm", box)).Panels.ToList();
                var shared = Pairs(panels)
                    .Where(pair => Overlap(pair.A, pair.B))
                    .Select(pair => Shared(pair.A, pair.B));
                var cut = panels.SelectMany(p =>
                    p.Machining.OfType<Machining.Groove>().Select(groove => InRoom(p, groove))
                );
                Assert.Equal(shared.Order(ByPlace), cut.Order(ByPlace));
            });

    [Fact]
    public void Outside_sizes_are_what_was_asked_to_half_a_mark() =>
        AnyBox(Enum.GetValues<Joint>())
            .Sample(given =>
            {
                var built = Built(Job(LengthUnit.Millimetres, given.Thickness, "5 mm", given.Box));
                foreach (
                    var (name, asked) in new[]
                    {
                        ("width", given.Box.Width),
                        ("height", given.Box.Height),
                        ("depth", given.Box.Depth),
                    }
                )
                {
                    var off = Size(built, $"box.{name}") - LengthText.Read(asked.Text, LengthUnit.Millimetres).Value;
                    Assert.True(off.Abs() * 2 <= Mark, $"{name} {off}");
                }
            });

    [Fact]
    public void Turning_a_box_keeps_every_size_of_every_panel() =>
        AnyBox(Enum.GetValues<Joint>())
            .Sample(given =>
            {
                var front = Built(
                    Job(LengthUnit.Millimetres, given.Thickness, "5 mm", given.Box with { Facing = Facing.Front })
                );
                var turned = Built(Job(LengthUnit.Millimetres, given.Thickness, "5 mm", given.Box));
                Assert.Equal(
                    front.Panels.Select(p => (p.Id, p.Length.Length, p.Width.Length, p.Thickness.Length)),
                    turned.Panels.Select(p => (p.Id, p.Length.Length, p.Width.Length, p.Thickness.Length))
                );
                Assert.Equal(front.Panels.SelectMany(p => p.Machining), turned.Panels.SelectMany(p => p.Machining));
            });

    [Fact]
    public void Another_thickness_changes_only_what_depends_on_it()
    {
        var before = Built(Metric(Box("box", "600", "700", "500")));
        var after = Built(Job(LengthUnit.Millimetres, "18.4 mm", "5.8 mm", Box("box", "600", "700", "500")));
        var changed = before.Sizes.Keys.Where(name => Size(before, name) != Size(after, name)).Order();
        Assert.Equal(
            new[]
            {
                "box.bay-1.width",
                "box.bottom.length",
                "box.bottom.thickness",
                "box.inside-height",
                "box.inside-width",
                "box.joint-depth",
                "box.left-side.thickness",
                "box.right-side.thickness",
                "box.top.length",
                "box.top.thickness",
                "box.width",
                "box.right",
                "ply.thickness",
            }.Order(),
            changed
        );
    }

    private static Comparer<(Point3 Low, Point3 High)> ByPlace =>
        Comparer<(Point3 Low, Point3 High)>.Create(
            (a, b) => (a.Low.X, a.Low.Y, a.Low.Z).CompareTo((b.Low.X, b.Low.Y, b.Low.Z))
        );

    /// <summary>What a groove takes away, in the room.</summary>
    private static (Point3 Low, Point3 High) InRoom(Panel panel, Machining.Groove groove)
    {
        var floor = groove.Face == PanelFace.Hidden ? Length.Zero : panel.Thickness.Length - groove.Depth;
        var a = panel.Place.Map(new(groove.From.X, groove.From.Y, floor));
        var b = panel.Place.Map(new(groove.To.X, groove.To.Y, floor + groove.Depth));
        return (Each(a, b, Length.Min), Each(a, b, Length.Max));
    }

    private static (Point3 Low, Point3 High) Shared(Panel one, Panel other)
    {
        var (a, b) = (Solid(one), Solid(other));
        return (Each(a.Low, b.Low, Length.Max), Each(a.High, b.High, Length.Min));
    }

    private static Machining.Groove Groove(BuiltIn built, string id) =>
        (Machining.Groove)PanelOf(built, id).Machining[0];

    private static IEnumerable<(Panel A, Panel B)> Pairs(IReadOnlyList<Panel> panels) =>
        from i in Enumerable.Range(0, panels.Count)
        from j in Enumerable.Range(i + 1, panels.Count - i - 1)
        select (panels[i], panels[j]);
}

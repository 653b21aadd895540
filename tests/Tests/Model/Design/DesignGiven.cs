using CsCheck;
using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Survey;
using Nookwright.Trouble;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Design;

/// <summary>Jobs for tests: a sheet <c>ply</c> as thick as wanted, a thin one for backs, edgings, and no room.</summary>
internal static class DesignGiven
{
    public static readonly Room NoRoom = new([], [], [], [], new Dictionary<string, Traced>(), []);

    public static Project Metric(params Piece[] pieces) => Job(LengthUnit.Millimetres, "17.6 mm", "5.8 mm", pieces);

    /// <summary>Sheets sold as 3/4 in measure 0.703 in, as a maker found (trade practice, section 2: "real ply").</summary>
    public static Project Imperial(params Piece[] pieces) => Job(LengthUnit.Inches, "0.703 in", "7/32 in", pieces);

    public static Project Job(LengthUnit units, string thickness, string thin, params Piece[] pieces) =>
        new()
        {
            Units = units,
            Shop = new()
            {
                Sheets = [Sheet("ply", thickness), Sheet("thin", thin)],
                Edgings =
                [
                    new()
                    {
                        Id = "tape",
                        Kind = EdgingKind.Tape,
                        Thickness = "0.6 mm",
                    },
                    new()
                    {
                        Id = "thick-tape",
                        Kind = EdgingKind.Tape,
                        Thickness = "2 mm",
                        Counted = true,
                    },
                    new()
                    {
                        Id = "strip",
                        Kind = EdgingKind.Strip,
                        Thickness = "8 mm",
                    },
                ],
            },
            Pieces = pieces,
        };

    public static SheetGood Sheet(string id, string thickness) =>
        new()
        {
            Id = id,
            Nominal = thickness,
            Measured = thickness,
        };

    public static Carcass Box(string id, string width, string height, string depth) =>
        new()
        {
            Id = id,
            Material = "ply",
            Width = width,
            Height = height,
            Depth = depth,
            Back = new() { Kind = BackKind.Open },
        };

    public static BuiltIn Built(Project project) => BuiltIn.Of(project, NoRoom);

    public static Panel PanelOf(BuiltIn built, string id) => built.Panels.Single(panel => panel.Id == id);

    public static Length Size(BuiltIn built, string name) => built.Sizes[name].Length;

    public static IEnumerable<string> Rules(BuiltIn built) => built.Findings.Select(finding => finding.Rule);

    public static Finding Only(BuiltIn built, string rule) => Assert.Single(built.Findings, f => f.Rule == rule);

    /// <summary>What a panel takes up in the room.</summary>
    public static (Point3 Low, Point3 High) Solid(Panel panel)
    {
        var a = panel.Place.Map(Point3.Origin);
        var b = panel.Place.Map(new(panel.Length.Length, panel.Width.Length, panel.Thickness.Length));
        return (Each(a, b, Length.Min), Each(a, b, Length.Max));
    }

    public static (Point3 Low, Point3 High) Corners(IEnumerable<Panel> panels)
    {
        var solids = panels.Select(Solid).ToList();
        return (
            solids.Select(solid => solid.Low).Aggregate((a, b) => Each(a, b, Length.Min)),
            solids.Select(solid => solid.High).Aggregate((a, b) => Each(a, b, Length.Max))
        );
    }

    public static bool Overlap(Panel one, Panel other)
    {
        var (a, b) = (Solid(one), Solid(other));
        return a.Low.X < b.High.X
            && b.Low.X < a.High.X
            && a.Low.Y < b.High.Y
            && b.Low.Y < a.High.Y
            && a.Low.Z < b.High.Z
            && b.Low.Z < a.High.Z;
    }

    /// <summary>Any box a maker might build: any sizes to the 0.1 mm, thickness, way of joining, top, back, partitions, facing.</summary>
    public static Gen<(Carcass Box, string Thickness)> AnyBox(params Joint[] joints) =>
        Gen.Select(
            Gen.Select(Gen.Int[3000, 12000], Gen.Int[3000, 22000], Gen.Int[2100, 7000], Gen.Int[120, 250]),
            Gen.Select(
                Gen.Enum<ThroughMember>(),
                Gen.Int[0, joints.Length - 1].Select(i => joints[i]),
                Gen.Enum<BoxTop>()
            ),
            Gen.Select(Gen.Enum<BackKind>(), Gen.Enum<BackFixing>(), Gen.Int[0, 2], Gen.Enum<Facing>()),
            (size, make, rest) =>
            {
                var box = Box("box", Tenths(size.Item1), Tenths(size.Item2), Tenths(size.Item3)) with
                {
                    Through = make.Item1,
                    Joint = make.Item2,
                    Top = make.Item3,
                    Back = new() { Kind = rest.Item1, Fixing = rest.Item2 },
                    Partitions = [.. Enumerable.Range(1, rest.Item3).Select(i => new Partition { Id = $"p{i}" })],
                    Facing = rest.Item4,
                };
                return (box, Tenths(size.Item4));
            }
        );

    public static void Between(Length length, Length least, Length most) =>
        Assert.True(least <= length && length <= most, $"{length} is not from {least} to {most}");

    public static string Tenths(int tenths) => FormattableString.Invariant($"{tenths / 10m} mm");

    public static Length Mark => Mm(0.5m);

    public static Point3 Each(Point3 a, Point3 b, Func<Length, Length, Length> pick) =>
        new(pick(a.X, b.X), pick(a.Y, b.Y), pick(a.Z, b.Z));
}

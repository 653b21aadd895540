using Nookwright.Cutting;
using Nookwright.Design;
using Nookwright.Flow;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Survey;

namespace Nookwright.Tests.Drawing;

/// <summary>A job put together by hand, panel by panel, so that drawings are tested against sizes nobody computed.</summary>
/// <remarks>
/// A recess 2400 wide, 620 deep and 2450 high that leans a little. A toe base 80 high; three boxes 780 × 560 × 700 with a
/// door each; a top 2400 × 600 in 30 with a cable hole; a runner and a shelf above. All in 18 mm ply.
/// </remarks>
internal static class SampleJob
{
    public const string Ply = "ply-18";
    private const double Thick = 18;

    public static Workbook Workbook(LengthUnit units = LengthUnit.Millimetres, params Panel[] more)
    {
        var builtIn = BuiltIn(more);
        var parts = PartsOf(builtIn);
        return new(new Project { Units = units, Name = "Sample" }, Room(), builtIn, parts, Request(parts), null, []);
    }

    public static BuiltIn BuiltIn(params Panel[] more)
    {
        var pieces = new List<PlacedPiece> { ToeBase() };
        for (var box = 1; box <= 3; box++)
        {
            pieces.Add(Box(box));
            pieces.Add(Door(box));
        }
        pieces.AddRange([Top(), Runner(), Shelf()]);
        foreach (var panel in more)
            pieces.Add(Placed(Free(panel.Piece), panel));
        return new(pieces, new Dictionary<string, Traced>(), [], []);
    }

    public static Room Room() =>
        new(
            [
                new(Wall.Back, [At(0, 620, 0), At(2400, 612, 0), At(2406, 612, 2450), At(-4, 620, 2450)]),
                new(Wall.Left, [At(0, 0, 0), At(0, 620, 0), At(-4, 620, 2450), At(-4, 0, 2450)]),
                new(Wall.Right, [At(2400, 612, 0), At(2400, 0, 0), At(2406, 0, 2450), At(2406, 612, 2450)]),
            ],
            [At(0, 0, 0), At(2400, 0, -6), At(2400, 612, -6), At(0, 620, 0)],
            [At(-4, 0, 2450), At(2406, 0, 2450), At(2406, 612, 2450), At(-4, 620, 2450)],
            [
                OnBack("window-1", RoomThingKind.Window, 700, 1150, 1000, 1000, 0),
                OnBack("outlet-1", RoomThingKind.Outlet, 300, 940, 70, 115, 6),
                OnBack("stud-1", RoomThingKind.Stud, 380, 0, 38, 2450, 0),
                OnBack("stud-2", RoomThingKind.Stud, 2000, 0, 38, 2450, 0),
                OnBack("baseboard-1", RoomThingKind.Baseboard, 0, 0, 2400, 90, 12),
            ],
            new Dictionary<string, Traced>(),
            []
        );

    /// <summary>A panel with its low corner of the plane x, y at a place of the room.</summary>
    public static Panel Panel(
        string id,
        PanelRole role,
        (double Length, double Width) size,
        (double X, double Y, double Z) at,
        Direction x = Direction.PlusX,
        Direction y = Direction.PlusY,
        double thickness = Thick
    ) =>
        new(
            id,
            id.Split('.')[0],
            id.Replace('.', ' '),
            role,
            Ply,
            Size(thickness),
            Size(size.Length),
            Size(size.Width),
            Outline.Rectangle(Mm(size.Length), Mm(size.Width)),
            PanelFigure.Length,
            new(At(at.X, at.Y, at.Z), x, y)
        );

    public static Length Mm(double millimetres) => Length.FromMillimetres((decimal)millimetres);

    public static Point3 At(double x, double y, double z) => new(Mm(x), Mm(y), Mm(z));

    public static Traced Size(double millimetres) => Traced.Written(Mm(millimetres), $"{millimetres} mm", "by hand");

    public static PartList PartsOf(BuiltIn builtIn) =>
        new([.. builtIn.Panels.Select((p, i) => PartOf(p, LetterOf(i)))], [], [], []);

    public static Part PartOf(Panel panel, string letter) =>
        new(panel.Id, letter, panel, panel.Length, panel.Width, null, null);

    private static string LetterOf(int i) => i < 26 ? $"{(char)('A' + i)}" : $"A{(char)('A' + i - 26)}";

    private static CutRequest Request(PartList parts) =>
        new(
            [
                .. parts.Parts.Select(p => new CutPart(
                    p.Id,
                    p.Letter,
                    p.Panel.Name,
                    p.Panel.Material,
                    p.CutLength.Length,
                    p.CutWidth.Length,
                    p.Panel.Figure,
                    []
                )),
            ],
            [],
            [],
            [],
            Saws,
            new()
        );

    public static SawLimits Saws { get; } =
        new(Mm(3.2), Mm(2.2), Mm(6), Mm(760), Mm(2440), Mm(2750), Mm(2440), Mm(1220), Mm(25));

    private static PlacedPiece ToeBase()
    {
        const string id = "base";
        return Placed(
            new ToeBase
            {
                Id = id,
                Width = "2340",
                Depth = "500",
                Height = "80",
            },
            Panel($"{id}.front", PanelRole.BaseRail, (2340, 80), (30, 78, 0), Direction.PlusX, Direction.PlusZ),
            Panel($"{id}.back", PanelRole.BaseRail, (2340, 80), (30, 560, 0), Direction.PlusX, Direction.PlusZ),
            Panel($"{id}.cross-1", PanelRole.BaseCross, (464, 80), (30, 78, 0), Direction.PlusY, Direction.PlusZ),
            Panel($"{id}.cross-2", PanelRole.BaseCross, (464, 80), (1191, 78, 0), Direction.PlusY, Direction.PlusZ),
            Panel($"{id}.cross-3", PanelRole.BaseCross, (464, 80), (2352, 78, 0), Direction.PlusY, Direction.PlusZ)
        );
    }

    private static PlacedPiece Box(int number)
    {
        var (id, x) = ($"box-{number}", 30 + (780 * (number - 1)));
        return Placed(
            new Carcass
            {
                Id = id,
                Width = "780",
                Depth = "560",
                Height = "700",
                Name = $"Box {number}",
            },
            Panel($"{id}.left-side", PanelRole.Side, (700, 554), (x + 18, 20, 80), Direction.PlusZ, Direction.PlusY),
            Panel($"{id}.right-side", PanelRole.Side, (700, 554), (x + 780, 20, 80), Direction.PlusZ, Direction.PlusY),
            Panel($"{id}.bottom", PanelRole.Bottom, (744, 554), (x + 18, 20, 80)),
            Panel($"{id}.top", PanelRole.Top, (744, 554), (x + 18, 20, 762)),
            Panel($"{id}.shelf-1", PanelRole.BoxShelf, (741, 540), (x + 19.5, 34, 420)),
            Panel($"{id}.back", PanelRole.Back, (780, 700), (x, 580, 80), Direction.PlusX, Direction.PlusZ, 6)
        );
    }

    private static PlacedPiece Door(int number) =>
        Placed(
            new Doors
            {
                Id = $"door-{number}",
                Box = $"box-{number}",
                Hinge = number == 1 ? HingeSide.Left : HingeSide.Right,
            },
            Panel(
                $"door-{number}.door",
                PanelRole.Door,
                (777, 697),
                (31.5 + (780 * (number - 1)), 20, 81.5),
                Direction.PlusX,
                Direction.PlusZ
            )
        );

    private static PlacedPiece Top() =>
        Placed(
            new Slab
            {
                Id = "top",
                Width = "2396",
                Depth = "604",
            },
            Panel("top.board", PanelRole.Slab, (2396, 604), (2, 0, 780), thickness: 30) with
            {
                Machining = [new Machining.Through("cable", new(Mm(2100), Mm(540)), Mm(60))],
            }
        );

    private static PlacedPiece Runner() =>
        Placed(
            new Runner
            {
                Id = "runner",
                Length = "2390",
                Height = "60",
            },
            Panel("runner.strip", PanelRole.Runner, (2390, 60), (4, 612, 2240), Direction.PlusX, Direction.PlusZ)
        );

    private static PlacedPiece Shelf() =>
        Placed(
            new Shelf
            {
                Id = "shelf",
                Width = "2392",
                Depth = "300",
            },
            Panel("shelf.board", PanelRole.Shelf, (2392, 300), (2, 312, 2300))
        );

    private static FreePanel Free(string id) =>
        new()
        {
            Id = id,
            Length = "1",
            Width = "1",
        };

    private static PlacedPiece Placed(Piece piece, params Panel[] panels)
    {
        var corners = panels.SelectMany(CornersOf).ToArray();
        return new(
            piece,
            new(corners.Min(c => c.X), corners.Min(c => c.Y), corners.Min(c => c.Z)),
            new(corners.Max(c => c.X), corners.Max(c => c.Y), corners.Max(c => c.Z)),
            panels
        );
    }

    private static IEnumerable<Point3> CornersOf(Panel panel) =>
        from corner in panel.Outline.Corners
        from z in new[] { Length.Zero, panel.Thickness.Length }
        select panel.Place.Map(new(corner.X, corner.Y, z));

    private static PlacedThing OnBack(
        string id,
        RoomThingKind kind,
        double x,
        double z,
        double width,
        double height,
        double projection
    ) =>
        new(
            new RoomThing
            {
                Id = id,
                Kind = kind,
                Wall = Wall.Back,
            },
            [At(x, 616, z), At(x + width, 616, z), At(x + width, 616, z + height), At(x, 616, z + height)],
            Mm(projection)
        );
}

using Nookwright.Cutting;
using Nookwright.Design;
using Nookwright.Flow;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;
using Nookwright.Shop;
using Nookwright.Survey;
using Nookwright.Trouble;

namespace Nookwright.Tests.Fixtures;

/// <summary>
/// Two boxes, a pair of doors that carry running grain and a top that is held, put together by hand, so that what is
/// drawn and printed can be tested without the rooms that would work it out.
/// </summary>
public static class HandMadeWorkbook
{
    private static readonly Length Birch = In(0, 45, 64);
    private static readonly Length Oak = In(0, 23, 32);
    private static readonly Length Tall = In(30);
    private static readonly Length Deep = In(15, 1, 2);
    private static readonly Length Between = In(24) - (Birch * 2);

    /// <summary>The workbook.</summary>
    public static Workbook Make()
    {
        var (builtIn, parts) = (MakeBuiltIn(), MakeParts());
        return new(MakeProject(), MakeRoom(), builtIn, parts, MakeRequest(parts), HandMadePlan.Make(), Findings());
    }

    /// <summary>All letters of its parts.</summary>
    public static IReadOnlyList<string> Letters => ["A", "B", "C", "D", "E"];

    /// <summary>A length in inches.</summary>
    public static Length In(long whole, long numerator = 0, long denominator = 1) =>
        Length.FromInches(whole, numerator, denominator);

    private static Project MakeProject() =>
        new()
        {
            Name = "Bench under the stairs",
            Units = LengthUnit.Inches,
            Shop = new()
            {
                Sheets =
                [
                    new()
                    {
                        Id = "birch",
                        Name = "Birch plywood 3/4",
                        Nominal = "3/4 in",
                        Measured = "45/64 in",
                        Stock =
                        [
                            new()
                            {
                                Length = "96 in",
                                Width = "48 in",
                                Price = 78,
                            },
                        ],
                    },
                    new()
                    {
                        Id = "oak",
                        Name = "White oak plywood 3/4",
                        Nominal = "3/4 in",
                        Measured = "23/32 in",
                        Stock =
                        [
                            new()
                            {
                                Length = "96 in",
                                Width = "48 in",
                                Price = 142,
                            },
                        ],
                    },
                ],
                Edgings =
                [
                    new()
                    {
                        Id = "tape",
                        Name = "Oak tape",
                        Thickness = "1/32 in",
                    },
                ],
            },
            Readings =
            [
                new()
                {
                    Name = "run.width",
                    What = "The two boxes joined, over both outer sides, at the front edge of the tops",
                    Planned = "48 in",
                },
            ],
            Pieces =
            [
                Box("box-1"),
                Box("box-2"),
                new Doors { Id = "doors-1", Box = "box-1" },
                new Slab
                {
                    Id = "top",
                    Width = "run.width + 1 in",
                    Depth = "16 in",
                },
            ],
        };

    private static Carcass Box(string id) =>
        new()
        {
            Id = id,
            Width = "24 in",
            Height = "30 in",
            Depth = "15 1/2 in",
            Material = "birch",
        };

    private static Room MakeRoom()
    {
        var (wide, deep, high) = (In(50), In(18), In(84));
        Point3 At(Length x, Length y, Length z) => new(x, y, z);
        var zero = Length.Zero;
        Point3[] Level(Length z) => [At(zero, zero, z), At(wide, zero, z), At(wide, deep, z), At(zero, deep, z)];
        WallFace[] walls =
        [
            new(Wall.Back, [At(zero, deep, zero), At(wide, deep, zero), At(wide, deep, high), At(zero, deep, high)]),
            new(Wall.Left, [At(zero, zero, zero), At(zero, deep, zero), At(zero, deep, high), At(zero, zero, high)]),
            new(Wall.Right, [At(wide, deep, zero), At(wide, zero, zero), At(wide, zero, high), At(wide, deep, high)]),
        ];
        return new(walls, Level(zero), Level(high), [], new Dictionary<string, Traced>(), []);
    }

    private static BuiltIn MakeBuiltIn()
    {
        var pieces = MakeProject().Pieces.Select(piece => Placed(piece, [.. Panels().Where(p => p.Piece == piece.Id)]));
        return new([.. pieces], new Dictionary<string, Traced>(), [], []);
    }

    private static PlacedPiece Placed(Piece piece, IReadOnlyList<Panel> panels)
    {
        var corners = panels.SelectMany(p => new[] { p.Place.Map(Point3.Origin), p.Place.Map(Far(p)) }).ToList();
        return new(
            piece,
            new(corners.Min(c => c.X), corners.Min(c => c.Y), corners.Min(c => c.Z)),
            new(corners.Max(c => c.X), corners.Max(c => c.Y), corners.Max(c => c.Z)),
            panels
        );
    }

    private static Point3 Far(Panel panel) => new(panel.Length.Length, panel.Width.Length, panel.Thickness.Length);

    private static IEnumerable<Panel> Panels() =>
        [
            .. BoxPanels(1, In(1)),
            .. BoxPanels(2, In(25)),
            DoorPanel(1, In(1, 1, 16)),
            DoorPanel(2, In(13, 1, 16)),
            TopPanel(),
        ];

    private static IEnumerable<Panel> BoxPanels(int number, Length left)
    {
        Panel Member(string id, string name, PanelRole role, Length length, Placement place) =>
            Make($"box-{number}", id, $"{name} of box {number}", role, ("birch", Birch), (length, Deep), place);
        var inside = left + Birch;
        Point3 Corner(Length x, Length z) => new(x, Length.Zero, z);
        yield return Member("left-side", "left side", PanelRole.Side, Tall, Standing(Corner(inside, Length.Zero)));
        yield return Member(
            "right-side",
            "right side",
            PanelRole.Side,
            Tall,
            Standing(Corner(left + In(24), Length.Zero))
        );
        yield return Member("bottom", "bottom", PanelRole.Bottom, Between, Flat(Corner(inside, Length.Zero)));
        yield return Member("top", "top", PanelRole.Top, Between, Flat(Corner(inside, Tall - Birch)));
    }

    private static Panel DoorPanel(int number, Length left)
    {
        var place = new Placement(new(left, Length.Zero, Length.Zero), Direction.PlusZ, Direction.PlusX);
        var name = number == 1 ? "left door" : "right door";
        var door = Make(
            "doors-1",
            $"door-{number}",
            name,
            PanelRole.Door,
            ("oak", Oak),
            (In(29, 7, 8), In(11, 7, 8)),
            place
        );
        var taped = new PanelEdge("tape", Length.Zero, null);
        return door with { Edges = new(taped, taped, taped, taped) };
    }

    private static Panel TopPanel()
    {
        var top = Make(
            "top",
            "slab",
            "top",
            PanelRole.Slab,
            ("oak", Oak),
            (In(49), In(16)),
            Flat(new(In(0, 1, 2), Length.Zero, Tall))
        );
        return top with
        {
            Length = Held() + Size(In(1)),
            Edges = new(null, null, new PanelEdge("tape", Length.Zero, null), null),
        };
    }

    private static Traced Held() => Traced.Read(In(48), "run.width", null, isTaken: false, Size(In(48)));

    private static Panel Make(
        string piece,
        string id,
        string name,
        PanelRole role,
        (string Id, Length Thickness) sheet,
        (Length Length, Length Width) size,
        Placement place
    ) =>
        new(
            $"{piece}.{id}",
            piece,
            name,
            role,
            sheet.Id,
            Size(sheet.Thickness),
            Size(size.Length),
            Size(size.Width),
            Outline.Rectangle(size.Length, size.Width),
            PanelFigure.Length,
            place
        );

    private static Placement Flat(Point3 corner) => new(corner, Direction.PlusX, Direction.PlusY);

    // On end, facing left: length up, width into the recess, thickness to the left of the corner.
    private static Placement Standing(Point3 corner) => new(corner, Direction.PlusZ, Direction.PlusY);

    private static Traced Size(Length length) => Traced.Written(length, length.ToString(), "by hand");

    private static PartList MakeParts()
    {
        var parts = Panels().Select(MakePart).ToList();
        IReadOnlyList<PartSide> Sides(string letter, MatchedSide side) =>
            [.. parts.Where(p => p.Letter == letter).Select(p => new PartSide(p.Id, side))];
        MatchGroup[] matches =
        [
            new(
                "sides",
                Sides("A", MatchedSide.Length),
                Tall,
                "The sides of a box must be equally long, or it leans.",
                false
            ),
            new("bottoms", Sides("B", MatchedSide.Length), Between, "Bottoms and tops hold the sides apart.", true),
        ];
        return new(parts, matches, [new("doors", ["doors-1.door-1", "doors-1.door-2"], MatchedSide.Length)], []);
    }

    private static Part MakePart(Panel panel)
    {
        var letter = panel.Role switch
        {
            PanelRole.Side => "A",
            PanelRole.Bottom or PanelRole.Top => "B",
            PanelRole.Door => panel.Id.EndsWith('1') ? "C" : "D",
            _ => "E",
        };
        var blank = panel.Length.IsHeld ? new Blank(In(50), In(17), In(1), ["run.width"]) : null;
        var run = panel.Role == PanelRole.Door ? new PlaceInRun("doors", letter == "C" ? 1 : 2) : null;
        return new(panel.Id, letter, panel, panel.Length, panel.Width, blank, run);
    }

    private static CutRequest MakeRequest(PartList list)
    {
        var saws = new SawLimits(
            TableKerf: In(0, 1, 8),
            TrackKerf: In(0, 3, 32),
            Dressing: In(0, 1, 4),
            RipReach: In(30),
            CrosscutReach: In(96),
            TrackLength: In(108),
            ChunkLength: In(96),
            ChunkWidth: In(48),
            Allowance: In(1)
        );
        return new([.. list.Parts.Select(ToCut)], [], [], [], saws, new());
    }

    private static CutPart ToCut(Part part) =>
        new(
            part.Id,
            part.Letter,
            part.Panel.Name,
            part.Panel.Material,
            part.Blank?.Length ?? part.CutLength.Length,
            part.Blank?.Width ?? part.CutWidth.Length,
            part.Panel.Figure,
            part.Blank?.Awaits ?? []
        );

    private static Finding[] Findings() =>
        [
            new(
                "doors.wide",
                Severity.Warning,
                "The doors leave 1/16 in to each other; check them after painting.",
                ["doors-1"],
                "common practice, no source"
            ),
            new("parts.held", Severity.Note, "The top waits for run.width.", ["top"]),
        ];
}

using Nookwright.Design;
using Nookwright.Geometry;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;
using static Nookwright.Tests.Measure.Given;

namespace Nookwright.Tests.Parts;

/// <summary>Panels and jobs for tests, in millimetres.</summary>
internal static class PartsGiven
{
    /// <summary>Standing on end with its length up and its width into the recess, as a side of a box stands.</summary>
    public static readonly Placement AsSide = new(Point3.Origin, Direction.PlusZ, Direction.PlusY);

    /// <summary>Lying level, its length to the right and its width into the recess, as a bottom lies.</summary>
    public static readonly Placement AsBottom = Placement.Identity;

    /// <summary>Standing on end and facing front, as a door hangs: length up, width to the right.</summary>
    public static readonly Placement AsDoor = new(Point3.Origin, Direction.PlusZ, Direction.PlusX);

    /// <summary>Upright and facing front: length to the right, width up.</summary>
    public static readonly Placement AsRail = new(Point3.Origin, Direction.PlusX, Direction.PlusZ);

    public static readonly Project Job = new()
    {
        Units = LengthUnit.Millimetres,
        Shop = new()
        {
            Sheets =
            [
                new() { Id = "birch-18", Nominal = "18 mm" },
                new()
                {
                    Id = "mdf-18",
                    Nominal = "18 mm",
                    HasFigure = false,
                },
            ],
        },
    };

    public static Panel Panel(string id, decimal length, decimal width, PanelRole role = PanelRole.Free) =>
        Panel(id, Written(length), Written(width)) with
        {
            Role = role,
            Place = role switch
            {
                PanelRole.Side => AsSide,
                PanelRole.Door => AsDoor,
                PanelRole.BaseRail or PanelRole.BackSlat or PanelRole.Front => AsRail,
                _ => AsBottom,
            },
        };

    public static Panel Panel(string id, Traced length, Traced width) =>
        new(
            id,
            id.Split('.')[0],
            id,
            PanelRole.Free,
            "birch-18",
            Written(18),
            length,
            width,
            Outline.Rectangle(length.Length, width.Length),
            PanelFigure.Length,
            AsBottom
        );

    public static Traced Written(decimal millimetres) => Traced.Written(Mm(millimetres), $"{millimetres}", "here");

    /// <summary>A reading nobody has taken yet.</summary>
    public static Traced Awaited(string id, decimal planned) =>
        Traced.Read(Mm(planned), id, null, isTaken: false, Written(planned));

    public static PartList PartsOf(params IReadOnlyList<Panel> panels) => PartsOf(Job, panels);

    public static PartList PartsOf(Project job, params IReadOnlyList<Panel> panels) =>
        PartList.Of(
            new(
                [
                    new(
                        new FreePanel
                        {
                            Id = "any",
                            Length = "1",
                            Width = "1",
                        },
                        default,
                        default,
                        panels
                    ),
                ],
                new Dictionary<string, Traced>(),
                [],
                []
            ),
            job
        );

    public static string Letters(PartList list) => string.Join(' ', list.Parts.Select(part => part.Letter));
}

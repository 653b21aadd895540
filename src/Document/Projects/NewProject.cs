using Nookwright.Measure;
using Nookwright.Shop;

namespace Nookwright.Projects;

/// <summary>A document to begin with: a small, slightly crooked recess with one box in it, to be written over.</summary>
/// <remarks>All its numbers are our own, made up.</remarks>
public static class NewProject
{
    /// <summary>A new document in a maker's unit.</summary>
    public static Project Blank(LengthUnit unit) => unit == LengthUnit.Inches ? InInches() : InMillimetres();

    private static Project InInches() =>
        Of(
            new SheetGood
            {
                Id = "ply",
                Name = "Plywood 3/4",
                Nominal = "3/4 in",
                Stock = [new() { Length = "96 in", Width = "48 in" }],
            },
            new RoomSurvey
            {
                Readings =
                [
                    Width("width-low", PlaceInPlan.Front, "4 in", "48 1/8 in"),
                    Width("width-high", PlaceInPlan.Front, "60 in", "47 15/16 in"),
                    Width("width-back", PlaceInPlan.Back, "4 in", "48 1/16 in"),
                    Reading("depth-left", RoomReadingKind.Depth, PlaceInPlan.Left, "4 in", "16 1/4 in"),
                    Reading("depth-right", RoomReadingKind.Depth, PlaceInPlan.Right, "4 in", "16 1/8 in"),
                    Reading("ceiling", RoomReadingKind.Ceiling, PlaceInPlan.Middle, null, "95 3/4 in"),
                ],
            },
            Box("room.width-high - 2 * gap", "30 in", "14 in", "gap"),
            new NamedSize
            {
                Name = "gap",
                Size = "1/4 in",
                Note = "between the box and each wall, to be filled",
            }
        ) with
        {
            Units = LengthUnit.Inches,
            Paper = PaperSize.Letter,
        };

    private static Project InMillimetres() =>
        Of(
            new SheetGood
            {
                Id = "ply",
                Name = "Plywood 18",
                Nominal = "18 mm",
                Stock = [new() { Length = "2440 mm", Width = "1220 mm" }],
            },
            new RoomSurvey
            {
                Readings =
                [
                    Width("width-low", PlaceInPlan.Front, "100 mm", "1223 mm"),
                    Width("width-high", PlaceInPlan.Front, "1500 mm", "1218 mm"),
                    Width("width-back", PlaceInPlan.Back, "100 mm", "1221 mm"),
                    Reading("depth-left", RoomReadingKind.Depth, PlaceInPlan.Left, "100 mm", "412 mm"),
                    Reading("depth-right", RoomReadingKind.Depth, PlaceInPlan.Right, "100 mm", "409 mm"),
                    Reading("ceiling", RoomReadingKind.Ceiling, PlaceInPlan.Middle, null, "2431 mm"),
                ],
            },
            Box("room.width-high - 2 * gap", "760 mm", "360 mm", "gap"),
            new NamedSize
            {
                Name = "gap",
                Size = "6 mm",
                Note = "between the box and each wall, to be filled",
            }
        ) with
        {
            Units = LengthUnit.Millimetres,
            Paper = PaperSize.A4,
        };

    private static Project Of(SheetGood sheet, RoomSurvey room, Piece box, NamedSize gap) =>
        new()
        {
            Name = "New job",
            Shop = new Workshop { Sheets = [sheet] },
            Room = room,
            Sizes = [gap],
            Pieces = [box],
        };

    private static Carcass Box(SizeText width, SizeText height, SizeText depth, SizeText fromLeft) =>
        new()
        {
            Id = "box-1",
            Material = "ply",
            At = new Place { X = fromLeft },
            Width = width,
            Height = height,
            Depth = depth,
        };

    private static RoomReading Width(string id, PlaceInPlan at, SizeText height, SizeText value) =>
        Reading(id, RoomReadingKind.Width, at, height, value);

    private static RoomReading Reading(
        string id,
        RoomReadingKind kind,
        PlaceInPlan at,
        SizeText? height,
        SizeText value
    ) =>
        new()
        {
            Id = id,
            Kind = kind,
            At = at,
            Height = height,
            Value = value,
        };
}

using System.Text.Json;
using Nookwright.Records;

namespace Nookwright.Projects;

/// <summary>What fields are called in words.</summary>
public static class FieldWords
{
    /// <summary>Fields whose name in the file does not say enough, by record and property.</summary>
    public static IReadOnlyDictionary<string, string> Table { get; } =
        new Dictionary<string, string>
        {
            ["Project.Units"] = "a bare number is in",
            ["Project.Mark"] = "the shop's smallest mark",
            ["Project.Paper"] = "paper of the packet",
            ["Piece.Facing"] = "front looks",
            ["Piece.Material"] = "made of",
            ["Place.X"] = "from the left",
            ["Place.Y"] = "into the recess",
            ["Place.Z"] = "above the floor",
            ["LongBy.Left"] = "long at the left end by",
            ["LongBy.Right"] = "long at the right end by",
            ["LongBy.Front"] = "long at the front or lower edge by",
            ["LongBy.Back"] = "long at the back or upper edge by",
            ["EdgedSides.Left"] = "edging, left end",
            ["EdgedSides.Right"] = "edging, right end",
            ["EdgedSides.Front"] = "edging, front or lower edge",
            ["EdgedSides.Back"] = "edging, back or upper edge",
            ["Carcass.Width"] = "width, outside",
            ["Carcass.Height"] = "height, outside",
            ["Carcass.Depth"] = "depth, outside",
            ["Carcass.Through"] = "runs through at the corners",
            ["Carcass.Joint"] = "bottom and top meet the sides by",
            ["Carcass.JointDepth"] = "depth of dado or rabbet",
            ["Carcass.Top"] = "closed above by",
            ["Carcass.FrontEdge"] = "edging of the front",
            ["BoxBack.Kind"] = "back",
            ["BoxBack.Fixing"] = "back is fixed",
            ["BoxBack.Material"] = "back is made of",
            ["BoxBack.Slats"] = "number of slats",
            ["BoxBack.SlatHeight"] = "height of a slat",
            ["Partition.At"] = "from the left side",
            ["BoxShelf.Kind"] = "rests",
            ["BoxShelf.At"] = "underside above the bottom",
            ["BoxShelf.SetBack"] = "set back from the front",
            ["BoxShelf.Clearance"] = "shorter than the bay by",
            ["Doors.Box"] = "on the box",
            ["Doors.Bay"] = "in front of bay",
            ["Doors.Style"] = "meet the box",
            ["Doors.Count"] = "number of doors",
            ["Doors.Hinge"] = "hung on the side",
            ["Doors.Gap"] = "gap round a door",
            ["Doors.Overlay"] = "lie over the box by",
            ["Doors.Width"] = "width of one door",
            ["Doors.Height"] = "height of a door",
            ["Doors.Figure"] = "figure runs",
            ["Doors.Edge"] = "edging all round",
            ["FlatPiece.Width"] = "width, over all",
            ["FlatPiece.Depth"] = "depth of the main run",
            ["FlatPiece.Return"] = "return at the end",
            ["FlatPiece.ReturnLength"] = "return comes forward by",
            ["FlatPiece.ReturnDepth"] = "width of the return",
            ["FlatPiece.Make"] = "an L is made of",
            ["FlatPiece.Layers"] = "layers",
            ["RoundHole.X"] = "centre from the left end",
            ["RoundHole.Y"] = "centre from the front or lower edge",
            ["ToeBase.CrossMembers"] = "cross members, ends counted",
            ["Runner.Length"] = "length along the wall",
            ["Runner.Wall"] = "fixed to the wall",
            ["Trim.Lie"] = "lies",
            ["FreePanel.Lie"] = "lies",
            ["FreePanel.Figure"] = "figure runs along",
            ["RoomReading.Kind"] = "what was measured",
            ["RoomReading.At"] = "where",
            ["RoomReading.Height"] = "at the height",
            ["RoomReading.Value"] = "the tape said",
            ["RoomReading.Date"] = "read on",
            ["RoomThing.Kind"] = "what it is",
            ["RoomThing.Wall"] = "on the wall",
            ["RoomThing.Along"] = "from the wall's left end",
            ["RoomThing.Bottom"] = "lower edge above the floor",
            ["RoomThing.Projection"] = "stands out by",
            ["BuiltReading.What"] = "what to measure",
            ["BuiltReading.Planned"] = "should come to",
            ["BuiltReading.Taken"] = "the tape said",
            ["BuiltReading.Date"] = "read on",
            ["NamedSize.Size"] = "size",
            ["SheetGood.Nominal"] = "thickness, as sold",
            ["SheetGood.Measured"] = "thickness, measured",
            ["SheetGood.HasFigure"] = "has a figure",
            ["SheetGood.KilogramsPerSquareMetre"] = "kilograms a square metre",
            ["SheetGood.Source"] = "where the numbers come from",
            ["StockSize.Length"] = "length, along the figure",
            ["StockSize.Width"] = "width, across the figure",
            ["StockSize.Quantity"] = "how many there are",
            ["StockSize.Price"] = "price of one",
            ["StockSize.Id"] = "written on it",
            ["StockSize.Offcut"] = "an offcut",
            ["StockSize.OutOfSquare"] = "out of square over its width by",
            ["StockSize.TrustsEdges"] = "factory edges are measured from",
            ["BadPlace.X"] = "begins along the length at",
            ["BadPlace.Y"] = "begins across at",
            ["BadPlace.Length"] = "goes along the length for",
            ["BadPlace.Width"] = "goes across for",
            ["BadPlace.Why"] = "what is wrong there",
            ["Edging.Kind"] = "tape or strip",
            ["Edging.Counted"] = "counted in the size",
            ["TableSaw.Kerf"] = "table saw, kerf",
            ["TableSaw.RipReach"] = "table saw, widest rip",
            ["TableSaw.CrosscutReach"] = "table saw, longest crosscut",
            ["TableSaw.CrosscutWidth"] = "table saw, widest piece at the crosscut guide",
            ["TrackSaw.Kerf"] = "track saw, kerf",
            ["TrackSaw.TrackLength"] = "track saw, longest cut",
            ["Workshop.Dressing"] = "cut off a rough edge",
            ["Workshop.ChunkLength"] = "longest chunk one person handles",
            ["Workshop.ChunkWidth"] = "widest chunk one person handles",
            ["Workshop.Allowance"] = "a held part is cut long by",
            ["Workshop.TrustsEdges"] = "factory edges are measured from",
            ["Workshop.LeastRip"] = "narrowest rip without a caution",
            ["Workshop.LeastEdge"] = "shortest edge at the fence without a caution",
            ["Workshop.ChunkKilograms"] = "heaviest chunk one person handles, kg",
            ["CuttingWishes.ExtraVisits"] = "visits more than the fewest, for fewer sheets",
            ["CuttingWishes.BoxByBox"] = "finish one box before the next",
            ["Pin.From"] = "must come from",
            ["Row.Direction"] = "goes",
            ["Row.Gap"] = "gap between neighbours",
        };

    private static readonly IReadOnlyDictionary<string, string> OneOf = new Dictionary<string, string>
    {
        ["partitions"] = "partition",
        ["shelves"] = "shelf",
        ["holes"] = "hole",
        ["stock"] = "stock size",
        ["bad"] = "bad place",
        ["pins"] = "pin",
        ["apart"] = "apart",
        ["panels"] = "part",
        ["pieces"] = "piece",
    };

    /// <summary>What a field is called, with the member it belongs to.</summary>
    public static string Label(Leaf leaf)
    {
        var members = leaf.Within.Zip(leaf.Within.Skip(1), (list, key) => Member(list, key)).OfType<string>();
        return string.Join(", ", members) is { Length: > 0 } within ? $"{within}: {Words(leaf)}" : Words(leaf);
    }

    private static string? Member(string list, string key) =>
        OneOf.TryGetValue(list, out var member)
            ? $"{member} {(int.TryParse(key, out var index) ? index + 1 : key)}"
            : null;

    private static string Words(Leaf leaf)
    {
        var property = leaf.Field.Property;
        return Table.TryGetValue($"{property.DeclaringType!.Name}.{property.Name}", out var words)
            ? words
            : JsonNamingPolicy.SnakeCaseLower.ConvertName(property.Name).Replace('_', ' ');
    }
}

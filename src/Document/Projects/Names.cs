using Nookwright.Measure;
using Nookwright.Shop;
using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>Checks names: each can stand in a formula and on a label, and means one thing.</summary>
internal static class Names
{
    /// <summary>In formulas, what comes before the dot of a room's reading.</summary>
    private const string Room = "room";

    /// <summary>What formulas may ask of a piece, a thing or a material; other names after its dot are free.</summary>
    private static readonly HashSet<string> Sides =
    [
        "left",
        "right",
        "front",
        "back",
        "bottom",
        "top",
        "width",
        "depth",
        "height",
        "length",
        "thickness",
    ];

    /// <summary>A name, the path of the field that gives it, and whether other names are made from it by a dot.</summary>
    private readonly record struct Given(string Name, string Path, bool HasSides);

    /// <summary>Names that do not hold.</summary>
    public static IEnumerable<Refusal> Of(Project project)
    {
        var lists = Lists(project).Select(list => list.ToList()).ToList();
        foreach (var refusal in lists.SelectMany(OfList))
            yield return refusal;
        foreach (var refusal in TakenForSides(lists[0]))
            yield return refusal;
    }

    /// <summary>Lists in each of which a name stands for one thing; the first holds all that formulas see.</summary>
    private static IEnumerable<IEnumerable<Given>> Lists(Project project)
    {
        yield return
        [
            .. Ids("shop/sheets", project.Shop.Sheets, sheet => sheet.Id),
            .. Ids("room/things", project.Room.Things, thing => thing.Id),
            .. Ids("pieces", project.Pieces, piece => piece.Id),
            .. project.Sizes.Select((size, i) => new Given(size.Name, $"sizes/{i}/name", false)),
            .. project.Readings.Select((reading, i) => new Given(reading.Name, $"readings/{i}/name", false)),
        ];
        yield return Ids("room/readings", project.Room.Readings, reading => reading.Id);
        yield return Ids("shop/edgings", project.Shop.Edgings, edging => edging.Id);
        yield return Ids("rows", project.Rows, row => row.Id);
        yield return Ids("runs", project.Runs, run => run.Id);
        yield return Ids("matches", project.Matches, match => match.Id);
        yield return Ids("cutting/pins", project.Cutting.Pins, pin => pin.Id);
        yield return Ids("cutting/apart", project.Cutting.Apart, apart => apart.Id);
        yield return project.Shop.Sheets.SelectMany((sheet, i) => StockIds(sheet, $"shop/sheets/{i}/stock"));
        foreach (var (index, piece) in project.Pieces.Index())
            yield return Members(piece, $"pieces/{index}");
    }

    private static IEnumerable<Given> Members(Piece piece, string path) =>
        piece switch
        {
            Carcass box =>
            [
                .. Ids($"{path}/partitions", box.Partitions, partition => partition.Id),
                .. Ids($"{path}/shelves", box.Shelves, shelf => shelf.Id),
            ],
            FlatPiece flat => Ids($"{path}/holes", flat.Holes, hole => hole.Id),
            FreePanel panel => Ids($"{path}/holes", panel.Holes, hole => hole.Id),
            _ => [],
        };

    /// <summary>Stock is named over all materials, so that a pin need not say which.</summary>
    private static IEnumerable<Given> StockIds(SheetGood sheet, string path) =>
        from stock in sheet.Stock.Index()
        where stock.Item.Id is not null
        select new Given(stock.Item.Id!, $"{path}/{stock.Index}/id", true);

    private static IEnumerable<Given> Ids<T>(string path, IEnumerable<T> items, Func<T, string> id) =>
        items.Select((item, i) => new Given(id(item), $"{path}/{i}/id", true));

    private static IEnumerable<Refusal> OfList(List<Given> names)
    {
        var seen = new HashSet<string>();
        foreach (var given in names)
            if (!IsName(given.Name) || (given.HasSides && given.Name.Contains('.')))
                yield return new(NotAName(given), given.Path);
            else if (!seen.Add(given.Name))
                yield return new(
                    $"Something else here is called \"{given.Name}\" too: give one of them another name.",
                    given.Path
                );
    }

    private static IEnumerable<Refusal> TakenForSides(List<Given> names)
    {
        var owners = names.Where(given => given.HasSides).Select(given => given.Name).Append(Room).ToHashSet();
        foreach (var given in names)
            if (given.Name == Room)
                yield return new($"\"{Room}\" means the room itself in formulas: choose another name.", given.Path);
            else if (
                given.Name.Split('.') is [var owner, var side, ..]
                && owners.Contains(owner)
                && IsTaken(owner, side)
            )
                yield return new(
                    $"In a formula \"{given.Name}\" would be taken for a side of \"{owner}\": choose another name.",
                    given.Path
                );
    }

    private static bool IsTaken(string owner, string side) => owner == Room || Sides.Contains(side);

    /// <summary>A name is what a formula reads as one name, so that the two can never differ.</summary>
    private static bool IsName(string text) =>
        Formula.Read(text).Take(out var formula, out _) && formula.Names is [var name] && name.Name == text;

    private static string NotAName(Given given) =>
        $"\"{given.Name}\" cannot stand in a formula: begin with a letter, go on with letters, digits, _"
        + (given.HasSides ? " or - between two of them." : ", or a dot or - between two of them.");
}

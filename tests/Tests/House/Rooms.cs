using System.Text.RegularExpressions;

namespace Nookwright.Tests.House;

/// <summary>Holds the code to <c>ROOMS.md</c>.</summary>
public sealed partial class Rooms
{
    private static readonly IReadOnlyList<(string Name, string Floor)> Table = ReadTable();

    public static TheoryData<string> Names => [.. Table.Select(room => room.Name)];

    [Fact]
    public void Every_folder_of_a_floor_is_a_room_of_the_table()
    {
        var floorsWithRooms = Table.Where(r => r.Name != r.Floor).Select(r => r.Floor).Distinct();
        var folders = floorsWithRooms.SelectMany(floor =>
            Directory.GetDirectories(Checkout.File("src", floor)).Select(Path.GetFileName).Except(["bin", "obj"])
        );
        Assert.Equal(Table.Where(r => r.Name != r.Floor).Select(r => r.Name).Order(), folders.Order());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_room_uses_only_rooms_above_it(string room)
    {
        var below = Table.Select(r => r.Name).SkipWhile(name => name != room).Skip(1).ToHashSet();
        var wrong =
            from file in SourcesOf(room)
            from Match use in UseOfARoom().Matches(File.ReadAllText(file))
            where below.Contains(use.Groups[1].Value)
            select $"{Path.GetFileName(file)} uses {use.Groups[1].Value}";
        Assert.Empty(wrong.Distinct());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void A_file_belongs_to_the_room_of_its_folder(string room)
    {
        var strangers =
            from file in SourcesOf(room)
            where Path.GetExtension(file) == ".cs"
            let home = Home().Match(File.ReadAllText(file))
            where home.Success && home.Groups[1].Value != room
            select $"{Path.GetFileName(file)} says {home.Groups[1].Value}";
        Assert.Empty(strangers);
    }

    [Fact]
    public void A_rooms_name_is_never_a_types_name()
    {
        var types = from room in Table from file in SourcesOf(room.Name) select Path.GetFileNameWithoutExtension(file);
        Assert.Empty(types.Intersect(Table.Select(r => r.Name)));
    }

    private static IEnumerable<string> SourcesOf(string room)
    {
        var floor = Table.Single(r => r.Name == room).Floor;
        var folder = room == floor ? Checkout.File("src", floor) : Checkout.File("src", floor, room);
        var built = new[] { "bin", "obj", "node_modules" };
        return Directory
            .EnumerateFiles(folder, "*", SearchOption.AllDirectories)
            .Where(file => Path.GetExtension(file) is ".cs" or ".razor")
            .Where(file => !Path.GetRelativePath(folder, file).Split(Path.DirectorySeparatorChar).Any(built.Contains));
    }

    private static List<(string, string)> ReadTable() =>
        [
            .. File.ReadLines(Checkout.File("ROOMS.md"))
                .Select(line => Row().Match(line))
                .Where(row => row.Success && row.Groups[1].Value != "room")
                .Select(row => (row.Groups[1].Value, row.Groups[2].Value)),
        ];

    [GeneratedRegex(@"^\| (\w+) \| (\w+) \|")]
    private static partial Regex Row();

    [GeneratedRegex(@"\bNookwright\.(\w+)")]
    private static partial Regex UseOfARoom();

    [GeneratedRegex(@"^namespace Nookwright\.(\w+)", RegexOptions.Multiline)]
    private static partial Regex Home();
}

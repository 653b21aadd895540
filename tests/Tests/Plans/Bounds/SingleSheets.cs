using System.Text.Json;
using Nookwright.Bounds;
using Nookwright.Tests.Planning;

namespace Nookwright.Tests.Bounds;

/// <summary>Published instances of one sheet and the greatest value that guillotine cutting gets out of it.</summary>
public class SingleSheets
{
    /// <summary>
    /// J. E. Beasley's twelve instances (1985) with the optima that Cintra, Miyazawa, Wakabayashi and Xavier publish for them, as
    /// they lie and with every piece free to turn (European Journal of Operational Research 191, 2008, and the table on
    /// G. Cintra's page at the University of São Paulo).
    /// </summary>
    [Theory]
    [InlineData("gcut1", 56460, 58136)]
    [InlineData("gcut2", 60536, 60611)]
    [InlineData("gcut3", 61036, 61626)]
    [InlineData("gcut4", 61698, 62265)]
    [InlineData("gcut5", 246000, 246000)]
    [InlineData("gcut6", 238998, 240951)]
    [InlineData("gcut7", 242567, 245866)]
    [InlineData("gcut8", 246633, 247787)]
    [InlineData("gcut9", 971100, 971100)]
    [InlineData("gcut10", 982025, 982025)]
    [InlineData("gcut11", 980096, 980096)]
    [InlineData("gcut12", 979986, 988694)]
    public void Without_a_limit_on_copies_the_table_gives_the_published_optimum(string name, int asTheyLie, int turned)
    {
        Assert.Equal(asTheyLie, MostOf(name, isLimited: false, isFree: false));
        Assert.Equal(turned, MostOf(name, isLimited: false, isFree: true));
    }

    /// <summary>Christofides and Whitlock, Operations Research 25, 1977, limit the copies; the table does not, so it is above their optima.</summary>
    [Theory]
    [InlineData("cgcut1", 244)]
    [InlineData("cgcut2", 2892)]
    [InlineData("cgcut3", 1860)]
    public void With_a_limit_on_copies_the_table_is_never_below_the_published_optimum(string name, int value) =>
        Assert.InRange(MostOf(name, isLimited: true, isFree: false), value, int.MaxValue);

    private static int MostOf(string name, bool isLimited, bool isFree)
    {
        var sheet = Instance(name);
        var items = sheet.GetProperty("items").EnumerateArray().Select(Item.Of).ToList();
        var (x, y) = (sheet.GetProperty("L").GetInt32(), sheet.GetProperty("W").GetInt32());
        var table = new GuillotineTable(
            Points(x, i => i.Length, i => i.Width),
            Points(y, i => i.Width, i => i.Length),
            0,
            0
        );
        foreach (var item in items)
        {
            Offer(item.Length, item.Width, item.Value);
            if (isFree)
                Offer(item.Width, item.Length, item.Value);
        }
        table.Fill();
        return table.Worth(x, y);

        CutPoints Points(int extent, Func<Item, int> side, Func<Item, int> other) =>
            CutPoints.Sums(extent, items.Select(i => (Ways(side(i), other(i)), isLimited ? i.Most : extent)));

        IReadOnlyList<int> Ways(int side, int other) => isFree ? [side, other] : [side];

        void Offer(int length, int width, int value)
        {
            if (length <= x && width <= y)
                table.Offer(length, width, value);
        }
    }

    private sealed record Item(int Length, int Width, int Most, int Value)
    {
        public static Item Of(JsonElement json) =>
            new(Get(json, "l"), Get(json, "w"), Get(json, "max"), Get(json, "v"));

        private static int Get(JsonElement json, string name) =>
            json.TryGetProperty(name, out var number) && number.ValueKind == JsonValueKind.Number
                ? number.GetInt32()
                : 0;
    }

    private static JsonElement Instance(string name) =>
        JsonDocument
            .Parse(File.ReadAllText(PublicInstances.File("single_sheet_guillotine.json")))
            .RootElement.GetProperty("instances")
            .EnumerateArray()
            .First(i => i.GetProperty("name").GetString() == name);
}

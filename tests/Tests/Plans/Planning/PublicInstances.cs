using System.Globalization;
using System.Text.Json;
using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Tests.Cutting;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Planning;

/// <summary>Published instances of guillotine cutting, from a folder <c>shared/data</c> beside the checkout or above it.</summary>
internal static class PublicInstances
{
    /// <summary>A file of the folder; a test that needs it is skipped where there is none.</summary>
    public static string File(string name)
    {
        for (
            var folder = Path.GetDirectoryName(Checkout.Folder);
            folder is not null;
            folder = Path.GetDirectoryName(folder)
        )
            if (Path.Combine(folder, "shared", "data", name) is var file && System.IO.File.Exists(file))
                return file;
        Assert.Skip($"There is no shared/data/{name} above the checkout.");
        return "";
    }

    /// <summary>Bin packing instances, one a line: name; kinds; W; H; w,h[,count]; … Oriented.</summary>
    public static IEnumerable<(string Name, CutRequest Request)> Bins(string name) =>
        System.IO.File.ReadLines(File(name)).Where(l => !l.StartsWith('#') && l.Contains(';')).Select(Bin);

    /// <summary>Sums of bins per class and size, by method.</summary>
    public static Dictionary<string, Dictionary<string, int>> BestKnown()
    {
        var json = JsonDocument.Parse(System.IO.File.ReadAllText(File("class500_best_known_guillotine.json")));
        return json
            .RootElement.GetProperty("oriented_guillotine_2BP_O_G")
            .Deserialize<Dictionary<string, Dictionary<string, int>>>()!;
    }

    private static (string Name, CutRequest Request) Bin(string line)
    {
        var fields = line.Trim().Split(';');
        var parts = fields.Skip(4).Where(f => f.Length > 0).Select(f => f.Split(',').Select(Number).ToArray()).ToList();
        var cut = parts.SelectMany(
            (p, i) =>
                Enumerable
                    .Range(0, p.Length > 2 ? (int)p[2] : 1)
                    .Select(n => Jobs.Part($"{i}-{n}", p[0], p[1], PanelFigure.Length))
        );
        var request = Jobs.Request([.. cut]) with
        {
            Stock = [Jobs.Sheet(Number(fields[2]), Number(fields[3]))],
            Saws = Jobs.Ideal,
            Rules = new(VisitsFirst: false),
        };
        return (fields[0], request);
    }

    private static decimal Number(string text) => decimal.Parse(text, CultureInfo.InvariantCulture);
}

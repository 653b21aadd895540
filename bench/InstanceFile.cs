using System.Globalization;
using System.Text.Json;
using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Bench;

/// <summary>Published instances of two-dimensional bin packing, one a line: name; kinds; W; H; w,h[,count]; …</summary>
/// <remarks>
/// Asked of the very same planner as a maker's job, with the visit rule off: ideal saws (no kerf, no dressing, no limits),
/// sheets alone. A unit of the instance is a millimetre.
/// </remarks>
public static class InstanceFile
{
    /// <summary>Saws that take nothing away and reach everywhere: plain geometry.</summary>
    public static SawLimits IdealSaws { get; } =
        new(
            Length.Zero,
            Length.Zero,
            Length.Zero,
            Length.Unlimited,
            Length.Unlimited,
            Length.Unlimited,
            Length.Unlimited,
            Length.Unlimited,
            Length.Zero
        );

    /// <summary>All instances of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mayTurn">True when parts may be turned by a quarter.</param>
    public static IEnumerable<(string Name, CutRequest Request)> Read(string path, bool mayTurn) =>
        File.ReadLines(path)
            .Where(line => !line.StartsWith('#') && line.Contains(';'))
            .Select(line => Instance(line.Trim().Split(';'), mayTurn));

    /// <summary>The sums of bins that published methods need, by class and size, by method.</summary>
    /// <param name="path">The file of published totals.</param>
    /// <param name="mayTurn">For which of the two problems.</param>
    public static Dictionary<string, Dictionary<string, int>> Published(string path, bool mayTurn)
    {
        using var json = JsonDocument.Parse(File.ReadAllText(path));
        var table = mayTurn ? "rotated_guillotine_2BP_R_G" : "oriented_guillotine_2BP_O_G";
        return json.RootElement.GetProperty(table).Deserialize<Dictionary<string, Dictionary<string, int>>>()!;
    }

    private static (string Name, CutRequest Request) Instance(string[] fields, bool mayTurn)
    {
        var parts = fields.Skip(4).Where(f => f.Length > 0).SelectMany((field, i) => Parts(field, i, mayTurn));
        var sheet = new StockPiece(
            "sheet",
            "sheet",
            Size(fields[2]),
            Size(fields[3]),
            null,
            null,
            false,
            HasFigure: true
        );
        var request = new CutRequest([.. parts], [], [], [sheet], IdealSaws, new CutRules(VisitsFirst: false));
        return (fields[0], request);
    }

    private static IEnumerable<CutPart> Parts(string field, int index, bool mayTurn)
    {
        var numbers = field.Split(',');
        var count = numbers.Length > 2 ? int.Parse(numbers[2], CultureInfo.InvariantCulture) : 1;
        var figure = mayTurn ? PanelFigure.Any : PanelFigure.Length;
        for (var i = 0; i < count; i++)
            yield return new($"{index}-{i}", "", "", "sheet", Size(numbers[0]), Size(numbers[1]), figure, []);
    }

    private static Length Size(string text) =>
        Length.FromMillimetres(decimal.Parse(text, CultureInfo.InvariantCulture));
}

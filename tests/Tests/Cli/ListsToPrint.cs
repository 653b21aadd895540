using System.Text.Json.Nodes;
using Nookwright.Tests.Planning;
using UglyToad.PdfPig;

namespace Nookwright.Tests.Cli;

/// <summary>Anyone's list in, plan and cards out.</summary>
public sealed class ListsToPrint : IDisposable
{
    private const string Ideal = """
        { "tableSaw": { "kerf": "0 mm", "ripReach": "100000 mm", "crosscutReach": "100000 mm" },
          "trackSaw": { "kerf": "0 mm", "trackLength": "100000 mm" },
          "dressing": "0 mm", "chunkLength": "100000 mm", "chunkWidth": "100000 mm" }
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory().FullName;

    [Fact]
    public void A_list_gives_a_plan_to_read_a_plan_for_programs_and_a_packet()
    {
        var parts = Write(
            "parts.csv",
            "label,quantity,length,width,grain,match,run,gap,awaits\n"
                + "side,4,30 1/2,14 3/8,length,sides,,,\nslat 1,1,20,5,length,,slats,1/16,\nslat 2,1,20,5,length,,slats,,\ntop,1,60,15,,,,,run.width\n"
        );
        var stock = Write("stock.csv", "length,width,price,thickness,weight\n96,48,84.50,23/32,13.2\n");
        var asked = Asked.For("cut", "--parts", parts, "--stock", stock, "--out", _folder);
        Assert.Equal((0, ""), (asked.Exit, asked.Errors));
        Assert.True((bool)JsonNode.Parse(File.ReadAllText(Path.Combine(_folder, "plan.json")))!["valid"]!);
        var text = File.ReadAllText(Path.Combine(_folder, "plan.txt"));
        Assert.Contains("Visit 1:", text);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        Assert.Contains(
            "slat 1 to slat 2: the figure jumps 1/16 in: the saw takes 1/8 in, and the gap is 1/16 in",
            Asked.InOneLine(text)
        );
        var pages = PagesOf("packet.pdf");
        Assert.Contains(pages, p => p.Contains("Setting 1 of"));
        Assert.Contains(pages, p => p.Contains("Held parts") && p.Contains("run.width"));
        Assert.Contains(pages, p => p.Contains("Running grain slats") && p.Contains("the figure jumps"));
        Assert.Contains(pages, p => p.Contains("Shopping list") && p.Contains("84.50"));
        Assert.DoesNotContain(pages, p => p.Contains("Seen from the front"));
    }

    /// <summary>By hand: 1/4 in to dress and 3/16 in out of square make 7/16 in, of which the track saw's blade takes 3/32 in.</summary>
    [Fact]
    public void What_is_true_of_one_sheet_is_told_where_it_is_laid_down()
    {
        var parts = Write(
            "parts.csv",
            "label,quantity,length,width,grain,material\nside,2,30,20,length,ply\nslat,1,40,5,length,strip\n"
        );
        var stock = Write(
            "stock.csv",
            "length,width,material,quantity,name,offcut,trusted,square,bad\n"
                + "96,48,ply,,,,,3/16,4 x 6 at 60 x 0\n50,8,strip,1,7c,yes,yes,,\n"
        );
        Assert.Equal(0, Asked.For("cut", "--parts", parts, "--stock", stock, "--out", _folder).Exit);
        var text = Asked.InOneLine(File.ReadAllText(Path.Combine(_folder, "plan.txt")));
        foreach (
            var told in new[]
            {
                "4 x 6 in, 60 in from the left end, at the bottom edge",
                "Its ends are 3/16 in out of square over its width",
                "square the left end to the bottom edge, blade 11/32 in from the corner that stands out farther, 7/16 in off there",
                "50 x 8 in, the offcut marked 7c",
                "Its factory edges are trusted",
            }
        )
            Assert.Contains(told, text);
        var pages = PagesOf("packet.pdf");
        Assert.Contains(pages, p => p.Contains("out of square over its width") && p.Contains("Sheet 1 of"));
        Assert.Contains(pages, p => p.Contains("the offcut marked 7c") && p.Contains("whole, without a track-saw cut"));
    }

    [Fact]
    public void A_part_that_cannot_be_cut_is_named_with_its_line_and_the_rest_is_planned()
    {
        var parts = Write("parts.csv", "label,quantity,length,width\nside,2,30,22 1/2\nlong,1,100,20\n");
        var asked = Asked.For(
            "cut",
            "--parts",
            parts,
            "--stock",
            Write("stock.csv", "length,width\n96,48\n"),
            "--json"
        );
        Assert.Equal(1, asked.Exit);
        Assert.StartsWith($"{parts}:3: must be mended: long", asked.Errors);
        Assert.Equal(1, (int)asked.Json["sheets"]!);
    }

    /// <summary>Bengtsson's first instance, by docs/lists.md: 20 rectangles on bins of 25 × 10, none turned. Their area is 2.96 bins.</summary>
    [Fact]
    public void A_published_instance_goes_through_the_same_planner()
    {
        var fields = File.ReadLines(PublicInstances.File("beng10.txt")).First(l => l.StartsWith("beng01")).Split(';');
        var kinds = fields.Skip(4).Where(f => f.Length > 0).Select(f => f.Split(',')).ToList();
        var lines = kinds.Select((k, i) => $"r{i},{k[0]},{k[1]},{k.ElementAtOrDefault(2) ?? "1"},length");
        var parts = Write("parts.csv", "label,length,width,quantity,grain\n" + string.Join('\n', lines));
        var stock = Write("stock.csv", $"length,width\n{fields[2]},{fields[3]}\n");
        var shop = Write("ideal.json", Ideal);
        var asked = Asked.For([
            "cut",
            "--units",
            "mm",
            "--parts",
            parts,
            "--stock",
            stock,
            "--shop",
            shop,
            "--sheets-first",
            "--json",
        ]);
        Assert.Equal((0, ""), (asked.Exit, asked.Errors));
        Assert.True((bool)asked.Json["valid"]!);
        Assert.InRange((int)asked.Json["sheets"]!, 4, 5);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private List<string> PagesOf(string name)
    {
        using var pdf = PdfDocument.Open(Path.Combine(_folder, name));
        return [.. pdf.GetPages().Select(p => string.Join(' ', p.GetWords().Select(w => w.Text)))];
    }

    private string Write(string name, string text)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllText(path, text);
        return path;
    }
}

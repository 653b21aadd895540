using System.Text;

namespace Nookwright.Bench;

/// <summary>One measurement as it is written down.</summary>
/// <param name="Name">Of the row on the command line.</param>
/// <param name="Title">For people.</param>
/// <param name="Text">The figures, as Markdown.</param>
public sealed record ResultSection(string Name, string Title, string Text);

/// <summary>The page of figures: each measurement replaces its own section and leaves the others alone.</summary>
public static class ResultFile
{
    private const string Head = """
        # What the planner reaches

        Written by the programs in this folder, a section each; every plan in it was executed by the virtual saw. Machine: 2
        cores. Times are of this machine; read ratios and counts rather than seconds.

        """;

    /// <summary>Writes a section in the place of the one with its name, or at the end.</summary>
    public static void Replace(string path, ResultSection section, string date)
    {
        var text = File.Exists(path) ? File.ReadAllText(path) : Head;
        var (begin, end) = ($"<!-- {section.Name} -->\n", $"<!-- /{section.Name} -->\n");
        var block = new StringBuilder(begin)
            .Append($"## {section.Title}\n\n{date} · `dotnet run -c Release --project bench -- {section.Name}`\n\n")
            .Append(section.Text.ReplaceLineEndings("\n").TrimEnd())
            .Append("\n\n")
            .Append(end)
            .ToString();
        var from = text.IndexOf(begin, StringComparison.Ordinal);
        var to = text.IndexOf(end, StringComparison.Ordinal);
        var next =
            from < 0 || to < 0 ? text.TrimEnd() + "\n\n" + block : text[..from] + block + text[(to + end.Length)..];
        File.WriteAllText(path, next);
    }
}

namespace Nookwright.Cli;

/// <summary>Text for a terminal of 80 columns: broken between words, what goes on set in; with signs every terminal has.</summary>
internal static class WrappedText
{
    private const int Columns = 80;

    /// <summary>The lines of one paragraph.</summary>
    /// <param name="text">What it says.</param>
    /// <param name="first">In front of its first line, for instance a number.</param>
    public static IEnumerable<string> Lines(string text, string first = "")
    {
        var (line, margin) = (first, new string(' ', first.Length));
        var isEmpty = true;
        foreach (var word in Plain(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!isEmpty && line.Length + 1 + word.Length > Columns)
            {
                yield return line;
                (line, isEmpty) = (margin, true);
            }
            line += isEmpty ? word : $" {word}";
            isEmpty = false;
        }
        yield return line;
    }

    // Paper has fractions and signs of its own.
    private static string Plain(string text) =>
        text.Replace('\u2044', '/')
            .Replace('\u00a0', ' ')
            .Replace('\u00d7', 'x')
            .Replace("\u2192", "->", StringComparison.Ordinal);
}

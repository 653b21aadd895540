using System.Text;
using System.Text.RegularExpressions;

namespace Nookwright.Lettering;

/// <summary>How wide texts are, fractions set properly; and how a text breaks into lines.</summary>
/// <remarks>Letters are set without kerning on screen and on paper alike, so that a text is as wide as its letters.</remarks>
public static partial class TextMetrics
{
    /// <summary>The height of a capital or a figure, as a share of the em (Inter's own: 1490 of 2048 units).</summary>
    public const double CapitalHeight = 0.7275;

    /// <summary>The width of one line of text.</summary>
    /// <param name="text">What it says; fractions with U+2044.</param>
    /// <param name="size">The em's height; the width comes in the same unit.</param>
    /// <param name="bold">True for bold.</param>
    public static double Width(string text, double size, bool bold = false) =>
        TextRun.Of(text).Sum(run => Width(run, size, bold));

    /// <summary>The width of a stretch of a text of this size.</summary>
    public static double Width(TextRun run, double size, bool bold)
    {
        var face = bold ? Typeface.Bold : Typeface.Regular;
        return size * run.Size * run.Text.EnumerateRunes().Sum(rune => face.Advance(rune.Value));
    }

    /// <summary>The text in lines no wider than asked; a word that is wider than a line is broken.</summary>
    /// <param name="text">What it says; a line feed starts a new line.</param>
    /// <param name="width">The widest line.</param>
    /// <param name="size">The em's height, in the same unit.</param>
    /// <param name="bold">True for bold.</param>
    public static IReadOnlyList<string> Lines(string text, double width, double size, bool bold = false) =>
        [.. text.Split('\n').SelectMany(paragraph => Broken(paragraph, width, size, bold))];

    private static IEnumerable<string> Broken(string paragraph, double width, double size, bool bold)
    {
        var line = new StringBuilder();
        foreach (var word in Gap().Split(paragraph).SelectMany(word => Pieces(word, width, size, bold)))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Width(longer, size, bold) > width)
            {
                yield return line.ToString();
                longer = word;
            }
            line.Clear().Append(longer);
        }
        yield return line.ToString();
    }

    private static IEnumerable<string> Pieces(string word, double width, double size, bool bold)
    {
        while (word.Length > 1 && Width(word, size, bold) > width)
        {
            var fits = 1;
            while (Width(word[..(fits + 1)], size, bold) <= width)
                fits++;
            yield return word[..fits];
            word = word[fits..];
        }
        yield return word;
    }

    // A size stays on one line: no break before its fraction or its unit.
    [GeneratedRegex(@" (?!\d+\u2044)(?!(?<=\d )(?:in|mm|ft)\b)")]
    private static partial Regex Gap();
}

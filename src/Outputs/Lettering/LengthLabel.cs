using System.Text.RegularExpressions;
using Nookwright.Measure;

namespace Nookwright.Lettering;

/// <summary>Lengths as they are lettered on drawings and cards: with a proper fraction.</summary>
public static partial class LengthLabel
{
    /// <summary>The text, its fraction with U+2044: <c>23 3⁄4 in</c>, <c>603.5 mm</c>.</summary>
    public static string Of(Length length, LengthFormat format)
    {
        var printed = format.Split(length);
        var fraction = printed.HasFraction ? $"{printed.Numerator}{TextRun.FractionSlash}{printed.Denominator}" : "";
        var space = printed.HasFraction && printed.ShowsWhole ? " " : "";
        return printed.Lead + space + fraction + printed.Unit;
    }

    /// <summary>A sentence with every fraction of an inch in it set properly; a ratio, a date or a thing's name is left as it is.</summary>
    public static string In(string sentence) => TypedFraction().Replace(sentence, "$1\u2044$2");

    // Only what a tape has: an odd numerator over 2, 4, 8, 16, 32 or 64, with no digit, slash, hyphen or letter touching it.
    [GeneratedRegex(@"(?<![\w/.-])(\d{0,1}[13579])/(2|4|8|16|32|64)(?![\w/-])")]
    private static partial Regex TypedFraction();
}

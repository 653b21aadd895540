using Nookwright.Measure;

namespace Nookwright.Lettering;

/// <summary>Lengths as they are lettered on drawings and cards: with a proper fraction.</summary>
public static class LengthLabel
{
    /// <summary>The text, its fraction with U+2044: <c>23 3⁄4 in</c>, <c>603.5 mm</c>.</summary>
    public static string Of(Length length, LengthFormat format)
    {
        var printed = format.Split(length);
        var fraction = printed.HasFraction ? $"{printed.Numerator}{TextRun.FractionSlash}{printed.Denominator}" : "";
        var space = printed.HasFraction && printed.ShowsWhole ? " " : "";
        return printed.Lead + space + fraction + printed.Unit;
    }
}

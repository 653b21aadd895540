using System.Numerics;
using Fractions;

namespace Nookwright.Measure;

/// <summary>Reads an unsigned number as makers type it: <c>23</c>, <c>23.75</c>, <c>3/4</c>, <c>23 3/4</c>, <c>23-3/4</c>, <c>23¾</c>.</summary>
/// <remarks>
/// A slash with digits touching it on both sides makes a fraction. A hyphen that touches a whole number and a fraction,
/// as in 23-3/4, joins them; it does not take away.
/// </remarks>
internal static class TypedNumber
{
    private const string OneSignFractions = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    private static readonly (int Top, int Bottom)[] OneSignValues =
    [
        (1, 4),
        (1, 2),
        (3, 4),
        (1, 7),
        (1, 9),
        (1, 10),
        (1, 3),
        (2, 3),
        (1, 5),
        (2, 5),
        (3, 5),
        (4, 5),
        (1, 6),
        (5, 6),
        (1, 8),
        (3, 8),
        (5, 8),
        (7, 8),
    ];

    /// <summary>True when a number starts so many signs ahead.</summary>
    public static bool StartsAt(TypedText text, int ahead = 0) =>
        char.IsAsciiDigit(text.Ahead(ahead))
        || IsOneSignFraction(text.Ahead(ahead))
        || (text.Ahead(ahead) == '.' && char.IsAsciiDigit(text.Ahead(ahead + 1)));

    /// <summary>The number at the cursor; null when it was refused.</summary>
    public static Fraction? Read(TypedText text)
    {
        if (TakeFraction(text) is { } alone)
            return text.Trouble is null ? alone : null;
        var start = text.At;
        var whole = text.TakeWhile(char.IsAsciiDigit);
        var number = text.Now == '.' ? Decimals(text, whole) : new Fraction(BigInteger.Parse(whole));
        if (text.Now == ',' && char.IsAsciiDigit(text.Ahead(1)))
            text.Refuse(CommaMessage(text, start), text.At);
        var isWhole = text.Before != '.' && whole.Length == text.At - start;
        return text.Trouble is not null ? null
            : isWhole ? WithFraction(text, number)
            : number;
    }

    private static Fraction Decimals(TypedText text, string whole)
    {
        if (!char.IsAsciiDigit(text.Ahead(1)))
            return new Fraction(BigInteger.Parse(whole));
        text.At++;
        var decimals = text.TakeWhile(char.IsAsciiDigit);
        return new Fraction(BigInteger.Parse("0" + whole + decimals), BigInteger.Pow(10, decimals.Length));
    }

    private static Fraction? WithFraction(TypedText text, Fraction whole)
    {
        var start = text.At;
        var joined = text.Now is '-' or '‐' or '–';
        if (joined)
            text.At++;
        else
            text.SkipSpace();
        var fractionAt = text.At;
        if ((joined || text.At > start || IsOneSignFraction(text.Now)) && TakeFraction(text) is { } fraction)
        {
            if (text.Trouble is null && fraction >= Fraction.One)
                text.Refuse(TooMuchMessage(text, fractionAt), fractionAt);
            return text.Trouble is null ? whole + fraction : null;
        }
        text.At = start;
        return whole;
    }

    /// <summary>The fraction at the cursor; null, and nothing read, when there is none.</summary>
    private static Fraction? TakeFraction(TypedText text)
    {
        if (IsOneSignFraction(text.Now))
        {
            var (one, many) = OneSignValues[OneSignFractions.IndexOf(text.Now, StringComparison.Ordinal)];
            text.At++;
            return new Fraction(one, many);
        }
        var start = text.At;
        var top = text.TakeWhile(char.IsAsciiDigit);
        var hasSlash = top.Length > 0 && (text.Take('/') || text.Take('⁄'));
        var bottomAt = text.At;
        var bottom = hasSlash ? text.TakeWhile(char.IsAsciiDigit) : "";
        if (bottom.Length == 0 || (text.Now == '.' && char.IsAsciiDigit(text.Ahead(1))))
        {
            text.At = start;
            return null;
        }
        var parts = BigInteger.Parse(bottom);
        if (parts.IsZero)
            text.Refuse(
                $"{top}/{bottom} divides by nought; write the fraction with a number below the line.",
                bottomAt
            );
        return parts.IsZero ? Fraction.Zero : new Fraction(BigInteger.Parse(top), parts);
    }

    private static bool IsOneSignFraction(char sign) => OneSignFractions.Contains(sign, StringComparison.Ordinal);

    private static string CommaMessage(TypedText text, int start)
    {
        var end = text.At + 1;
        while (end < text.Text.Length && char.IsAsciiDigit(text.Text[end]))
            end++;
        var (before, after) = (text.Text[start..text.At], text.Text[(text.At + 1)..end]);
        return $"\"{before},{after}\" can be read in more than one way: write {before}.{after} for a decimal, "
            + $"{before}{after} for thousands, or put a space after a comma that separates two values.";
    }

    private static string TooMuchMessage(TypedText text, int fractionAt) =>
        $"{text.Text[fractionAt..text.At]} after a whole number should be less than one; "
        + "write the fraction reduced, or put spaces round a minus sign.";
}

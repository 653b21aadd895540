using System.Collections.Frozen;
using Fractions;

namespace Nookwright.Measure;

/// <summary>A unit as makers write it: a word (<c>in</c>, <c>feet</c>, <c>mm</c>) or a mark (<c>"</c>, <c>′</c>, <c>°</c>).</summary>
/// <remarks>Inch and foot are exactly 25.4 mm and 304.8 mm: NIST SP 811, appendix B.</remarks>
internal sealed record TypedUnit(Quantity One)
{
    public static readonly TypedUnit Inch = new(Quantity.Of(Length.Inch));
    public static readonly TypedUnit Foot = new(Quantity.Of(Length.Inch * 12));
    public static readonly TypedUnit Millimetre = new(Quantity.Of(Length.Millimetre));
    private static readonly TypedUnit Centimetre = new(Quantity.Of(Length.Millimetre * 10));
    private static readonly TypedUnit Metre = new(Quantity.Of(Length.Millimetre * 1000));
    private static readonly TypedUnit Degree = new(Quantity.OfDegrees(Fraction.One));

    private static readonly FrozenDictionary<string, TypedUnit> Words = new Dictionary<string, TypedUnit>
    {
        ["in"] = Inch,
        ["inch"] = Inch,
        ["inches"] = Inch,
        ["ft"] = Foot,
        ["foot"] = Foot,
        ["feet"] = Foot,
        ["mm"] = Millimetre,
        ["millimetre"] = Millimetre,
        ["millimetres"] = Millimetre,
        ["millimeter"] = Millimetre,
        ["millimeters"] = Millimetre,
        ["cm"] = Centimetre,
        ["centimetre"] = Centimetre,
        ["centimetres"] = Centimetre,
        ["centimeter"] = Centimetre,
        ["centimeters"] = Centimetre,
        ["m"] = Metre,
        ["metre"] = Metre,
        ["metres"] = Metre,
        ["meter"] = Metre,
        ["meters"] = Metre,
        ["deg"] = Degree,
        ["degree"] = Degree,
        ["degrees"] = Degree,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The unit a bare number takes.</summary>
    public static TypedUnit Of(LengthUnit bare) => bare == LengthUnit.Inches ? Inch : Millimetre;

    /// <summary>How a unit is written after a number in a message.</summary>
    public static string Word(LengthUnit unit) => unit == LengthUnit.Inches ? "in" : "mm";

    /// <summary>The unit at the cursor, after any space; null when there is none, or when it was refused.</summary>
    public static TypedUnit? Read(TypedText text)
    {
        var start = text.At;
        text.SkipSpace();
        if ((Mark(text) ?? Spelled(text)) is { } unit)
            return unit;
        if (text.Trouble is null)
            text.At = start;
        return null;
    }

    private static TypedUnit? Mark(TypedText text)
    {
        var (unit, signs) = (text.Now, text.Ahead(1)) switch
        {
            ('"' or '″' or '”' or '“', _) => (Inch, 1),
            ('\'', '\'') or ('′', '′') or ('’', '’') => (Inch, 2),
            ('\'' or '′' or '’' or '‘', _) => (Foot, 1),
            ('°', _) => (Degree, 1),
            _ => (null, 0),
        };
        text.At += signs;
        return unit;
    }

    private static TypedUnit? Spelled(TypedText text)
    {
        var start = text.At;
        var word = text.TakeWhile(char.IsLetter);
        if (word.Length == 0)
            return null;
        if (!Words.TryGetValue(word, out var unit))
        {
            text.Refuse(
                $"There is no unit \"{word}\"; write in, ft, mm, cm, m or deg after a number (and * to multiply).",
                start
            );
            return null;
        }
        if (text.Now == '.' && !char.IsLetterOrDigit(text.Ahead(1)))
            text.At++;
        return unit;
    }
}

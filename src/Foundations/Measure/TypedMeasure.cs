using Fractions;

namespace Nookwright.Measure;

/// <summary>A number with or without its unit, as typed; feet and inches count as one.</summary>
/// <param name="Amount">What it means; a plain number when it has no unit.</param>
/// <param name="Text">As typed.</param>
internal sealed record TypedMeasure(Quantity Amount, string Text)
{
    public bool HasUnit => Amount.Dimension != Dimension.Number;

    /// <summary>The measure at the cursor, where a number starts; null when it was refused.</summary>
    public static TypedMeasure? Read(TypedText text)
    {
        var start = text.At;
        if (ReadAmount(text) is not { } amount)
            return null;
        return new(amount, text.Text[start..text.At]);
    }

    private static Quantity? ReadAmount(TypedText text)
    {
        if (TypedNumber.Read(text) is not { } number)
            return null;
        var unit = TypedUnit.Read(text);
        if (text.Trouble is not null)
            return null;
        if (unit == TypedUnit.Foot)
            return InchesAfterFeet(text) is { } inches ? Times(number, unit) + inches : null;
        return unit is null ? Quantity.Of(number) : Times(number, unit);
    }

    private static Quantity? InchesAfterFeet(TypedText text)
    {
        var start = text.At;
        var joined = text.Now is '-' or '‐' or '–' && TypedNumber.StartsAt(text, 1);
        if (joined)
            text.At++;
        else
            text.SkipSpace();
        if (!TypedNumber.StartsAt(text))
        {
            text.At = start;
            return Quantity.Of(Length.Zero);
        }
        var inchesAt = text.At;
        if (TypedNumber.Read(text) is not { } number)
            return null;
        var unit = TypedUnit.Read(text) ?? TypedUnit.Inch;
        if (unit != TypedUnit.Inch)
            text.Refuse("After feet only inches can follow; write a plus sign to add something else.", inchesAt);
        return text.Trouble is null ? Times(number, unit) : null;
    }

    private static Quantity Times(Fraction number, TypedUnit unit) => Quantity.Of(number) * unit.One;
}

using System.Globalization;
using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>Reads and writes lengths as makers type them: <c>23 3/4</c>, <c>1'-11 3/4"</c>, <c>603.25 mm</c>, <c>23¾</c>.</summary>
public static class LengthText
{
    private static readonly Length SixtyFourth = LengthFormat.Inches(64).Grid;
    private static readonly Length TenThousandth = LengthFormat.DecimalInches(4).Grid;

    /// <summary>The length a text means, to the nearest nanometre; it may carry a sign.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="bare">The unit of a number that has none.</param>
    public static Outcome<Length> Read(string text, LengthUnit bare)
    {
        var typed = new TypedText(text);
        typed.SkipSpace();
        var sign = TakeSign(typed);
        if (!TypedNumber.StartsAt(typed))
            return new Refusal(NoNumberMessage(typed), Column: typed.At + 1);
        var numberAt = typed.At;
        var measure = TypedMeasure.Read(typed);
        typed.SkipSpace();
        if (typed.Trouble is null && !typed.IsAtEnd)
            typed.Refuse(LeftOverMessage(typed), typed.At);
        return typed.Trouble ?? ToLength(measure!, sign, bare, numberAt);
    }

    /// <summary>The shortest text that reads back to exactly this length, with its unit.</summary>
    /// <param name="length">The length.</param>
    /// <param name="unit">
    /// The unit to write. In inches: a fraction down to 1/64, else up to four decimals; a length that neither can say
    /// exactly is written in millimetres, which can say every length.
    /// </param>
    public static string Write(Length length, LengthUnit unit)
    {
        if (unit == LengthUnit.Inches && IsOn(length, SixtyFourth))
            return LengthFormat.Inches(64).Print(length);
        return unit == LengthUnit.Inches && IsOn(length, TenThousandth)
            ? Invariant($"{length.Nanometres / 25_400_000m:0.####} in")
            : length.ToString();
    }

    private static bool IsOn(Length length, Length grid) => length.Nanometres % grid.Nanometres == 0;

    private static int TakeSign(TypedText typed)
    {
        var isMinus = typed.Now is '-' or '−' or '–';
        if (isMinus || typed.Now == '+')
            typed.At++;
        typed.SkipSpace();
        return isMinus ? -1 : 1;
    }

    private static Outcome<Length> ToLength(TypedMeasure measure, int sign, LengthUnit bare, int at)
    {
        var amount = measure.HasUnit ? measure.Amount : measure.Amount * TypedUnit.Of(bare).One;
        if (!amount.IsLength)
            return new Refusal($"\"{measure.Text}\" is {amount.Dimension}, and a length is wanted.", Column: at + 1);
        if (!amount.FitsLength)
            return new Refusal($"\"{measure.Text}\" is longer than any room; check the number.", Column: at + 1);
        return amount.ToLength() * sign;
    }

    private static string NoNumberMessage(TypedText typed) =>
        typed.IsAtEnd
            ? "No length is written here; write one such as 23 3/4 in or 603.5 mm."
            : $"\"{typed.Word()}\" does not start with a number; write a length such as 23 3/4 in or 603.5 mm.";

    private static string LeftOverMessage(TypedText typed) =>
        $"\"{typed.Word()}\" is left over after the length; write one length such as 23 3/4 in, 1'-11 3/4\" or 603.5 mm.";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

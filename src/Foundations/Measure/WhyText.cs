using System.Globalization;

namespace Nookwright.Measure;

/// <summary>Tells the story of a number to people, a line a step, indented.</summary>
/// <remarks>
/// <code>
/// box-1.width = 31 5/16 in
///   = room.width - 1/2 in - filler.left
///   room.width = 63 in, read on 2026-10-03
///   filler.left = 1 1/2 in, written in sizes/filler.left
/// </code>
/// Sums without a name are told as one expression; every number with a name, and every rule, has a line of its own.
/// </remarks>
public static class WhyText
{
    // Past this a line would start beyond the edge of any page.
    private const int MostIndent = 20;

    /// <summary>The lines; lengths are printed in the format, and marked "about" where it cannot say them exactly.</summary>
    public static IEnumerable<string> Tell(Traced number, LengthFormat format)
    {
        var told = new HashSet<Traced>();
        var ahead = new Stack<(int Depth, Traced Number)>([(0, number)]);
        while (ahead.TryPop(out var step))
        {
            var isNew = told.Add(step.Number);
            foreach (var line in isNew ? Lines(step, format) : [AlreadyTold(step.Number, format)])
                yield return new string(' ', 2 * Math.Min(step.Depth, MostIndent)) + line;
            foreach (var next in isNew ? WhyExpression.Ingredients(step.Number).Reverse() : [])
                ahead.Push((step.Depth + 1, next));
        }
    }

    /// <summary>A number as people read it: a length in the format, an angle in degrees, others as decimals.</summary>
    public static string Amount(Quantity quantity, LengthFormat format)
    {
        if (quantity.FitsLength)
        {
            var length = quantity.ToLength();
            var isExact = format.IsExact(length) && Quantity.Of(length) == quantity;
            return (isExact ? "" : "about ") + format.Print(length);
        }
        var power = quantity.Dimension.LengthPower;
        var unit =
            power == 0 ? ""
            : power == 1 ? " mm"
            : $" mm^{power}";
        var angle = quantity.Dimension.AnglePower == 0 ? "" : " deg";
        var amount = quantity.Amount.ToDouble() / Math.Pow(Length.Millimetre.Nanometres, power);
        return amount.ToString("0.######", CultureInfo.InvariantCulture) + unit + angle;
    }

    private static IEnumerable<string> Lines((int Depth, Traced Number) step, LengthFormat format)
    {
        var (depth, number) = step;
        var head = Head(number, format);
        yield return number.Cause switch
        {
            Cause.Written(_, "") when number.Name is null => head,
            Cause.Written(var text, "") => $"{head}, written as {text}",
            Cause.Written(_, var place) => $"{head}, written in {place}",
            Cause.Read { IsTaken: true, Taken: { } day } => $"{head}, read on {day:yyyy-MM-dd}",
            Cause.Read { IsTaken: true } => $"{head}, read; the day was not noted",
            Cause.Read => $"{head}, not taken yet; planned",
            Cause.ByRule(var rule) => $"{head}, by rule: {rule}",
            _ when number.IsHeld && depth == 0 => $"{head}, held until {Listed(number.Awaits)} read",
            _ => head,
        };
        foreach (var line in WhyExpression.LinesBelow(number, format))
            yield return "  " + line;
    }

    private static string Listed(IReadOnlySet<string> readings) =>
        string.Join(", ", readings.Order(StringComparer.Ordinal)) + (readings.Count == 1 ? " is" : " are");

    private static string AlreadyTold(Traced number, LengthFormat format)
    {
        var hasStory = number.Cause.From.Count > 0;
        return Head(number, format) + (hasStory ? ", as told above" : ", as above");
    }

    private static string Head(Traced number, LengthFormat format)
    {
        var amount = Amount(number.Amount, format);
        return number.Name is null ? amount : $"{number.Name} = {amount}";
    }
}

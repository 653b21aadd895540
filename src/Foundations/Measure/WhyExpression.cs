namespace Nookwright.Measure;

/// <summary>Writes the unnamed steps behind a number as one expression, and finds the numbers in it that have a line of their own.</summary>
internal static class WhyExpression
{
    private const int Sum = 1;
    private const int Product = 2;
    private const int Value = 3;

    // A longer sum reads badly aloud, and unnamed numbers used twice over would double it at every step; what lies deeper
    // gets a line of its own, as if it had a name.
    private const int MostDepth = 12;

    private static readonly Length SixtyFourth = LengthFormat.Inches(64).Grid;

    /// <summary>The lines that say how a number came about: the rounding, the expression, the plan.</summary>
    public static IEnumerable<string> LinesBelow(Traced number, LengthFormat format) =>
        number.Cause switch
        {
            Cause.Rounded(var mark, { Name: null, Cause: Cause.Worked } exact) =>
            [
                $"{RoundedTo(mark, format)} {Fine(exact.Amount, format)}",
                $"= {Expression(exact, format, 0).Text}",
            ],
            Cause.Rounded(var mark, var exact) => [$"{RoundedTo(mark, format)} {Text(exact, format, 0).Text}"],
            Cause.Read { Planned: { Name: null } planned } => [$"planned as {Text(planned, format, 0).Text}"],
            Cause.Worked => [$"= {Expression(number, format, 0).Text}"],
            Cause.Same(var other) => [$"= {Text(other, format, 0).Text}"],
            _ => [],
        };

    /// <summary>The numbers that want a line of their own: the named ones, rules, readings; each once, in order.</summary>
    public static IEnumerable<Traced> Ingredients(Traced number) => Ingredients(number, 0).Distinct();

    private static IEnumerable<Traced> Ingredients(Traced number, int depth) =>
        number.Cause.From.SelectMany(from => HasOwnLine(from, depth) ? [from] : Ingredients(from, depth + 1));

    private static bool HasOwnLine(Traced number, int depth) =>
        number.Name is not null
        || number.Cause is Cause.ByRule or Cause.Read
        || (depth >= MostDepth && number.Cause.From.Count > 0);

    private static string RoundedTo(Length mark, LengthFormat format) =>
        $"rounded to the nearest {LengthText.Write(mark, format.Unit)} from";

    /// <summary>Finer than the format, so that rounding can be seen.</summary>
    private static string Fine(Quantity amount, LengthFormat format)
    {
        var isOn64th = amount.FitsLength && Quantity.Of(amount.ToLength().RoundTo(SixtyFourth)) == amount;
        var finer =
            format.Unit == LengthUnit.Millimetres ? LengthFormat.Millimetres(0.001m)
            : isOn64th ? LengthFormat.Inches(64)
            : LengthFormat.DecimalInches(4);
        return WhyText.Amount(amount, finer);
    }

    private static (string Text, int Binding) Text(Traced number, LengthFormat format, int depth) =>
        (number.Name, number.Cause) switch
        {
            ({ } name, _) => (name, Value),
            (_, Cause.Written(var text, _)) when text.Length > 0 => (text, Value),
            _ when HasOwnLine(number, depth) => (WhyText.Amount(number.Amount, format), Value),
            (_, Cause.Worked) => Expression(number, format, depth + 1),
            (_, Cause.Rounded(var mark, var exact)) => (
                $"round({Text(exact, format, depth + 1).Text}, {LengthText.Write(mark, format.Unit)})",
                Value
            ),
            (_, Cause.Same(var other)) => Text(other, format, depth + 1),
            _ => (WhyText.Amount(number.Amount, format), Value),
        };

    private static (string Text, int Binding) Expression(Traced number, LengthFormat format, int depth)
    {
        var worked = (Cause.Worked)number.Cause;
        var parts = worked.Of.Select(part => Text(part, format, depth)).ToList();
        return (worked.Operation, parts.Count) switch
        {
            ("-", 1) => ($"-{Bound(parts[0], Value)}", Product),
            ("+" or "-", 2) => Joined(parts, worked.Operation, Sum),
            ("*" or "/", 2) => Joined(parts, worked.Operation, Product),
            _ => ($"{worked.Operation}({string.Join(", ", parts.Select(part => part.Text))})", Value),
        };
    }

    private static (string Text, int Binding) Joined(List<(string Text, int Binding)> parts, string sign, int binding)
    {
        var rightNeeds = sign is "-" or "/" ? binding + 1 : binding;
        return ($"{Bound(parts[0], binding)} {sign} {Bound(parts[1], rightNeeds)}", binding);
    }

    private static string Bound((string Text, int Binding) part, int least) =>
        part.Binding < least ? $"({part.Text})" : part.Text;
}

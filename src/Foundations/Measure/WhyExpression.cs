namespace Nookwright.Measure;

/// <summary>Writes the unnamed steps behind a number as one expression, and finds the named numbers in it.</summary>
internal static class WhyExpression
{
    private const int Sum = 1;
    private const int Product = 2;
    private const int Value = 3;

    /// <summary>The lines that say how a number came about: the rounding, the expression, the plan.</summary>
    public static IEnumerable<string> LinesBelow(Traced number, LengthFormat format)
    {
        switch (number.Cause)
        {
            case Cause.Rounded(var mark, var exact):
                yield return $"rounded to the nearest {format.Finest().Print(mark)} from {Exact(exact, format)}";
                if (exact.Name is null)
                {
                    foreach (var line in LinesBelow(exact, format))
                        yield return line;
                }
                break;
            case Cause.Read { Planned: { Name: null } planned }:
                yield return $"planned as {Text(planned, format).Text}";
                break;
            case Cause.Worked:
                yield return $"= {Expression(number, format).Text}";
                break;
            case Cause.Same(var other):
                yield return $"= {Text(other, format).Text}";
                break;
        }
    }

    /// <summary>The numbers that want a line of their own: the named ones, rules, readings; each once, in order.</summary>
    public static IEnumerable<Traced> Ingredients(Traced number) =>
        number.Cause.From.SelectMany(from => HasOwnLine(from) ? [from] : Ingredients(from)).Distinct();

    private static bool HasOwnLine(Traced number) =>
        number.Name is not null || number.Cause is Cause.ByRule or Cause.Read;

    private static string Exact(Traced exact, LengthFormat format) =>
        exact.Name ?? WhyText.Amount(exact.Amount, format.Finest());

    private static (string Text, int Binding) Text(Traced number, LengthFormat format) =>
        (number.Name, number.Cause) switch
        {
            ({ } name, _) => (name, Value),
            (_, Cause.Written(var text, _)) when text.Length > 0 => (text, Value),
            (_, Cause.Worked) => Expression(number, format),
            (_, Cause.Rounded(var mark, var exact)) => (
                $"round({Text(exact, format).Text}, {format.Finest().Print(mark)})",
                Value
            ),
            (_, Cause.Same(var other)) => Text(other, format),
            _ => (WhyText.Amount(number.Amount, format), Value),
        };

    private static (string Text, int Binding) Expression(Traced number, LengthFormat format)
    {
        var worked = (Cause.Worked)number.Cause;
        var parts = worked.Of.Select(part => Text(part, format)).ToList();
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

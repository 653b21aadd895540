using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>Reads a formula by descent: sums of products of signed values.</summary>
internal sealed class FormulaReader(TypedText text)
{
    // Far beyond what anyone types, near enough that neither reading nor working out can exhaust the stack.
    private const int MostSigns = 2000;
    private const int MostDepth = 50;

    private int _depth;

    public Refusal Trouble => text.Trouble ?? throw new InvalidOperationException("The formula was read.");

    /// <summary>The whole formula, or null when it was refused.</summary>
    public FormulaNode? Read()
    {
        if (text.Text.Length > MostSigns)
            return Refuse(
                $"This formula is {text.Text.Length} signs long, and {MostSigns} is the most; name a part of it.",
                0
            );
        if (string.IsNullOrWhiteSpace(text.Text))
            return Refuse("Nothing is written here; write a length such as 23 3/4 in, or a sum of named sizes.", 0);
        var sum = Sum();
        text.SkipSpace();
        return sum is null || text.IsAtEnd ? sum : Refuse(LeftOver(), text.At);
    }

    private FormulaNode? Sum() => Chain(Product, '+', '-');

    private FormulaNode? Product() => Chain(Signed, '*', '/');

    private FormulaNode? Chain(Func<FormulaNode?> next, char one, char other)
    {
        var left = next();
        while (left is not null && TakeSign(one, other) is { } sign)
        {
            var right = sign == '/' ? Divisor(next) : next();
            left = right is null ? null : new PairNode(left.Start, Since(left.Start), sign, left, right);
        }
        return left;
    }

    private FormulaNode? Divisor(Func<FormulaNode?> next)
    {
        text.SkipSpace();
        var right = next();
        // a / 1/2 would be 2a to one reader and a/2 to another.
        return right is LiteralNode { IsBareFraction: true }
            ? Refuse(
                $"Dividing by {right.Text} can be read in two ways; put the fraction in brackets: ({right.Text}).",
                right.Start
            )
            : right;
    }

    private char? TakeSign(char one, char other)
    {
        text.SkipSpace();
        var sign = text.Now switch
        {
            '−' or '–' => '-',
            '×' or '·' => '*',
            '÷' => '/',
            var now => now,
        };
        if (text.IsAtEnd || (sign != one && sign != other))
            return null;
        text.At++;
        return sign;
    }

    private FormulaNode? Signed()
    {
        text.SkipSpace();
        var start = text.At;
        if (TakeSign('-', '+') is not { } sign)
            return Value();
        if (++_depth > MostDepth)
            return Refuse(TooDeep(), start);
        var inner = Signed();
        _depth--;
        return inner is null || sign == '+' ? inner : new NegatedNode(start, Since(start), inner);
    }

    private FormulaNode? Value()
    {
        var start = text.At;
        if (TypedNumber.StartsAt(text))
            return Literal(start);
        if (TypedName.StartsAt(text))
            return NameOrCall(start);
        if (text.Take('('))
            return Closed(start, Sum);
        return Refuse(
            text.IsAtEnd
                ? "The formula stops where a number or a name is wanted; write one, or take the last sign away."
                : $"\"{text.Now}\" stands where a number or a name is wanted.",
            start
        );
    }

    private LiteralNode? Literal(int start)
    {
        if (TypedMeasure.Read(text) is not { } measure)
            return null;
        var end = text.At;
        text.SkipSpace();
        if (TypedNumber.StartsAt(text) || TypedName.StartsAt(text))
            text.Refuse(AfterMeasure(measure), text.At);
        text.At = end;
        return text.Trouble is null ? new LiteralNode(start, measure) : null;
    }

    private FormulaNode? NameOrCall(int start)
    {
        var name = TypedName.Read(text);
        var end = text.At;
        text.SkipSpace();
        if (text.Take('('))
            return Closed(start, () => Call(start, name));
        text.At = end;
        return new NamedNode(start, name);
    }

    /// <summary>Reads what stands in brackets, and the closing one; the result's text takes both in.</summary>
    private FormulaNode? Closed(int start, Func<FormulaNode?> inside)
    {
        if (++_depth > MostDepth)
            return Refuse(TooDeep(), start);
        var inner = inside();
        _depth--;
        text.SkipSpace();
        if (inner is null)
            return null;
        if (!text.Take(')'))
            return Refuse(
                text.IsAtEnd ? "This bracket is never closed; add a )." : LeftOver(),
                text.IsAtEnd ? start : text.At
            );
        return inner with { Start = start, Text = Since(start) };
    }

    private FormulaNode? Call(int start, string name)
    {
        if (FormulaFunction.Find(name) is not { } function)
            return Refuse(
                $"There is no function \"{name}\"; there are {FormulaFunction.AllNames} (and * to multiply).",
                start
            );
        var values = new List<FormulaNode>();
        do
        {
            if (Sum() is not { } value)
                return null;
            values.Add(value);
            text.SkipSpace();
        } while (text.Take(','));
        return function.Takes(values.Count)
            ? new CallNode(start, name, function, values)
            : Refuse($"{name} takes {function.Wants}, and {values.Count} stand here.", start);
    }

    private string Since(int start) => text.Text[start..text.At].TrimEnd();

    private static string TooDeep() =>
        $"Brackets and signs stand more than {MostDepth} deep; name a part of the formula.";

    private static string AfterMeasure(TypedMeasure measure) =>
        measure.Amount.Dimension == Dimension.Angle
            ? "Minutes and seconds of an angle are not read; write decimals of a degree, such as 12.5 deg."
            : $"Something is missing after {measure.Text}: write a sign (+ - * /) between two numbers.";

    private string LeftOver() =>
        text.Now switch
        {
            ')' => "This bracket closes nothing; take it away or open one before it.",
            ',' => "A comma separates the values of a function; write decimals with a point.",
            _ => $"\"{text.Word()}\" is left over; write a sign (+ - * /) before it.",
        };

    private FormulaNode? Refuse(string message, int at)
    {
        text.Refuse(message, at);
        return null;
    }
}

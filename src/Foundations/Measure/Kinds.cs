using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>Holds sums and comparisons to like kinds: lengths with lengths, angles with angles.</summary>
internal static class Kinds
{
    /// <summary>Null when all numbers are of one kind; else says which two differ.</summary>
    public static Refusal? Differ(FormulaGround ground, IReadOnlyList<FormulaNode> nodes, IReadOnlyList<Traced> numbers)
    {
        for (var i = 1; i < numbers.Count; i++)
        {
            if (numbers[i].Amount.Dimension != numbers[0].Amount.Dimension)
                return Unlike(ground, (nodes[0], numbers[0]), (nodes[i], numbers[i]));
        }
        return null;
    }

    private static Refusal Unlike(
        FormulaGround ground,
        (FormulaNode Node, Traced Number) a,
        (FormulaNode Node, Traced Number) b
    )
    {
        var bare = a.Number.Amount.Dimension == Dimension.Number ? a : b;
        var blamed = bare.Node is LiteralNode ? bare : b;
        return ground.Refuse(
            blamed.Node,
            $"{a.Node.Text} is {a.Number.Amount.Dimension} and {b.Node.Text} is {b.Number.Amount.Dimension}: "
                + $"they cannot be added, taken away or compared.{Hint(ground, bare.Node, a.Number, b.Number)}"
        ) with
        {
            Rule = "formula.units",
        };
    }

    private static string Hint(FormulaGround ground, FormulaNode bare, Traced a, Traced b)
    {
        var isWithLength = a.Amount.IsLength || b.Amount.IsLength;
        return bare switch
        {
            LiteralNode { Measure: { HasUnit: false } number } when isWithLength =>
                $" Write the unit: {number.Text} {TypedUnit.Word(ground.Bare)}.",
            NamedNode { Name: var name } when isWithLength =>
                $" If {name} is meant as a length, write its unit where {name} is given: a named size without a unit is a plain number.",
            _ => "",
        };
    }
}

using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>Two parts of a formula joined by <c>+</c>, <c>-</c>, <c>*</c> or <c>/</c>.</summary>
internal sealed record PairNode(int Start, string Text, char Sign, FormulaNode Left, FormulaNode Right)
    : FormulaNode(Start, Text)
{
    public override IEnumerable<FormulaName> Names => Left.Names.Concat(Right.Names);

    protected override Outcome<Traced> Work(FormulaGround ground) =>
        Left.Evaluate(ground).Then(left => Right.Evaluate(ground).Then(right => Join(ground, left, right)));

    private Outcome<Traced> Join(FormulaGround ground, Traced left, Traced right) =>
        Sign switch
        {
            '*' => left * right,
            '/' when right.Amount.Amount.IsZero => ground.Refuse(
                Right,
                $"{Right.Text} is nought, and nothing can be divided by nought."
            ),
            '/' => left / right,
            _ when Kinds.Differ(ground, [Left, Right], [left, right]) is { } refusal => refusal,
            '+' => left + right,
            _ => left - right,
        };
}

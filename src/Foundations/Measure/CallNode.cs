using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>A function of one or more values.</summary>
internal sealed record CallNode(int Start, string Text, FormulaFunction Function, IReadOnlyList<FormulaNode> Values)
    : FormulaNode(Start, Text)
{
    public override IEnumerable<FormulaName> Names => Values.SelectMany(value => value.Names);

    protected override Outcome<Traced> Work(FormulaGround ground)
    {
        var numbers = new List<Traced>(Values.Count);
        foreach (var value in Values)
        {
            if (!value.Evaluate(ground).Take(out var number, out var refusal))
                return refusal;
            numbers.Add(number);
        }
        return Kinds.Differ(ground, Values, numbers) is { } unlike ? unlike : Apply(ground, numbers);
    }

    private Outcome<Traced> Apply(FormulaGround ground, IReadOnlyList<Traced> numbers) =>
        Function.Apply([.. numbers.Select(number => number.Amount)]).Take(out var amount, out var refusal)
            ? Traced.Worked(amount, Function.Name, numbers)
            : ground.Refuse(this, $"{Text}: {refusal.Message}");
}

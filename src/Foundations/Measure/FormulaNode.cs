using System.Runtime.CompilerServices;
using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>What a formula is worked out against.</summary>
/// <param name="LookUp">Finds a named number.</param>
/// <param name="Bare">The document's unit, for hints.</param>
/// <param name="Place">Where the formula is written.</param>
internal sealed record FormulaGround(Func<string, Outcome<Traced>> LookUp, LengthUnit Bare, string Place)
{
    public Refusal Refuse(FormulaNode at, string message) =>
        new(message, Place.Length == 0 ? null : Place, at.Start + 1);
}

/// <summary>A part of a formula.</summary>
/// <param name="Start">Where it starts in the text, counted from 0.</param>
/// <param name="Text">As written.</param>
internal abstract record FormulaNode(int Start, string Text)
{
    // Sizes that square each other over and over would grow past any memory; this is a number of 1200 digits.
    private const int MostBits = 4096;

    public abstract IEnumerable<FormulaName> Names { get; }

    public Outcome<Traced> Evaluate(FormulaGround ground)
    {
        if (!RuntimeHelpers.TryEnsureSufficientExecutionStack())
            return ground.Refuse(this, $"{Text} stands too deep inside other sums; name a part of it.");
        var outcome = Work(ground);
        return outcome.Ok && !IsWithinReason(outcome.Value.Amount)
            ? ground.Refuse(this, $"{Text} comes to a number too large or too fine to work with; check the formula.")
            : outcome;
    }

    protected abstract Outcome<Traced> Work(FormulaGround ground);

    private static bool IsWithinReason(Quantity quantity) =>
        quantity.Amount.Numerator.GetBitLength() <= MostBits && quantity.Amount.Denominator.GetBitLength() <= MostBits;
}

/// <summary>A number or a measure as written.</summary>
internal sealed record LiteralNode(int Start, TypedMeasure Measure) : FormulaNode(Start, Measure.Text)
{
    public override IEnumerable<FormulaName> Names => [];

    /// <summary>True for a fraction such as 1/2 with neither unit, nor whole number, nor brackets.</summary>
    public bool IsBareFraction =>
        !Measure.HasUnit && Text.Any(sign => sign is '/' or '⁄') && !Text.Any(sign => sign is ' ' or '-' or '(');

    protected override Outcome<Traced> Work(FormulaGround ground) =>
        Traced.Written(Measure.Amount, Measure.Text, ground.Place);
}

/// <summary>A name of the job.</summary>
internal sealed record NamedNode(int Start, string Name) : FormulaNode(Start, Name)
{
    public override IEnumerable<FormulaName> Names => [new(Name, Start + 1)];

    protected override Outcome<Traced> Work(FormulaGround ground)
    {
        if (ground.LookUp(Name).Take(out var found, out var refusal))
            return found;
        // A refusal without a place is about the name itself; one with a place is about another formula behind it.
        return refusal.Column is null && refusal.Field is null
            ? ground.Refuse(this, refusal.Message) with
            {
                Rule = refusal.Rule,
            }
            : refusal;
    }
}

/// <summary>A minus sign in front.</summary>
internal sealed record NegatedNode(int Start, string Text, FormulaNode Of) : FormulaNode(Start, Text)
{
    public override IEnumerable<FormulaName> Names => Of.Names;

    protected override Outcome<Traced> Work(FormulaGround ground) => Of.Evaluate(ground).Then<Traced>(inner => -inner);
}

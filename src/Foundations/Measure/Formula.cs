using Nookwright.Trouble;

namespace Nookwright.Measure;

/// <summary>A sum as a maker types it: <c>room.back.width - 1/2 in</c>, <c>(boxes.height - 2 * rail) / 3</c>.</summary>
/// <remarks>
/// <para>
/// Made of <c>+ - * / ( )</c>, numbers, measures (<c>23 3/4 in</c>, <c>8' 2 3/16"</c>, <c>12 deg</c>), names, and the
/// functions of <see cref="FormulaFunction"/>. A slash touched by digits on both sides is a fraction: <c>1/2 in</c> is
/// half an inch. A name may hold letters, digits, <c>.</c>, <c>_</c>, and a hyphen that touches a letter or digit on both
/// sides, so a minus sign after a name wants a space.
/// </para>
/// <para>Numbers stay exact (thirds stay thirds) but for roots and angles' functions, which are good to 15 digits.</para>
/// </remarks>
public sealed class Formula
{
    private readonly FormulaNode _root;

    private Formula(string text, string place, FormulaNode root)
    {
        (Text, Place, _root) = (text, place, root);
        Names = [.. root.Names.DistinctBy(name => name.Name)];
    }

    /// <summary>As written.</summary>
    public string Text { get; }

    /// <summary>Where it is written, as a path through the document; empty when typed by hand.</summary>
    public string Place { get; }

    /// <summary>The names it needs, each once, from left to right.</summary>
    public IReadOnlyList<FormulaName> Names { get; }

    /// <summary>The formula a text means.</summary>
    /// <param name="text">What was typed.</param>
    /// <param name="place">Where it is written, as a path through the document (<c>pieces/box-1/width</c>).</param>
    public static Outcome<Formula> Read(string text, string place = "")
    {
        var reader = new FormulaReader(new TypedText(text));
        if (reader.Read() is { } root)
            return new Formula(text, place, root);
        return reader.Trouble with { Field = place.Length == 0 ? null : place };
    }

    /// <summary>The number it comes to; a bare number stays a plain number.</summary>
    /// <param name="lookUp">Finds a named number; a refusal without field and column gets this formula's.</param>
    /// <param name="bare">The document's unit, for hints in messages.</param>
    public Outcome<Traced> Evaluate(Func<string, Outcome<Traced>> lookUp, LengthUnit bare) =>
        _root.Evaluate(new FormulaGround(lookUp, bare, Place)).Then(Fits);

    /// <summary>The length it comes to; a formula that is nothing but a number takes the document's unit.</summary>
    /// <param name="lookUp">Finds a named number; a refusal without field and column gets this formula's.</param>
    /// <param name="bare">The document's unit.</param>
    public Outcome<Traced> EvaluateLength(Func<string, Outcome<Traced>> lookUp, LengthUnit bare)
    {
        if (BareNumber() is { } written)
            return Fits(
                Traced.Written(written * TypedUnit.Of(bare).One, $"{Text.Trim()} {TypedUnit.Word(bare)}", Place)
            );
        return Evaluate(lookUp, bare).Then<Traced>(number => number.Amount.IsLength ? number : NoLength(number, bare));
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    private Quantity? BareNumber() =>
        _root switch
        {
            LiteralNode { Measure.HasUnit: false } literal => literal.Measure.Amount,
            NegatedNode { Of: LiteralNode { Measure.HasUnit: false } literal } => Quantity.Of(
                -literal.Measure.Amount.Amount
            ),
            _ => null,
        };

    private Outcome<Traced> Fits(Traced number) =>
        number.Amount.FitsLength || !number.Amount.IsLength
            ? number
            : Refuse($"\"{Text.Trim()}\" comes to a length longer than any room; check the numbers.");

    private Refusal NoLength(Traced number, LengthUnit bare)
    {
        var unit = TypedUnit.Word(bare);
        var where = _root is NamedNode { Name: var name }
            ? $"Write the unit ({unit}) where {name} is given"
            : $"Give its numbers a unit ({unit})";
        var hint = number.Amount.Dimension == Dimension.Number ? $" {where}, or multiply by 1 {unit}." : "";
        return Refuse($"\"{Text.Trim()}\" comes to {number.Amount.Dimension}, and a length is wanted.{hint}") with
        {
            Rule = "formula.units",
        };
    }

    private Refusal Refuse(string message) => new(message, Place.Length == 0 ? null : Place, _root.Start + 1);
}

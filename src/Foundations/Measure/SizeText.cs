namespace Nookwright.Measure;

/// <summary>A size as the maker wrote it: a length, a plain number in the document's unit, or a formula.</summary>
/// <param name="Text">As written; kept to the letter.</param>
public readonly record struct SizeText(string Text)
{
    /// <summary>A text is a size as written.</summary>
    public static implicit operator SizeText(string text) => new(text);

    /// <inheritdoc/>
    public override string ToString() => Text;
}

namespace Nookwright.Measure;

/// <summary>A name a formula needs, and where in the text it first stands.</summary>
/// <param name="Name">The name.</param>
/// <param name="Column">Its first sign, counted from 1.</param>
public readonly record struct FormulaName(string Name, int Column)
{
    /// <summary>True when a formula could hold this text as a name: letters, digits, <c>.</c>, <c>_</c> and inner hyphens.</summary>
    public static bool CanBe(string text)
    {
        var typed = new TypedText(text);
        return TypedName.StartsAt(typed) && TypedName.Read(typed) == text;
    }
}

namespace Nookwright.Parts;

/// <summary>Parts that share a letter, for lists and labels.</summary>
/// <param name="Letter">Their letter.</param>
/// <param name="Parts">The parts, in the order of their pieces; at least one.</param>
public sealed record AlikeParts(string Letter, IReadOnlyList<Part> Parts)
{
    /// <summary>How many there are.</summary>
    public int Count => Parts.Count;

    /// <summary>One of them to show: all are equal.</summary>
    public Part First => Parts[0];
}

namespace Nookwright.Records;

/// <summary>Says that a text is the id of something else in the document.</summary>
/// <param name="list">The list that holds it, as a path from the top (<c>shop/sheets</c>).</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class RefersToAttribute(string list) : Attribute
{
    /// <summary>The list that holds it, as a path from the top.</summary>
    public string List { get; } = list;
}

namespace Nookwright.Projects;

/// <summary>One field a person can change, with all that a form on a page needs to show it.</summary>
/// <param name="Path">The field, for <see cref="Edits.SetField"/>.</param>
/// <param name="Label">What it is, in words (<c>width, outside</c>).</param>
/// <param name="Kind">What is typed or chosen in it.</param>
/// <param name="Text">What stands in it: as written, or its default for a choice, a count and yes or no; empty for nothing.</param>
/// <param name="Choices">The words of a choice; of a reference, the ids that can be named; else empty.</param>
/// <param name="CanBeEmpty">True when it can be left out, and the default of its kind holds.</param>
public sealed record Field(
    string Path,
    string Label,
    FieldKind Kind,
    string Text,
    IReadOnlyList<string> Choices,
    bool CanBeEmpty
);

/// <summary>What is typed or chosen in a field.</summary>
public enum FieldKind
{
    /// <summary>A length or a formula.</summary>
    Size,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>The id of something else in the document.</summary>
    Reference,

    /// <summary>Free text.</summary>
    Text,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>A number that is no length.</summary>
    Number,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>A day, as 2026-03-14.</summary>
    Day,
}

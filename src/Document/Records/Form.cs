namespace Nookwright.Records;

/// <summary>What may stand in one place of the document, and how it is called when something else stands there.</summary>
/// <param name="InWords">What belongs there, as in "expected …, found …".</param>
public abstract record Form(string InWords)
{
    /// <summary>A size as a maker writes it.</summary>
    public sealed record Size() : Form("a size such as \"23 3/4 in\" or a formula");

    /// <summary>Free text, or the id of something else.</summary>
    /// <param name="RefersTo">The list that holds the thing named, as a path from the top; null for free text.</param>
    public sealed record Text(string? RefersTo = null) : Form("text in quotes");

    /// <summary>One of a few words.</summary>
    /// <param name="Words">The words, in order.</param>
    /// <param name="Enum">The enum they are the members of.</param>
    public sealed record Choice(IReadOnlyList<string> Words, Type Enum)
        : Form($"one of {string.Join(", ", Words.Select(word => $"\"{word}\""))}");

    /// <summary>A whole number.</summary>
    /// <param name="Least">The smallest that makes sense.</param>
    /// <param name="Most">The largest that makes sense.</param>
    public sealed record Count(int Least = 0, int Most = 1_000_000) : Form($"a whole number from {Least} to {Most}");

    /// <summary>A number that is no length.</summary>
    /// <param name="Least">The smallest that makes sense.</param>
    /// <param name="Most">The largest that makes sense.</param>
    public sealed record Number(decimal Least = 0, decimal Most = 1_000_000) : Form($"a number from {Least} to {Most}");

    /// <summary>True or false.</summary>
    public sealed record YesNo() : Form("true or false");

    /// <summary>A day.</summary>
    public sealed record Day() : Form("a day such as \"2026-03-14\"");

    /// <summary>A cutting plan, whole: its form is another file's, and it is kept as it stands.</summary>
    public sealed record Plan() : Form("a cutting plan in { }, as in plan.schema.json");

    /// <summary>Several of the same form, in order.</summary>
    /// <param name="Item">The form of each.</param>
    public sealed record ListOf(Form Item) : Form("a list in [ ]");

    /// <summary>A record with named fields.</summary>
    /// <param name="Type">The record's type.</param>
    /// <param name="Fields">Its fields, in the order they are written.</param>
    public sealed record Record(Type Type, IReadOnlyList<FormField> Fields) : Form("fields in { }");

    /// <summary>One of several records, told apart by the word in its <c>kind</c>.</summary>
    /// <param name="Type">The type they have in common.</param>
    /// <param name="Kinds">The word of each kind with its fields, in order.</param>
    public sealed record OneOf(Type Type, IReadOnlyList<KeyValuePair<string, Record>> Kinds) : Form("fields in { }");
}

/// <summary>One named field of a record.</summary>
/// <param name="Name">As written in the file.</param>
/// <param name="Form">What may stand in it.</param>
/// <param name="Required">True when it cannot be left out.</param>
/// <param name="Property">The property of the record that holds it.</param>
public sealed record FormField(string Name, Form Form, bool Required, System.Reflection.PropertyInfo Property);

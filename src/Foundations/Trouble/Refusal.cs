namespace Nookwright.Trouble;

/// <summary>Why a file or a typed text could not be taken, where, and what to do about it.</summary>
/// <param name="Message">What is wrong and what to do, in one sentence a maker understands.</param>
/// <param name="Field">The field, as a path through the document (<c>pieces/box-1/width</c>), or null.</param>
/// <param name="Column">Where in the typed text the trouble starts, counted from 1; null when the whole text is meant.</param>
/// <param name="File">The file's name as the user gave it, or null for text typed by hand.</param>
/// <param name="Line">The line in the file, counted from 1, or null.</param>
public sealed record Refusal(
    string Message,
    string? Field = null,
    int? Column = null,
    string? File = null,
    int? Line = null
)
{
    /// <summary>The id of the rule it breaks (<c>formula.cycle</c>), where a design wants to tell kinds apart; null elsewhere.</summary>
    public string? Rule { get; init; }

    /// <summary>The sentence for standard error: <c>file:line: field: what, and what to do</c>.</summary>
    public override string ToString()
    {
        var place =
            File is null ? ""
            : Line is null ? $"{File}: "
            : $"{File}:{Line}: ";
        var field = Field is null ? "" : $"{Field}: ";
        return place + field + Message;
    }
}

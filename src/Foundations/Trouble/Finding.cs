namespace Nookwright.Trouble;

/// <summary>How much a finding matters.</summary>
public enum Severity
{
    /// <summary>Good to know; nothing has to change.</summary>
    Note,

    /// <summary>The maker should decide; the job can go on.</summary>
    Warning,

    /// <summary>The job cannot be built as it stands; must be mended.</summary>
    MustMend,
}

/// <summary>Something a check discovered about the job: what, where, by how much, and what to do.</summary>
/// <param name="Rule">The rule's id, <c>room.rule</c> (<c>doors.wider-than-opening</c>), the same everywhere.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Message">The sentence the maker reads: what, by how much, what to do.</param>
/// <param name="About">Ids of what it is about: pieces, panels, readings, sizes, sheets. May be empty.</param>
/// <param name="Source">The published source of the rule, or "common practice, no source"; null for plain arithmetic.</param>
public sealed record Finding(
    string Rule,
    Severity Severity,
    string Message,
    IReadOnlyList<string> About,
    string? Source = null
)
{
    /// <summary>The field of the document to change, as a path (<c>pieces/door-1/width</c>), when one is to blame.</summary>
    public string? Field { get; init; }

    /// <summary>True when what is written cannot be taken at all: a size that cannot be read or worked out, or comes to nothing.</summary>
    public bool IsUnreadable { get; init; }
}

using Nookwright.Measure;
using Nookwright.Records;
using Nookwright.Trouble;

namespace Nookwright.Projects;

/// <summary>Tells of fields that are kept but not understood, for one of them may be a slip of the pen.</summary>
public static class UnknownFields
{
    /// <summary>A note for each field this program does not know.</summary>
    public static IEnumerable<Finding> Of(Project project) =>
        from place in Leaves.RecordsOf(project)
        from name in place.Record.Unknown?.Keys ?? Enumerable.Empty<string>()
        select Note(place.Path, name, Forms.NamesIn(place.Record));

    private static Finding Note(string path, string name, IEnumerable<string> known)
    {
        var meant = NearestName.To(name, known) is { } near
            ? $"write \"{near}\" if that was meant"
            : "nothing here is called anything like it";
        return new(
            "document.unknown-field",
            Severity.Note,
            $"The field \"{name}\" is not known here and changes nothing; it is kept as it stands: {meant}.",
            path.Length == 0 ? [] : [path.Split('/')[^1]]
        )
        {
            Field = FieldPath.Under(path, name),
        };
    }
}

using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Files;

/// <summary>What came of opening a job: the project, or everything that stands in its way; and where its fields stand in the file.</summary>
/// <param name="Project">The project; null when there are refusals.</param>
/// <param name="Refusals">Why it could not be taken, in the order of the file; empty when it could.</param>
/// <param name="Lines">The lines of its fields, for what is found out later.</param>
public sealed record OpenedJob(Project? Project, IReadOnlyList<Refusal> Refusals, FieldLines Lines)
{
    /// <summary>The project, or the first refusal.</summary>
    public Outcome<Project> Outcome => Project is null ? Refusals[0] : Project;

    internal static OpenedJob Refused(Refusal refusal) => new(null, [refusal], FieldLines.None);
}

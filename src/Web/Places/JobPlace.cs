namespace Nookwright.Web.Places;

/// <summary>A place of a job's page.</summary>
/// <param name="Word">As in its address.</param>
/// <param name="Name">As on its tab.</param>
public sealed record JobPlace(string Word, string Name)
{
    /// <summary>The places there are, in the order of the job.</summary>
    public static IReadOnlyList<JobPlace> All { get; } =
    [new("measure", "Measure"), new("draw", "Draw"), new("prove", "Prove"), new("cut", "Cut"), new("build", "Build")];

    /// <summary>The place with this word in its address; where the drawing is when there is none.</summary>
    public static JobPlace Of(string? word) => All.FirstOrDefault(place => place.Word == word) ?? All[1];
}

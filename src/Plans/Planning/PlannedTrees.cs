using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>The trees a plan was written from, to plan on from after an edit.</summary>
/// <param name="Job">What they were grown for.</param>
/// <param name="Picture">The sheets; nobody changes them any more.</param>
/// <param name="WaitingBlanks">Held blanks that had no place.</param>
internal sealed record PlannedTrees(Job Job, Picture Picture, IReadOnlyList<Item> WaitingBlanks) : PlanOrigin
{
    /// <summary>The trees of a layout as it stands.</summary>
    public static PlannedTrees Of(Job job, Layout layout) => new(job, layout.Copy(), [.. layout.WaitingBlanks]);
}

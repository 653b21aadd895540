using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Parts a run into as few stretches as will do, each from a strip of its own, at the places the maker allows.</summary>
/// <param name="request">What was asked.</param>
/// <param name="isPossible">True for a run that some sheet can give.</param>
internal sealed class RunStretches(CutRequest request, Func<PlannedRun, bool> isPossible)
{
    /// <summary>
    /// The run itself when it can be cut whole or cannot be helped, unless it is to be parted; else its stretches, each as
    /// long as can be.
    /// </summary>
    public IReadOnlyList<PlannedRun> Of(PlannedRun run)
    {
        var ends = Ends(run, run.Run.MaySplitAfter);
        var partings = Ends(run, run.Run.PartAfter);
        if (ends.Count == 1 || (partings.Count == 1 && isPossible(run)))
            return [run];
        var stretches = new List<PlannedRun>();
        for (var first = 0; first < run.Members.Count; )
        {
            var most = partings.First(end => end > first);
            var longest = ends.Where(end => end > first && end <= most)
                .Select(end => run.Slice(first, end - first))
                .LastOrDefault(isPossible);
            if (longest is null)
                return [run];
            stretches.Add(longest);
            first += longest.Members.Count;
        }
        return stretches;
    }

    /// <summary>Where a stretch may end, as the number of members up to there.</summary>
    private List<int> Ends(PlannedRun run, IReadOnlyList<string> places) =>
        [
            .. Enumerable
                .Range(1, run.Members.Count)
                .Where(end => end == run.Members.Count || places.Contains(request.Parts[run.Members[end - 1]].Id)),
        ];
}

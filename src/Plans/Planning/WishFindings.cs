using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>Wishes that contradict each other.</summary>
internal static class WishFindings
{
    /// <summary>Parts that must be apart and are to run on in one strip; null when there are none.</summary>
    public static Finding? Of(Item item, CutRun? run, CutRequest request)
    {
        if (run is null || item.Parts.Count < 2)
            return null;
        var ids = item.Parts.Select(p => request.Parts[p].Id).ToList();
        foreach (var apart in request.Apart)
            if (apart.Parts.Where(ids.Contains).Distinct().ToList() is { Count: > 1 } together)
                return new(
                    "cutting.apart-in-one-run",
                    Severity.MustMend,
                    $"{run.Id}: {string.Join(" and ", together)} are to come from different strips ({apart.Id}) and from one with "
                        + "running grain; take one of them out of the run, let the run split between them, or drop the wish.",
                    [run.Id, .. ids]
                );
        return null;
    }
}

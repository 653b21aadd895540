using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Parts runs at places the maker allows, where that saves a sheet or finds a place for a part that has none.</summary>
/// <remarks>
/// A place that is allowed is not one that is wanted: a run stays whole unless parting it is worth a whole sheet, and is then
/// parted at as few places as save as much. It is never parted for a visit or for handling.
/// </remarks>
/// <param name="planned">The best plan found for a request, its runs parted where it says.</param>
internal sealed class RunParting(Func<CutRequest, Candidate> planned)
{
    /// <summary>The plan, or a better one with runs parted.</summary>
    /// <param name="whole">A plan whose runs are as whole as can be.</param>
    /// <param name="isLeast">True for a material of which no plan needs less.</param>
    /// <param name="stop">Ends it; the best so far is given.</param>
    public Candidate Better(Candidate whole, Func<string, bool> isLeast, CancellationToken stop)
    {
        var request = whole.Job.Request;
        var places = Places(whole, isLeast).ToList();
        if (places.Count == 0 || stop.IsCancellationRequested)
            return whole;
        var best = planned(Parted(request, places));
        if (!IsWorthParting(best.Score, whole.Score))
            return whole;
        foreach (var place in places.ToList())
        {
            if (places.Count == 1 || stop.IsCancellationRequested)
                break;
            List<Place> fewer = [.. places.Where(p => p != place)];
            if (planned(Parted(request, fewer)) is var other && !IsWorthParting(best.Score, other.Score))
                (best, places) = (other, fewer);
        }
        return best;
    }

    /// <summary>A request with its runs parted as in a plan that was made for it.</summary>
    public static CutRequest AsIn(Plan? plan, CutRequest request)
    {
        var runs = (plan?.Origin as PlannedTrees)?.Job.Request.Runs.ToDictionary(r => r.Id, r => r.PartAfter);
        IReadOnlyList<string> PartAfter(CutRun run) =>
            runs?.GetValueOrDefault(run.Id)?.Where(run.MaySplitAfter.Contains).ToList() ?? [];
        return request with { Runs = [.. request.Runs.Select(r => r with { PartAfter = PartAfter(r) })] };
    }

    /// <summary>True when parting finds a place for more parts, or saves a sheet without a further visit.</summary>
    private static bool IsWorthParting(PlanScore parted, PlanScore whole) =>
        parted.Missing < whole.Missing
        || (
            parted.Missing == whole.Missing
            && (parted.Splits, parted.Visits).CompareTo((whole.Splits, whole.Visits)) <= 0
            && parted.Bought <= whole.Bought
            && parted.Sheets < whole.Sheets
        );

    /// <summary>The places that are allowed and not used yet, in materials of which less might do.</summary>
    private static IEnumerable<Place> Places(Candidate whole, Func<string, bool> isLeast)
    {
        var parts = whole.Job.Request.Parts;
        foreach (var item in whole.Job.Items.Where(i => i.Run is not null))
        {
            if (whole.Score.Missing == 0 && isLeast(item.Material))
                continue;
            var run = whole.Job.Request.Runs.First(r => r.Id == item.Run);
            foreach (var part in item.Parts.SkipLast(1).Select(p => parts[p].Id).Where(run.MaySplitAfter.Contains))
                yield return new(run.Id, part);
        }
    }

    private static CutRequest Parted(CutRequest request, IReadOnlyList<Place> places) =>
        request with
        {
            Runs =
            [
                .. request.Runs.Select(run =>
                    run with
                    {
                        PartAfter = [.. places.Where(p => p.Run == run.Id).Select(p => p.After)],
                    }
                ),
            ],
        };

    private sealed record Place(string Run, string After);
}

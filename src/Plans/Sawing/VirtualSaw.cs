using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Sawing;

/// <summary>Executes a plan cut by cut on the stock given, and accepts it or names the first thing that cannot be done.</summary>
/// <remarks>It shares no code with the planner: it knows the plan and the request, and how wood and saws behave.</remarks>
public static class VirtualSaw
{
    /// <summary>Runs a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="request">What it should make, from what, with which saws.</param>
    public static SawVerdict Run(Plan plan, CutRequest request)
    {
        var repeats = Repeats(plan);
        if (plan.Rounds.Count > 0)
        {
            var (why, at) = RoundsSaw.Trouble(plan, request);
            return new(why is null, why, at, repeats);
        }
        if ((StockCheck.Trouble(plan, request) ?? VisitCheck.Trouble(plan, request)) is { } stock)
            return new(false, stock, null, repeats);
        var bench = new SawBench(request.Saws, plan.Workpieces.ToDictionary(p => p.Id));
        var kinds = request.Stock.ToDictionary(s => s.Id);
        if (plan.Sheets.Select(s => bench.Lay(s, kinds[s.Stock])).FirstOrDefault(t => t is not null) is { } sheet)
            return new(false, sheet, null, repeats);
        if (CutAll(bench, plan) is { } failed)
            return failed with { Repeats = repeats };
        if (bench.NeverSeen is { } invented)
            return new(false, $"{invented} is listed, and no cut gives it.", null, repeats);
        var made = YieldCheck.Trouble(plan, request, bench.Here);
        return new(made is null, made, null, repeats);
    }

    private static SawVerdict? CutAll(SawBench bench, Plan plan)
    {
        var number = 0;
        foreach (var (cut, visit) in InOrder(plan))
        {
            number++;
            var trouble = cut.Number == number ? bench.Make(cut, visit) : $"it is number {number} in order.";
            if (trouble is null)
                continue;
            var where = visit is null ? "in the breakdown" : $"at visit {visit.Number}";
            return new(false, $"Cut {cut.Number} ({where}) cannot be made: {trouble}", cut.Number, []);
        }
        return null;
    }

    private static IEnumerable<(SawCut Cut, Visit? Visit)> InOrder(Plan plan)
    {
        foreach (var cut in plan.Breakdown)
            yield return (cut, null);
        foreach (var visit in plan.Visits)
        foreach (var cut in visit.Cuts)
            yield return (cut, visit);
    }

    private static List<Length> Repeats(Plan plan) =>
        [
            .. plan
                .Visits.GroupBy(v => (v.Setting, v.Round))
                .Where(g => g.Count() > 1)
                .Select(g => g.Key.Setting)
                .Distinct(),
        ];
}

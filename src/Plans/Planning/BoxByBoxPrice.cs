using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>What it costs to finish one piece before the next, and what it buys, as a finding of the plan.</summary>
internal static class BoxByBoxPrice
{
    /// <summary>The note.</summary>
    /// <param name="boxes">The plan box by box.</param>
    /// <param name="free">The plan of the same request in any order.</param>
    /// <param name="request">The request.</param>
    public static Finding Of(Plan boxes, Plan free, CutRequest request)
    {
        var visits = boxes.Visits.Count - free.Visits.Count;
        var (loose, looseFree) = (LoosePieces.Of(boxes).Most, LoosePieces.Of(free).Most);
        var sheets = Bought(boxes, request) - Bought(free, request);
        return new(
            "cutting.box-by-box",
            Severity.Note,
            $"Box by box: {Difference(visits, "visit")}{(sheets == 0 ? "" : $", {Difference(sheets, "sheet")}")}; at most "
                + $"{loose} loose pieces instead of {looseFree}. {Advice(visits, loose, looseFree)}",
            []
        );
    }

    private static string Advice(int visits, int loose, int looseFree) =>
        loose < looseFree
            ? "Parts that are alike in several boxes then come from different visits, unless they must match."
        : visits > 0 ? "It buys nothing here: plan without it."
        : "";

    private static string Difference(int count, string one) =>
        count == 0
            ? $"no more {one}s"
            : $"{Math.Abs(count)} {(count > 0 ? "more" : "fewer")} {one}{(Math.Abs(count) == 1 ? "" : "s")}";

    private static int Bought(Plan plan, CutRequest request)
    {
        var offcuts = request.Stock.Where(s => s.IsOffcut).Select(s => s.Id).ToHashSet();
        return plan.Sheets.Count(s => !offcuts.Contains(s.Stock));
    }
}

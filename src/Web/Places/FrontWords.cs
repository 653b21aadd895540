using Nookwright.Cutting;
using Nookwright.Paper;

namespace Nookwright.Web.Places;

/// <summary>Plans of a front in words.</summary>
public static class FrontWords
{
    /// <summary>A plan by what tells it from the others: <c>25 visits, 6 sheets, 512.00</c>.</summary>
    public static string Label(FrontPlan plan) => $"{Counts(plan)}{(plan.Price is { } price ? $", {price:0.00}" : "")}";

    /// <summary>A plan by its visits and sheets.</summary>
    public static string Counts(FrontPlan plan) =>
        $"{JobWords.Count(plan.Visits, "visit")}, {JobWords.Count(plan.Sheets, "sheet")}";

    /// <summary>What it takes beside visits and sheets.</summary>
    public static string Handling(FrontPlan plan) =>
        JobWords.Count(
            plan.Handling,
            "rough cut, dressing pass and wide crosscut",
            "rough cuts, dressing passes and wide crosscuts"
        );

    /// <summary>What lies about meanwhile.</summary>
    public static string Loose(FrontPlan plan) => $"at most {JobWords.Count(plan.Score.Loose, "loose piece")}";

    /// <summary>How many sizes do not come from one setting.</summary>
    public static string Splits(FrontPlan plan) =>
        plan.Splits.Count == 0
            ? "every size from one setting"
            : $"{JobWords.Count(plan.Splits.Count, "size")} from more than one setting";
}

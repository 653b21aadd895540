using System.Globalization;

namespace Nookwright.Cutting;

/// <summary>What a step of a front buys, in a sentence.</summary>
internal static class FrontText
{
    /// <summary>What the next plan buys, for how many visits, and what then comes from different settings.</summary>
    public static string Next(FrontPlan plan, FrontPlan next, CutRequest request)
    {
        var visits = Count(next.Visits - plan.Visits, "more visit");
        var splits = next.Splits.Where(s => !plan.Splits.Any(known => Same(known, s))).ToList();
        return $"{Bought(plan, next, request)} for {visits}{Splits(splits, request)}{Handling(next.Handling - plan.Handling)}.";
    }

    /// <summary>From where to where there is a choice, and whether its end is proven.</summary>
    public static string Choice(PlanFront front)
    {
        var (first, last) = (front.First, front.Plans[^1]);
        var proven = last.Plan.Proof is { IsLeastWood: true }
            ? " No plan buys less than the last: that is proven."
            : "";
        return $"{front.Plans.Count} plans to choose from, from {first.Visits} visits with {Count(first.Sheets, "sheet")} "
            + $"to {last.Visits} visits with {Count(last.Sheets, "sheet")}.{proven}";
    }

    /// <summary>"1 sheet", "2 sheets".</summary>
    public static string Count(int count, string one) => $"{count} {one}{(count == 1 ? "" : "s")}";

    /// <summary>Large pieces are what is heavy about a plan: said where one step makes more or fewer cuts of them.</summary>
    private static string Handling(int more) =>
        more == 0 ? "" : $"; {Count(Math.Abs(more), more > 0 ? "more cut" : "fewer cut")} of large pieces";

    private static bool Same(SplitSize one, SplitSize other) =>
        one.Size == other.Size && one.Visits.Count == other.Visits.Count;

    private static string Bought(FrontPlan plan, FrontPlan next, CutRequest request)
    {
        if (next.Score.Missing < plan.Score.Missing)
            return Capital($"{Few(plan.Score.Missing - next.Score.Missing, "more part")} get a place");
        var fewer = plan.Sheets - next.Sheets;
        var price = plan.Price - next.Price;
        var money = price > 0 ? price.Value.ToString("0.00", CultureInfo.InvariantCulture) : null;
        if (fewer <= 0)
            return money is null ? "Smaller sheets" : $"{money} less to pay";
        return Capital($"{Few(fewer, "sheet")} fewer{Material(plan, next, request)}")
            + (money is null ? "" : $" ({money} less to pay)");
    }

    /// <summary>Which material is spared, where there are several.</summary>
    private static string Material(FrontPlan plan, FrontPlan next, CutRequest request)
    {
        var materials = plan.Plan.Sheets.Select(s => s.Material).Distinct().ToList();
        int Of(FrontPlan p, string material) =>
            p.Plan.Sheets.Count(s => s.Material == material && !request.Stock.First(k => k.Id == s.Stock).IsOffcut);
        var spared = materials.Where(m => Of(next, m) < Of(plan, m)).ToList();
        return materials.Count > 1 && spared.Count > 0 ? $" of {string.Join(" and ", spared)}" : "";
    }

    private static string Splits(List<SplitSize> splits, CutRequest request)
    {
        if (splits.Count == 0)
            return "";
        var parts = request.Parts.ToDictionary(p => p.Id);
        var named = splits.Select(s => Apart.Say(s, parts)).OfType<string>().Distinct().Take(2).ToList();
        var what = named.Count > 0 ? string.Join(" and ", named) : Sizes(splits, request);
        return $"; {what} would then come from different settings";
    }

    private static string Sizes(List<SplitSize> splits, CutRequest request)
    {
        var sizes = splits.Take(3).Select(s => request.Say(s.Size)).ToList();
        if (splits.Count > sizes.Count)
            sizes.Add(Count(splits.Count - sizes.Count, "other size"));
        return "parts of "
            + string.Join(" and ", new[] { string.Join(", ", sizes[..^1]), sizes[^1] }.Where(s => s != ""));
    }

    private static string Few(int count, string one) => $"{Number(count)} {one}{(count == 1 ? "" : "s")}";

    /// <summary>Small numbers in words.</summary>
    public static string Number(int count) =>
        count switch
        {
            1 => "one",
            2 => "two",
            3 => "three",
            4 => "four",
            5 => "five",
            _ => count.ToString(CultureInfo.InvariantCulture),
        };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

namespace Nookwright.Cutting;

/// <summary>Why there is nothing to trade, in sentences.</summary>
internal static class NoTradeText
{
    /// <summary>Why, and how much better a plan could be at most.</summary>
    public static string Of(NoTrade why, PlanProof? proof, Func<string, string> nameOf) =>
        why switch
        {
            NoTrade.Proven => "Nothing to trade: no plan buys less wood, however many visits it makes. That is proven.",
            NoTrade.BoxByBox =>
                "Nothing to trade: box by box, wood comes before visits already. What going box by box costs is told with the plan.",
            NoTrade.NothingBought =>
                "Nothing to trade: what is left to cut comes out of what is there, and no sheet is bought.",
            NoTrade.AllIssued => "Nothing to trade: all that can be cut now is issued, and stays as it is.",
            NoTrade.NotFound => string.Join(" ", [NotFound, .. Least(proof, nameOf)]),
            _ => "The search was ended before it had looked whether more visits buy less wood.",
        };

    private const string NotFound =
        "Nothing to trade: no plan that buys less wood was found, though every size was free to be visited as often as it takes.";

    /// <summary>What is bought of each material whose least is not known, against what is.</summary>
    private static IEnumerable<string> Least(PlanProof? proof, Func<string, string> nameOf) =>
        (proof?.Materials ?? []).Where(m => !m.IsTight).Select(m => Least(m, nameOf(m.Material)));

    private static string Least(MaterialProof wood, string name) =>
        wood.Sheets > wood.SheetsAtLeast
            ? $"{name}: {FrontText.Count(wood.Sheets, "sheet")}, and it is proven that none does with fewer than {wood.SheetsAtLeast}."
            : $"{name}: {ProofText.Say(wood.Used)} {ProofText.Unit(wood)}, and it is proven that none does with less than "
                + $"{ProofText.Say(wood.AtLeast)}.";
}

using System.Globalization;
using Nookwright.Cutting;

namespace Nookwright.Cli;

/// <summary>A front of plans in plain text: a small table, then what each step buys.</summary>
/// <param name="front">The front.</param>
/// <param name="extraVisits">The choice: how many visits beyond the fewest are accepted.</param>
public sealed class FrontTable(PlanFront front, int extraVisits)
{
    /// <summary>The lines.</summary>
    public IEnumerable<string> Lines() => [front.Sentence, "", .. Table(), .. Steps()];

    private IEnumerable<string> Table()
    {
        var table = new TextTable("", "extra visits>", "visits>", "sheets>", "price>", "rough cuts and dressing>");
        foreach (var plan in front.Plans)
            table.Row(
                plan == front.Chosen(extraVisits) ? "*" : "",
                Say(plan.Visits - front.First.Visits),
                Say(plan.Visits),
                Say(plan.Sheets),
                plan.Price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "",
                Say(plan.Handling)
            );
        return table.Lines();
    }

    private IEnumerable<string> Steps() =>
        front.IsNothingToTrade
            ? []
            :
            [
                "",
                .. front.Plans.Where(p => p.Next is not null).Select(p => $"From {p.Visits} visits: {p.Next}"),
                "* is what is planned; --extra-visits N chooses another.",
            ];

    private static string Say(int count) => count.ToString(CultureInfo.InvariantCulture);
}

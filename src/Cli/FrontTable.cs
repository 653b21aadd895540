using System.Globalization;
using Nookwright.Cutting;
using Nookwright.Measure;

namespace Nookwright.Cli;

/// <summary>A front of plans in plain text: a small table, then what each step buys.</summary>
/// <param name="front">The front.</param>
/// <param name="extraVisits">The choice: how many visits beyond the fewest are accepted.</param>
/// <param name="lengths">How lengths are shown.</param>
public sealed class FrontTable(PlanFront front, int extraVisits, LengthFormat lengths)
{
    /// <summary>The lines.</summary>
    public IEnumerable<string> Lines() => [front.Sentence, "", .. Table(), .. Steps()];

    private IEnumerable<string> Table()
    {
        var table = new TextTable([
            .. (string[])
                ["", "extra visits>", "visits>", "sheets>", "price>", "cuts of large pieces>", "loose pieces>"],
            .. IsPredicted ? (string[])["alike parts differ by>"] : [],
        ]);
        foreach (var plan in front.Plans)
            table.Row([
                plan == front.Chosen(extraVisits) ? "*" : "",
                Say(plan.Visits - front.First.Visits),
                Say(plan.Visits),
                Say(plan.Sheets),
                plan.Price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "",
                Say(plan.Handling),
                Say(plan.Score.Loose),
                .. IsPredicted ? (string[])[plan.PredictedMismatch is { } far ? lengths.PrintInFull(far) : ""] : [],
            ]);
        return table.Lines();
    }

    /// <summary>True where somebody has predicted how far alike parts differ.</summary>
    private bool IsPredicted => front.Plans.Any(p => p.PredictedMismatch is not null);

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

using System.Globalization;
using Nookwright.Cutting;

namespace Nookwright.Cli;

/// <summary>A cutting plan of several rounds in plain text, each round as it is cut: with the sizes and names of its time.</summary>
/// <param name="plan">The plan.</param>
public sealed class RoundsText(Plan plan)
{
    /// <summary>The lines.</summary>
    public IEnumerable<string> Lines() => plan.Rounds.SelectMany(Round);

    private IEnumerable<string> Round(CutRound round) =>
        [Heading(round), "", .. new PlanText(View(round), round.Asked).Body(), ""];

    /// <summary>What a round adds, with the pieces it is cut from.</summary>
    private Plan View(CutRound round) =>
        round.Plan with
        {
            Workpieces = [.. plan.Rounds.Take(round.Number).SelectMany(r => r.Plan.Workpieces)],
        };

    private static string Heading(CutRound round) =>
        $"Round {round.Number}, "
        + (
            round.Issued is { } day
                ? $"issued {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}: it does not move"
                : "not issued yet"
        );
}

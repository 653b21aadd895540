using System.Globalization;
using Nookwright.Cutting;
using Nookwright.Flow;
using Nookwright.Paper;

namespace Nookwright.Cli;

/// <summary>A cutting plan in plain text, in the words of the packet: in short, then round by round.</summary>
/// <param name="book">The job with its plan.</param>
public sealed class PlanText(Workbook book)
{
    private readonly Plan _plan = book.Plan ?? throw new ArgumentException("There is no plan to tell.", nameof(book));
    private readonly JobWords _words = new(book);

    /// <summary>The lines.</summary>
    public IEnumerable<string> Lines() =>
        [.. Said().SelectMany(text => WrappedText.Lines(text)), "", .. Rounds(), .. Joints()];

    private IEnumerable<string> Said() =>
        new[]
        {
            Summary(),
            _plan.Proof?.Say(_words.Material),
            _plan.Findings.FirstOrDefault(f => f.Rule == "cutting.box-by-box")?.Message,
        }.OfType<string>();

    private string Summary() =>
        $"{JobWords.Count(_plan.Sheets.Count, "sheet")}, {JobWords.Count(_plan.Visits.Count, "visit")} for "
        + $"{JobWords.Count(_plan.DimensionsNow, "distinct dimension")}, {JobWords.Count(_plan.Cuts.Count(), "cut")}, "
        + $"at most {JobWords.Count(_words.Loose.Most, "loose piece")}; executed by the virtual saw.";

    private IEnumerable<string> Rounds() =>
        book.ByRound.Zip(_plan.Rounds.Select(Heading).Append("")).SelectMany(round => Round(round.First, round.Second));

    private static IEnumerable<string> Round(Workbook round, string heading) =>
        [.. heading.Length > 0 ? new[] { heading, "" } : [], .. new RoundText(round).Lines()];

    private static string Heading(CutRound round) =>
        $"Round {round.Number}, "
        + (
            round.Issued is { } day
                ? $"issued {day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}: it does not move"
                : "not issued yet"
        );

    /// <summary>What becomes of the figure of each running grain, from part to part.</summary>
    private IEnumerable<string> Joints()
    {
        foreach (var run in RunJoint.Of(_plan, book.CutRequest).GroupBy(j => j.Run))
        {
            yield return $"Running grain {run.Key}";
            foreach (var joint in run)
            foreach (
                var line in WrappedText.Lines(
                    $"{_words.Named(joint.Before)} to {_words.Named(joint.After)}: {joint.Say(_words.Near)}",
                    "  "
                )
            )
                yield return line;
            yield return "";
        }
    }
}

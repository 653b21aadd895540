using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Flow;
using Nookwright.Parts;

namespace Nookwright.Paper;

/// <summary>Running grain, each run drawn in its order with the figure's arrow; and the match groups.</summary>
internal static class GrainPages
{
    private const double TallestRun = 55;

    private static readonly Table Matches = new([
        new("Parts", 40, Bold: true),
        new("Size", 28, Anchor.End),
        new("Why they must match", 92),
        new("Setting", 16),
    ]);

    /// <summary>The pages; none when nothing runs and nothing must match.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper)
    {
        if (book.PartList.Runs.Count == 0 && book.PartList.Matches.Count == 0)
            return [];
        var flow = new PageFlow(paper, "Match groups and running grain", "Match groups and running grain");
        foreach (var run in book.PartList.Runs)
            DrawRun(flow, run, book, words);
        if (book.PartList.Matches.Count > 0)
            DrawMatches(flow, book, words);
        return flow.Pages;
    }

    private static void DrawRun(PageFlow flow, RunOfParts run, Workbook book, JobWords words)
    {
        flow.Head($"Running grain {run.Id}", keep: TallestRun + 24);
        var joints = book.Plan is { } made
            ? RunJoint.Of(made, book.CutRequest).Where(j => j.Run == run.Id).ToList()
            : [];
        flow.Text(
            $"Cut these from {(joints.Any(j => j.IsSplit) ? "their strips" : "one strip")} in this order, so that the figure "
                + "runs across them. Write the number and an arrow on the back of each before the first cut."
        );
        flow.Space(2);
        var largest = new Spot(flow.Paper.BodyWidth, TallestRun);
        if (book.Plan is { } plan && RunPicture.Of(run.Parts, words, plan, largest) is { } picture)
            flow.Draw(picture);
        flow.Space(2);
        flow.Text(string.Join("; ", run.Parts.Select((part, i) => $"{i + 1}: {words.Named(part)}")));
        foreach (var joint in joints)
            flow.Text($"{Number(joint.Before)} to {Number(joint.After)}: {joint.Say(words.Near)}.");

        int Number(string part) => run.Parts.Index().First(p => p.Item == part).Index + 1;
    }

    private static void DrawMatches(PageFlow flow, Workbook book, JobWords words)
    {
        flow.Head("Match groups");
        flow.Text(
            "The sizes of a group come out the same because they are cut at one setting, without moving the fence."
        );
        flow.Space(2);
        Matches.Draw(
            flow,
            MatchWords
                .Together(book.PartList.Matches, words)
                .Select(match =>
                    (string[])
                        [
                            match.Letters,
                            words.Size(match.Groups[0].Size),
                            match.Because + (match.Groups[0].ByHand ? " (the maker's own)" : ""),
                            SettingOf(match.Groups, book),
                        ]
                )
        );
    }

    private static string SettingOf(IReadOnlyList<MatchGroup> matches, Workbook book) =>
        string.Join(
            ", ",
            (book.Plan?.Visits ?? []).Where(v => matches.Any(m => v.Matches.Contains(m.Id))).Select(v => $"{v.Number}")
        );
}

using System.Globalization;
using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Flow;

namespace Nookwright.Paper;

/// <summary>The cutting plan in short: how good it is, what else could be chosen, how to work through it, and every setting in a line.</summary>
internal static class PlanPages
{
    private static readonly string[] Ways =
    [
        "Lift a sheet when the list below first names it, and break it down wholly before you lift the next; dress an edge when its page says so, while the piece is still large.",
        "Put each piece on the stack of the setting that goes on with it, and write that number on it. Finished parts stack by letter.",
        "At each setting take its stack, cut all of it without moving the fence, and see that nothing of it is left.",
        "Offcuts worth keeping go to the rack with their names on; scrap goes to the bin at once, so that what lies about is needed.",
    ];

    private static readonly Table Choices = new([
        new("", 14, Bold: true),
        new("Visits", 12, Anchor.End),
        new("Sheets", 12, Anchor.End),
        new("Price", 18, Anchor.End),
        new("Large cuts", 18, Anchor.End),
        new("One step on", 100),
    ]);

    private static readonly Table Settings = new([
        new("Setting", 13, Anchor.End, Bold: true),
        new("Distance", 26, Anchor.End),
        new("Saw", 36),
        new("Cuts", 10, Anchor.End),
        new("Sheets to lift", 22),
        new("Done then", 62),
        new("Waiting then", 20, Anchor.End),
    ]);

    /// <summary>The pages; none when there is no plan.</summary>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper)
    {
        if (book.Plan is not { } plan)
            return [];
        var flow = new PageFlow(paper, "Cutting plan", "Cutting plan");
        flow.Text(Counts(plan), bold: true);
        flow.Text(Loose(words.Loose));
        foreach (var price in plan.Findings.Where(f => f.Rule == "cutting.box-by-box"))
            flow.Text(price.Message);
        if (plan.Proof is { } proof)
            flow.Text(proof.Say(words.Material));
        if (book.Front is { } front && !book.CutRequest.Rules.BoxByBox)
            DrawChoices(flow, front, plan);
        flow.Head("How to work through it");
        foreach (var way in Ways)
            flow.Item("•", way, TypeSize.Table, indent: 5);
        if (plan.Visits.Count > 0)
            DrawSettings(flow, book, plan, words);
        return flow.Pages;
    }

    private static string Counts(Plan plan) =>
        $"{JobWords.Count(plan.Sheets.Count, "sheet")}, {JobWords.Count(plan.Breakdown.Count, "track-saw cut")} to break them down, "
        + $"then {JobWords.Count(plan.Visits.Count, "setting")} with {JobWords.Count(plan.Visits.Sum(v => v.Cuts.Count), "cut")}.";

    private static string Loose(LoosePieces loose) =>
        loose.Most == 0
            ? "No piece ever waits for a later setting."
            : $"At most {JobWords.Count(loose.Most, "piece waits", "pieces wait")} for a later setting at one time: "
                + $"after setting {loose.MostAfter}.";

    private static void DrawChoices(PageFlow flow, PlanFront front, Plan plan)
    {
        flow.Head("What could be chosen");
        flow.Text(front.Sentence);
        if (front.IsNothingToTrade)
            return;
        flow.Space(1);
        Choices.Draw(flow, front.Plans.Select(p => Choice(p, p.Plan == plan)));
    }

    private static string[] Choice(FrontPlan choice, bool isThis) =>
        [
            isThis ? "this" : "",
            $"{choice.Visits}",
            $"{choice.Sheets}",
            choice.Price?.ToString("0.00", CultureInfo.InvariantCulture) ?? "",
            $"{choice.Handling}",
            choice.Next ?? "",
        ];

    private static void DrawSettings(PageFlow flow, Workbook book, Plan plan, JobWords words)
    {
        flow.Head("The settings in order", keep: 30);
        Settings.Draw(flow, plan.Visits.Select(visit => Setting(visit, new(book, words, visit), words)));
    }

    private static string[] Setting(Visit visit, VisitWords says, JobWords words) =>
        [
            $"{visit.Number}",
            words.Size(visit.Setting),
            says.Saw,
            $"{visit.Cuts.Count}",
            Lifted(visit, words),
            says.Done,
            $"{words.Loose.After(visit.Number).Count}",
        ];

    private static string Lifted(Visit visit, JobWords words) =>
        string.Join(
            ", ",
            words
                .Loose.Lifts.Where(l => l.Value == visit.Number)
                .Select(l => l.Key)
                .Order()
                .Select(sheet => $"S{sheet}")
        );
}

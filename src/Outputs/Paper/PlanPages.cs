using System.Globalization;
using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Flow;

namespace Nookwright.Paper;

/// <summary>The cutting plan in short: how good it is, what else could be chosen, how to work through it, and every setting in a line.</summary>
internal static class PlanPages
{
    private const string Names =
        "How pieces are named: S2 is a sheet, S2-C1 a piece of it from the breakdown. At the table saw, S2-C1-3 is the third "
        + "piece cut off S2-C1, and S2-C1/3 what is left of it then. A finished part is known by its letter. A piece waits on the "
        + "stack of the setting that goes on with it: stack 7 is for setting 7.";

    private static readonly string[] Ways =
    [
        "Lift a sheet when the list below first names it, and break it down wholly before you lift the next; dress an edge when its page says so, while the piece is still large.",
        "Put each piece on the stack of the setting that goes on with it, and write that number on it. Finished parts stack by letter.",
        "At each setting take its stack, cut all of it without moving the fence, and see that nothing of it is left. The arrow under a card's picture is the one on the piece, as it lies there.",
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

    private static readonly Table Offcuts = new([
        new("Write", 12, Bold: true),
        new("Size, figure along the first", 50),
        new("Material", 70),
        new("Comes about as", 40),
    ]);

    private static readonly Table Settings = new([
        new("Setting", 15, Anchor.End, Bold: true),
        new("Distance", 22, Anchor.End),
        new("Saw", 42),
        new("Cuts", 10, Anchor.End),
        new("Lift", 18),
        new("Done then", 58),
        new("Waiting", 16, Anchor.End),
    ]);

    /// <summary>The pages; none when there is no plan.</summary>
    /// <param name="book">The job, its plan that of one round.</param>
    /// <param name="words">The job's words.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="section">What these pages are called among the packet's.</param>
    public static IReadOnlyList<PaperPage> Of(Workbook book, JobWords words, PaperFormat paper, string section)
    {
        if (book.Plan is not { } plan)
            return [];
        var flow = new PageFlow(paper, section, section);
        flow.Text(Counts(plan), bold: true);
        flow.Text(Loose(words.Loose));
        foreach (var price in plan.Findings.Where(f => f.Rule == "cutting.box-by-box"))
            flow.Text(price.Message);
        if (plan.Proof is { } proof)
            flow.Text(proof.Say(words.Material));
        if (book.Front is { } front)
            DrawChoices(flow, front, plan, words);
        if (plan.Sheets.Count > 0)
            DrawWays(flow);
        DrawLeftBefore(flow, plan, words);
        if (plan.Visits.Count > 0)
            DrawSettings(flow, book, plan, words);
        DrawOffcuts(flow, plan, words);
        return flow.Pages;
    }

    // Whoever cuts what was left has done it before.
    private static void DrawWays(PageFlow flow)
    {
        flow.Head("How to work through it");
        foreach (var way in Ways)
            flow.Item("•", way, TypeSize.Table, indent: 5);
        flow.Text(Names, TypeSize.Table);
    }

    private static void DrawLeftBefore(PageFlow flow, Plan plan, JobWords words)
    {
        var left = LeftBefore.Of(plan);
        if (left.Count == 0)
            return;
        flow.Head("What was set aside before, and its track-saw cuts in order", keep: 24);
        flow.Text("Left, right, top and bottom are as the name written on the piece reads.", TypeSize.Table);
        flow.Space(1.5);
        foreach (var (piece, cuts) in left)
        {
            flow.Need(12);
            flow.Text($"{words.LeftAs(piece)}: {words.MaterialOf(words.Workpiece(piece))}", bold: true);
            flow.Space(0.8);
            BreakdownOrders.Of(cuts, words).DrawItems(flow);
        }
    }

    private static string Counts(Plan plan)
    {
        var rough = JobWords.Count(plan.Breakdown.Count, "track-saw cut");
        var fine =
            $"then {JobWords.Count(plan.Visits.Count, "setting")} with {JobWords.Count(plan.Visits.Sum(v => v.Cuts.Count), "cut")}.";
        return plan.Sheets.Count > 0
            ? $"{JobWords.Count(plan.Sheets.Count, "sheet")}, {rough} to break them down, {fine}"
            : $"No sheet: from what was left before. {rough} to prepare it, {fine}";
    }

    private static string Loose(LoosePieces loose) =>
        loose.Most == 0
            ? "No piece ever waits for a later setting."
            : $"At most {JobWords.Count(loose.Most, "piece waits", "pieces wait")} for a later setting at one time: "
                + $"after setting {loose.MostAfter}.";

    private static void DrawChoices(PageFlow flow, PlanFront front, Plan plan, JobWords words)
    {
        flow.Head("What could be chosen");
        flow.Text(front.Say(words.Material));
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

    private static void DrawOffcuts(PageFlow flow, Plan plan, JobWords words)
    {
        var kept = OffcutsOf(plan, words).ToList();
        if (kept.Count == 0)
            return;
        flow.Head("What is left for the rack", keep: 24);
        Offcuts.Draw(flow, kept.Select(o => (string[])[words.Mark(o.Id), words.Sides(o), words.MaterialOf(o), o.Id]));
    }

    // Of a round, those that its own cuts leave.
    private static IEnumerable<Workpiece> OffcutsOf(Plan plan, JobWords words)
    {
        var cut = plan.Cuts.Select(c => c.On).ToHashSet();
        return from made in plan.Cuts.SelectMany(c => new[] { c.Gives, c.Leaves }).OfType<string>()
            where !cut.Contains(made)
            let piece = words.Workpiece(made)
            where piece.Use == WorkpieceUse.Offcut
            orderby piece.Sheet, words.Mark(made).Length, words.Mark(made)
            select piece;
    }

    private static string[] Setting(Visit visit, VisitWords says, JobWords words) =>
        [
            $"{visit.Number}",
            words.Size(visit.Setting),
            says.Saw,
            $"{visit.Cuts.Count}",
            string.Join(", ", words.LiftedFor(visit.Number)),
            says.Done,
            $"{words.Loose.After(visit.Number).Count}",
        ];
}

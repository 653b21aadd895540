using System.CommandLine;
using Nookwright.Cutting;
using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Paper;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright issue FILE</c>: the maker cuts from this plan now, so that it never moves again.</summary>
public static class IssueCommand
{
    private static readonly Option<bool> Withdraw = new("--withdraw")
    {
        Description = "Take the latest issued round back: it may change again.",
    };

    /// <summary>The command.</summary>
    public static Command Make(Terminal console) =>
        AskedOfJob.Command(
            console,
            "issue",
            "Issues the cutting plan: what is cut from it never moves, whatever is edited or read later.",
            [Withdraw, JobArgument.Json],
            asked => asked.Options.GetValue(Withdraw) ? TakeBack(console, asked) : Issue(console, asked)
        );

    private static int Issue(Terminal console, AskedOfJob asked)
    {
        var planned = asked.Workbook.WithPlan();
        JobArgument.SayTrouble(console, asked.Job, asked.Path, planned);
        if (planned.Findings.Any(f => f.IsUnreadable))
            return (int)Exit.BadInput;
        var saved = Saved(console, asked, planned.Issue(DateOnly.FromDateTime(DateTime.Now)));
        if (saved is null)
            return (int)Exit.BadInput;
        Tell(console, asked, planned, saved.Issued[^1]);
        return JobArgument.ExitOf(planned);
    }

    private static int TakeBack(Terminal console, AskedOfJob asked)
    {
        if (Saved(console, asked, asked.Workbook.Project.WithdrawRound()) is not { } saved)
            return (int)Exit.BadInput;
        var round = saved.Issued.Count + 1;
        console.Output.WriteLine(
            asked.WantsJson
                ? JsonAnswer.Write(new { withdrawn = round })
                : $"Round {round} is withdrawn: it may change again."
        );
        return (int)Exit.Done;
    }

    private static Project? Saved(Terminal console, AskedOfJob asked, Outcome<Project> edited)
    {
        if (!edited.Take(out var project, out var refusal))
            console.Refuse($"{asked.Path}: {refusal.Message}");
        else if (JobFile.Save(project, asked.Path) is { } unsaved)
            console.Refuse([unsaved]);
        else
            return project;
        return null;
    }

    private static void Tell(Terminal console, AskedOfJob asked, Workbook planned, IssuedRound issued)
    {
        var plan = planned.Plan!;
        var added = plan.Rounds.Count > 0 ? plan.Rounds[^1].Plan : plan;
        var waiting = plan.Workpieces.Count(p => p.Use == WorkpieceUse.Held);
        console.Output.WriteLine(
            asked.WantsJson
                ? JsonAnswer.Write(
                    new
                    {
                        round = issued.Round,
                        date = issued.Date,
                        sheets = added.Sheets.Count,
                        visits = added.Visits.Count,
                        waiting,
                    }
                )
                : $"Round {issued.Round} is issued: {JobWords.Count(added.Sheets.Count, "sheet")}, "
                    + $"{JobWords.Count(added.Visits.Count, "visit")}, {JobWords.Count(waiting, "blank")} kept for readings. "
                    + "It does not move any more."
        );
    }
}

using System.CommandLine;
using Nookwright.Cutting;
using Nookwright.Flow;
using Nookwright.Lists;
using Nookwright.Planning;
using Nookwright.Trouble;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright cut</c>: the cutting plan of a job, or of a bare list of parts and stock.</summary>
public static class CutCommand
{
    private static readonly Option<bool> SheetsFirst = new("--sheets-first")
    {
        Description = "Plan for the fewest sheets instead: more visits, and parts that match may be cut at several.",
    };

    private static readonly Option<bool> BoxByBox = new("--box-by-box")
    {
        Description =
            "Finish one piece's parts before the next: fewer loose pieces about, more visits; the price is told.",
    };

    private static readonly Option<bool> Front = new("--front")
    {
        Description = "Show what more visits would buy, instead of one plan.",
    };

    private static readonly Option<int?> ExtraVisits = new("--extra-visits")
    {
        Description =
            "How many visits beyond the fewest are accepted for less wood; what the job says without it, or none.",
        HelpName = "N",
    };

    /// <summary>The command.</summary>
    public static Command Make(Terminal console)
    {
        var job = new Argument<string?>("FILE")
        {
            Description = "The job, NAME.nook.json; or leave it out and give --parts and --stock.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var list = new ListOptions();
        var command = new Command("cut", "Plans the cutting: sheets, breakdown, and one visit after the other.")
        {
            job,
        };
        foreach (
            var option in (Option[])
                [.. list.All, SheetsFirst, BoxByBox, Front, ExtraVisits, JobArgument.Json, JobArgument.Out]
        )
            command.Add(option);
        command.Validators.Add(result =>
        {
            if (result.GetValue(ExtraVisits) < 0)
                result.AddError("--extra-visits is a number of visits: 0 or more.");
            if (result.GetValue(SheetsFirst) && (result.GetValue(Front) || result.GetValue(ExtraVisits) is not null))
                result.AddError(
                    "--sheets-first is one end of the front: leave it out, or leave out --front and --extra-visits."
                );
        });
        command.Validators.Add(result =>
        {
            if (result.GetValue(BoxByBox) && result.GetValue(SheetsFirst))
                result.AddError("--box-by-box and --sheets-first each say what comes first: leave out one of them.");
        });
        command.SetAction(parsed =>
            (parsed.GetValue(job), list.IsGiven(parsed)) switch
            {
                ({ } path, false) => OfJob(console, path, parsed),
                (null, true) => OfList(console, list, parsed),
                ({ }, true) => console.Refuse("nookwright: Name a job, or give --parts and --stock; not both."),
                _ => console.Refuse("nookwright: Name a job, or give --parts FILE and --stock FILE."),
            }
        );
        return command;
    }

    private static int OfJob(Terminal console, string path, ParseResult parsed) =>
        JobArgument.With(
            console,
            path,
            (opened, workbook) =>
            {
                var asked = workbook with { CutRequest = Ruled(workbook.CutRequest, parsed) };
                if (asked.FewestVisits() is not { } first)
                {
                    JobArgument.SayTrouble(console, opened, path, asked);
                    return JobArgument.ExitOf(asked);
                }
                var (plan, front) = Planned(
                    first,
                    plan => asked.FrontFrom(plan),
                    parsed,
                    workbook.Project.Cutting.ExtraVisits
                );
                var planned = asked.WithThisPlan(plan);
                JobArgument.SayTrouble(console, opened, path, planned);
                Answer(console, parsed, planned, front);
                return JobArgument.ExitOf(planned);
            }
        );

    private static int OfList(Terminal console, ListOptions list, ParseResult parsed)
    {
        if (!list.Read(parsed).Take(out var asked, out var refusal))
            return console.Refuse([refusal]);
        var request = Ruled(asked.Request, parsed);
        var (plan, front) = Planned(Planner.Plan(request), first => Planner.Front(request, first), parsed, 0);
        foreach (var finding in plan.Findings.Where(f => f.Severity == Severity.MustMend))
            console.Errors.WriteLine(asked.Say(finding));
        var book = asked.Book(plan, request);
        Answer(console, parsed, book, front);
        if (parsed.GetValue(JobArgument.Out) is { } folder)
            OutFolder.Write(
                console,
                folder,
                "packet.pdf",
                stream => AskedOfLists.WritePacket(book, DateOnly.FromDateTime(DateTime.Now), stream)
            );
        return (int)(plan.Findings.Any(f => f.Severity == Severity.MustMend) ? Exit.MustMend : Exit.Done);
    }

    private static CutRequest Ruled(CutRequest request, ParseResult parsed) =>
        request with
        {
            Rules = request.Rules with
            {
                VisitsFirst = request.Rules.VisitsFirst && !parsed.GetValue(SheetsFirst),
                BoxByBox = request.Rules.BoxByBox || parsed.GetValue(BoxByBox),
            },
        };

    /// <summary>The plan, and the front it was chosen from where one was asked for.</summary>
    private static (Plan Plan, (PlanFront Plans, int ExtraVisits)? Front) Planned(
        Plan first,
        Func<Plan, PlanFront> frontFrom,
        ParseResult parsed,
        int wished
    )
    {
        var extraVisits = parsed.GetValue(ExtraVisits) ?? wished;
        if (parsed.GetValue(SheetsFirst) || (extraVisits == 0 && !parsed.GetValue(Front)))
            return (first, null);
        var front = frontFrom(first);
        return (front.Chosen(extraVisits).Plan, (front, extraVisits));
    }

    private static void Answer(
        Terminal console,
        ParseResult parsed,
        Workbook book,
        (PlanFront Plans, int ExtraVisits)? front
    )
    {
        var text = string.Join(Environment.NewLine, new PlanText(book).Lines());
        Write(
            console,
            parsed,
            "plan",
            text,
            () => PlanJson.Write(book.Plan!, book.CutRequest),
            !parsed.GetValue(Front)
        );
        if (!parsed.GetValue(Front) || front is not var (plans, extraVisits))
            return;
        var table = string.Join(Environment.NewLine, new FrontTable(plans, extraVisits, book.Lengths).Lines());
        Write(console, parsed, "front", table, () => FrontJson.Write(plans, extraVisits), true);
    }

    private static void Write(
        Terminal console,
        ParseResult parsed,
        string name,
        string text,
        Func<string> json,
        bool isAnswer
    )
    {
        if (parsed.GetValue(JobArgument.Out) is { } folder)
        {
            OutFolder.WriteOrSay(console, folder, $"{name}.json", json().TrimEnd());
            OutFolder.WriteOrSay(console, folder, $"{name}.txt", text);
        }
        else if (isAnswer)
            console.Output.WriteLine(parsed.GetValue(JobArgument.Json) ? json().TrimEnd() : text);
    }
}

using System.CommandLine;
using Nookwright.Cutting;
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
        foreach (var option in (Option[])[.. list.All, SheetsFirst, JobArgument.Json, JobArgument.Out])
            command.Add(option);
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
                var planned = (workbook with { CutRequest = Ruled(workbook.CutRequest, parsed) }).WithPlan();
                JobArgument.SayTrouble(console, opened, path, planned);
                Answer(console, parsed, planned.Plan!, planned.CutRequest);
                return JobArgument.ExitOf(planned);
            }
        );

    private static int OfList(Terminal console, ListOptions list, ParseResult parsed)
    {
        if (!list.Request(parsed).Take(out var request, out var refusal))
            return console.Refuse([refusal]);
        request = Ruled(request, parsed);
        var plan = Planner.Plan(request);
        foreach (var finding in plan.Findings.Where(f => f.Severity == Severity.MustMend))
            console.Errors.WriteLine($"{JobArgument.Word(finding.Severity)}: {finding.Message} [{finding.Rule}]");
        Answer(console, parsed, plan, request);
        return (int)(plan.Findings.Any(f => f.Severity == Severity.MustMend) ? Exit.MustMend : Exit.Done);
    }

    private static CutRequest Ruled(CutRequest request, ParseResult parsed) =>
        parsed.GetValue(SheetsFirst)
            ? request with
            {
                Matches = [],
                Rules = request.Rules with { VisitsFirst = false },
            }
            : request;

    private static void Answer(Terminal console, ParseResult parsed, Plan plan, CutRequest request)
    {
        var text = string.Join(Environment.NewLine, new PlanText(plan, request).Lines());
        var json = PlanJson.Write(plan, request).TrimEnd();
        if (parsed.GetValue(JobArgument.Out) is { } folder)
        {
            OutFolder.WriteOrSay(console, folder, "plan.json", json);
            OutFolder.WriteOrSay(console, folder, "plan.txt", text);
        }
        else
            console.Output.WriteLine(parsed.GetValue(JobArgument.Json) ? json : text);
    }
}

using System.CommandLine;
using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Paper;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright check FILE</c>: works the whole job through and says what was found.</summary>
public static class CheckCommand
{
    /// <summary>The command.</summary>
    public static Command Make(Terminal console) =>
        AskedOfJob.Command(
            console,
            "check",
            "Works the job through and says what must be mended or decided.",
            [JobArgument.Json],
            asked =>
            {
                var planned = asked.Workbook.WithPlan();
                if (asked.WantsJson)
                    console.Output.WriteLine(JsonAnswer.Write(Answer(planned)));
                else
                    Tell(console, asked.Path, asked.Job, planned);
                return JobArgument.ExitOf(planned);
            }
        );

    private static object Answer(Workbook workbook) =>
        new
        {
            job = workbook.Project.Name,
            mustMend = workbook.MustMend,
            parts = workbook.PartList.Parts.Count,
            held = workbook.PartList.Parts.Count(p => p.IsHeld),
            sheets = workbook.Plan?.Sheets.Count,
            visits = workbook.Plan?.Visits.Count,
            findings = workbook.Findings.Select(JsonAnswer.Of),
        };

    private static void Tell(Terminal console, string path, OpenedJob job, Workbook workbook)
    {
        var held = workbook.PartList.Parts.Count(p => p.IsHeld);
        var output = console.Output;
        output.WriteLine(workbook.Project.Name);
        output.WriteLine(
            $"{JobWords.Count(workbook.BuiltIn.Pieces.Count, "piece")}, {JobWords.Count(workbook.PartList.Parts.Count, "part")}, {held} of them held until a reading is taken."
        );
        if (workbook.Plan is { } plan)
            output.WriteLine(
                $"{JobWords.Count(plan.Sheets.Count, "sheet")}, {JobWords.Count(plan.Visits.Count, "visit")} for {JobWords.Count(plan.DimensionsNow, "distinct dimension")}."
            );
        foreach (var finding in workbook.Findings.OrderByDescending(f => f.Severity))
            (finding.IsUnreadable ? console.Errors : output).WriteLine(JobArgument.Say(job, path, finding));
        output.WriteLine(
            workbook.MustMend ? "Something must be mended before this can be built." : "Nothing must be mended."
        );
    }
}

using System.CommandLine;
using Nookwright.Cutting;
using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Measure;
using Nookwright.Paper;
using Nookwright.Projects;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright offcuts FILE</c>: what is left over and worth keeping, and its way onto another job's rack.</summary>
public static class OffcutsCommand
{
    private static readonly Option<string?> Into = new("--into")
    {
        Description = "Put them among the offcuts of this other job; those that are there already are left alone.",
        HelpName = "OTHER.nook.json",
    };

    /// <summary>The command.</summary>
    public static Command Make(Terminal console) =>
        AskedOfJob.Command(
            console,
            "offcuts",
            "Lists the offcuts worth keeping, with what to write on them.",
            [Into, JobArgument.Json],
            asked =>
            {
                var planned = asked.Workbook.WithPlan();
                JobArgument.SayTrouble(console, asked.Job, asked.Path, planned);
                var offcuts = planned.Plan is { } plan ? KeptOffcut.Of(plan) : [];
                if (asked.Options.GetValue(Into) is { } other && Carry(console, asked, planned, other) is { } stopped)
                    return stopped;
                Tell(console, asked, offcuts, planned.Project.Units);
                return JobArgument.ExitOf(planned);
            }
        );

    private static void Tell(Terminal console, AskedOfJob asked, IReadOnlyList<KeptOffcut> offcuts, LengthUnit unit)
    {
        if (asked.WantsJson)
        {
            console.Output.WriteLine(
                JsonAnswer.Write(
                    offcuts.Select(o => new
                    {
                        o.Mark,
                        o.Workpiece,
                        o.Sheet,
                        o.Material,
                        length = JsonAnswer.Of(o.Length, unit),
                        width = JsonAnswer.Of(o.Width, unit),
                    })
                )
            );
            return;
        }
        var lengths = LengthFormat.Of(unit);
        var table = new TextTable("write on it", "material", "along the figure>", "across>", "sheet>");
        foreach (var o in offcuts)
            table.Row(o.Mark, o.Material, lengths.PrintInFull(o.Length), lengths.PrintInFull(o.Width), $"{o.Sheet}");
        if (offcuts.Count == 0)
            console.Output.WriteLine("No offcut of this plan is worth keeping.");
        else
            foreach (var line in table.Lines())
                console.Output.WriteLine(line);
    }

    /// <summary>Adds to the other job what the issued rounds leave; the exit code when that cannot be.</summary>
    private static int? Carry(Terminal console, AskedOfJob asked, Workbook planned, string other)
    {
        if (planned.Plan is null || planned.Issued is null)
            return console.Refuse(
                $"{asked.Path}: These offcuts are there once the plan is cut: issue it first, with \"nookwright issue\"."
            );
        if (!JobFile.Read(other).Take(out var into, out var refusal))
            return console.Refuse([refusal]);
        var name = Path.GetFileName(asked.Path).Replace(".nook.json", "", StringComparison.Ordinal);
        var left = OffcutsToRack.Of(planned);
        if (!OffcutsToRack.Rack(left, planned.Project, name, into).Take(out var racked, out var refused))
            return console.Refuse($"{other}: {refused.Message}");
        if (JobFile.Save(racked, other) is { } unsaved)
            return console.Refuse([unsaved]);
        var added = Count(racked) - Count(into);
        if (!asked.WantsJson)
            console.Output.WriteLine($"{JobWords.Count(added, "offcut")} put on the rack of {other}.");
        return null;
    }

    private static int Count(Project project) => project.Shop.Sheets.Sum(s => s.Stock.Count);
}

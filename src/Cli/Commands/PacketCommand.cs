using System.CommandLine;
using Nookwright.Files;
using Nookwright.Paper;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright packet FILE</c>: everything to print for the job, as one PDF.</summary>
public static class PacketCommand
{
    /// <summary>The command.</summary>
    public static Command Make(Terminal console)
    {
        var command = new Command("packet", "Writes everything to print for the job as one PDF.")
        {
            JobArgument.File,
            JobArgument.Json,
            JobArgument.Out,
        };
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(JobArgument.File);
            return JobArgument.With(
                console,
                path,
                (job, workbook) =>
                {
                    var planned = workbook.WithPlan();
                    JobArgument.SayTrouble(console, job, path, planned);
                    var edition = PacketEdition.Of(Today(), JobText.Write(workbook.Project));
                    var folder = parsed.GetValue(JobArgument.Out) ?? ".";
                    var name = Path.GetFileName(path).Replace(".nook.json", "", StringComparison.Ordinal) + ".pdf";
                    var quiet = parsed.GetValue(JobArgument.Json) ? console with { Output = TextWriter.Null } : console;
                    OutFolder.Write(
                        quiet,
                        folder,
                        name,
                        stream => Packet.Write(planned, planned.Project.Paper, edition, stream)
                    );
                    if (parsed.GetValue(JobArgument.Json))
                        console.Output.WriteLine(JsonAnswer.Write(new { packet = Path.Combine(folder, name) }));
                    return JobArgument.ExitOf(planned);
                }
            );
        });
        return command;
    }

    private static DateOnly Today() => DateOnly.FromDateTime(DateTime.Now);
}

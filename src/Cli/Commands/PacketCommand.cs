using System.CommandLine;
using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Paper;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright packet FILE</c>: everything to print for the job, as one PDF.</summary>
public static class PacketCommand
{
    /// <summary>The command.</summary>
    public static Command Make(Terminal console) =>
        AskedOfJob.Command(
            console,
            "packet",
            "Writes everything to print for the job as one PDF.",
            [JobArgument.Json, JobArgument.Out],
            asked =>
            {
                var planned = asked.Workbook.WithPlan().WithFront();
                JobArgument.SayTrouble(console, asked.Job, asked.Path, planned);
                Write(asked.WantsJson ? console with { Output = TextWriter.Null } : console, asked, planned);
                if (asked.WantsJson)
                    console.Output.WriteLine(
                        JsonAnswer.Write(new { packet = Path.Combine(Folder(asked), Name(asked)) })
                    );
                return JobArgument.ExitOf(planned);
            }
        );

    private static void Write(Terminal console, AskedOfJob asked, Workbook planned)
    {
        var edition = PacketEdition.Of(Today(), JobText.Write(planned.Project));
        void Print(Stream stream) => Packet.Write(planned, planned.Project.Paper, edition, stream);
        OutFolder.Write(console, Folder(asked), Name(asked), Print);
    }

    private static string Folder(AskedOfJob asked) => asked.Folder ?? ".";

    private static string Name(AskedOfJob asked) =>
        Path.GetFileName(asked.Path).Replace(".nook.json", "", StringComparison.Ordinal) + ".pdf";

    private static DateOnly Today() => DateOnly.FromDateTime(DateTime.Now);
}

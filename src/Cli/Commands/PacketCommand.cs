using System.CommandLine;
using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Paper;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright packet FILE</c>: everything to print for the job, as one PDF.</summary>
public static class PacketCommand
{
    private static readonly Option<int?> Round = new("--round")
    {
        Description = "Only what is needed to cut that round, for whoever has the packet of the rounds before.",
        HelpName = "N",
    };

    /// <summary>The command.</summary>
    public static Command Make(Terminal console) =>
        AskedOfJob.Command(
            console,
            "packet",
            "Writes everything to print for the job as one PDF.",
            [Round, JobArgument.Json, JobArgument.Out],
            asked =>
            {
                var planned = asked.Workbook.WithPlan().WithFront();
                if (asked.Options.GetValue(Round) is { } round && (round < 1 || round > planned.ByRound.Count))
                    return console.Refuse($"{asked.Path}: {NoSuchRound(round, planned.ByRound.Count)}");
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
        void Print(Stream stream) =>
            Packet.Write(planned, planned.Project.Paper, edition, stream, asked.Options.GetValue(Round));
        OutFolder.Write(console, Folder(asked), Name(asked), Print);
    }

    private static string Folder(AskedOfJob asked) => asked.Folder ?? ".";

    private static string Name(AskedOfJob asked) =>
        Path.GetFileName(asked.Path).Replace(".nook.json", "", StringComparison.Ordinal)
        + (asked.Options.GetValue(Round) is { } round ? $"-round-{round}" : "")
        + ".pdf";

    private static string NoSuchRound(int round, int rounds) =>
        rounds switch
        {
            0 => "There is nothing to cut yet, and so no round: leave out --round.",
            1 =>
                $"There is no round {round}, only round 1: a later one comes when a round is issued and a reading is entered.",
            _ => $"There is no round {round}: rounds 1 to {rounds} are there.",
        };

    private static DateOnly Today() => DateOnly.FromDateTime(DateTime.Now);
}

using System.CommandLine;
using Nookwright.Files;
using Nookwright.Flow;

namespace Nookwright.Cli;

/// <summary>What somebody asked of one job.</summary>
/// <param name="Path">The job's file as typed.</param>
/// <param name="Job">The job as opened, with the lines of its fields.</param>
/// <param name="Workbook">What follows from it, without a plan.</param>
/// <param name="Options">The options as typed.</param>
public sealed record AskedOfJob(string Path, OpenedJob Job, Workbook Workbook, ParseResult Options)
{
    /// <summary>True with <c>--json</c>.</summary>
    public bool WantsJson => Options.GetValue(JobArgument.Json);

    /// <summary>The folder of <c>--out</c>, or null.</summary>
    public string? Folder => Options.GetValue(JobArgument.Out);

    /// <summary>A command that opens its job and answers, or says why the job cannot be opened.</summary>
    /// <param name="console">Where trouble goes.</param>
    /// <param name="name">As typed.</param>
    /// <param name="description">For the help.</param>
    /// <param name="options">What it takes beside the job.</param>
    /// <param name="answer">Gives the exit code.</param>
    public static Command Command(
        Terminal console,
        string name,
        string description,
        IReadOnlyList<Option> options,
        Func<AskedOfJob, int> answer
    )
    {
        var command = new Command(name, description) { JobArgument.File };
        foreach (var option in options)
            command.Add(option);
        command.SetAction(parsed =>
        {
            var path = parsed.GetRequiredValue(JobArgument.File);
            return JobArgument.With(console, path, (job, workbook) => answer(new(path, job, workbook, parsed)));
        });
        return command;
    }
}

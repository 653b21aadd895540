using System.CommandLine;
using Nookwright.Files;
using Nookwright.Flow;
using Nookwright.Trouble;

namespace Nookwright.Cli;

/// <summary>The job file a command works on, and what comes of opening it.</summary>
public static class JobArgument
{
    /// <summary>The argument <c>FILE</c>.</summary>
    public static Argument<string> File { get; } = new("FILE") { Description = "The job, NAME.nook.json." };

    /// <summary>The option <c>--json</c>.</summary>
    public static Option<bool> Json { get; } = new("--json") { Description = "Answer in JSON, for machines." };

    /// <summary>The option <c>--out</c>.</summary>
    public static Option<string?> Out { get; } =
        new("--out") { Description = "Write files into this folder; it is made if there is none.", HelpName = "DIR" };

    /// <summary>Opens the job and answers with its workbook, or says on standard error everything that stands in the way.</summary>
    /// <param name="console">Where trouble goes.</param>
    /// <param name="path">The job's file.</param>
    /// <param name="answer">What to do with the job; gives the exit code.</param>
    public static int With(Terminal console, string path, Func<OpenedJob, Workbook, int> answer)
    {
        var job = JobFile.Open(path);
        return job.Project is null ? console.Refuse(job.Refusals) : answer(job, Workbook.Of(job.Project));
    }

    /// <summary>The exit code for a workbook: whether something could not be taken as written, or must be mended.</summary>
    public static int ExitOf(Workbook workbook)
    {
        if (workbook.Findings.Any(f => f.IsUnreadable))
            return (int)Exit.BadInput;
        return (int)(workbook.MustMend ? Exit.MustMend : Exit.Done);
    }

    /// <summary>Says on standard error what keeps the job from being built; answers come without it.</summary>
    public static void SayTrouble(Terminal console, OpenedJob job, string path, Workbook workbook)
    {
        foreach (var finding in workbook.Findings.Where(f => f.Severity == Severity.MustMend))
            console.Errors.WriteLine(Say(job, path, finding));
    }

    /// <summary>A finding for standard error or a list: file, line, sentence.</summary>
    public static string Say(OpenedJob job, string path, Finding finding)
    {
        var place = finding.Field is { } field ? $"{path}:{job.Lines.LineOf(field)}" : path;
        return $"{place}: {Word(finding.Severity)}: {finding.Message} [{finding.Rule}]";
    }

    /// <summary>The word for a severity.</summary>
    public static string Word(Severity severity) =>
        severity switch
        {
            Severity.MustMend => "must be mended",
            Severity.Warning => "to decide",
            _ => "note",
        };
}

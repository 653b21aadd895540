using System.CommandLine;
using Nookwright.Cli.Commands;

namespace Nookwright.Cli;

/// <summary>The program <c>nookwright</c>: answers on standard output, trouble on standard error, the outcome in the exit code.</summary>
public static class CommandLine
{
    /// <summary>Runs one command.</summary>
    /// <param name="arguments">As typed.</param>
    /// <param name="output">Where answers go.</param>
    /// <param name="errors">Where trouble goes.</param>
    /// <returns>0 done, 1 the job has findings that must be mended, 2 bad input, 3 our own fault.</returns>
    public static int Run(IReadOnlyList<string> arguments, TextWriter output, TextWriter errors)
    {
        var console = new Terminal(output, errors);
        var parsed = Root(console).Parse(arguments);
        if (parsed.Errors.Count > 0)
            return console.Refuse([
                .. parsed.Errors.Select(e => $"nookwright: {e.Message} See \"nookwright --help\"."),
            ]);
        try
        {
            return parsed.Invoke(
                new()
                {
                    Output = output,
                    Error = errors,
                    EnableDefaultExceptionHandler = false,
                }
            );
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return console.Refuse($"nookwright: {fault.Message} Choose another place with --out, or free this one.");
        }
        catch (Exception fault)
        {
            errors.WriteLine($"nookwright: our own fault, not yours: {fault.Message}");
            errors.WriteLine("Nothing was changed. Please report it with the job file and this:");
            errors.WriteLine(fault.StackTrace);
            return (int)Exit.OurFault;
        }
    }

    private static RootCommand Root(Terminal console) =>
        new("Carries one plywood built-in from the first tape reading to the last cut.")
        {
            NewCommand.Make(console),
            CheckCommand.Make(console),
            PartsCommand.Make(console),
            CutCommand.Make(console),
            IssueCommand.Make(console),
            OffcutsCommand.Make(console),
            PacketCommand.Make(console),
            WhyCommand.Make(console),
        };
}

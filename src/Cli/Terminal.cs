using Nookwright.Trouble;

namespace Nookwright.Cli;

/// <summary>How the program ends, as its exit code.</summary>
public enum Exit
{
    /// <summary>Done.</summary>
    Done = 0,

    /// <summary>Done, but the job has findings that must be mended.</summary>
    MustMend = 1,

    /// <summary>A file or an argument could not be taken.</summary>
    BadInput = 2,

    /// <summary>The program's own mistake.</summary>
    OurFault = 3,
}

/// <summary>Where answers and trouble go.</summary>
/// <param name="Output">Standard output.</param>
/// <param name="Errors">Standard error.</param>
public sealed record Terminal(TextWriter Output, TextWriter Errors)
{
    /// <summary>Says why something could not be taken; the exit code for it.</summary>
    public int Refuse(params IReadOnlyList<string> sentences)
    {
        foreach (var sentence in sentences)
            Errors.WriteLine(sentence);
        return (int)Exit.BadInput;
    }

    /// <summary>Says why something could not be taken; the exit code for it.</summary>
    public int Refuse(IEnumerable<Refusal> refusals) => Refuse([.. refusals.Select(r => r.ToString())]);
}

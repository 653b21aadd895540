using System.Text.Json.Nodes;
using Nookwright.Cli;
using Nookwright.Tests.House;

namespace Nookwright.Tests.Cli;

/// <summary>What the command line answered.</summary>
/// <param name="Exit">The exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Errors">Standard error.</param>
public sealed record Asked(int Exit, string Output, string Errors)
{
    /// <summary>The answer as JSON.</summary>
    public JsonNode Json => JsonNode.Parse(Output)!;

    /// <summary>Asks the command line.</summary>
    public static Asked For(params IReadOnlyList<string> arguments)
    {
        using var output = new StringWriter();
        using var errors = new StringWriter();
        var exit = CommandLine.Run(arguments, output, errors);
        return new(exit, output.ToString(), errors.ToString());
    }

    /// <summary>A text without its line breaks, so that a sentence is found wherever it was broken.</summary>
    public static string InOneLine(string text) =>
        string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    /// <summary>A demo's path.</summary>
    public static string Demo(string name) => Checkout.File("demo", $"{name}.nook.json");
}

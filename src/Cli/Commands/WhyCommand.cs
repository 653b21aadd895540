using System.CommandLine;
using Nookwright.Flow;
using Nookwright.Measure;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright why FILE NAME</c>: where a number comes from, down to the reading or the rule.</summary>
public static class WhyCommand
{
    /// <summary>The command.</summary>
    public static Command Make(Terminal console)
    {
        var name = new Argument<string>("NAME")
        {
            Description = "The size: box-1.width, box-1.left-side.length, room.width, or a part's id.",
        };
        var command = new Command("why", "Tells where a size comes from, down to the reading or the rule.")
        {
            JobArgument.File,
            name,
            JobArgument.Json,
        };
        command.SetAction(parsed =>
        {
            var asked = parsed.GetRequiredValue(name);
            var path = parsed.GetRequiredValue(JobArgument.File);
            return JobArgument.With(
                console,
                path,
                (_, workbook) =>
                {
                    if (!workbook.Look(asked).Take(out var numbers, out var refusal))
                        return console.Refuse($"{path}: {refusal.Message}");
                    foreach (var number in numbers)
                        Tell(console, workbook, number, parsed.GetValue(JobArgument.Json));
                    return (int)Exit.Done;
                }
            );
        });
        return command;
    }

    private static void Tell(Terminal console, Workbook workbook, Traced number, bool json)
    {
        if (json)
            console.Output.WriteLine(JsonAnswer.Write(Answer(workbook, number)));
        else
            foreach (var line in WhyText.Tell(number, workbook.Lengths))
                console.Output.WriteLine(line);
    }

    private static object Answer(Workbook workbook, Traced number) =>
        new
        {
            number.Name,
            value = WhyText.Amount(number.Amount, workbook.Lengths),
            awaits = number.Awaits.Order(),
            story = WhyText.Tell(number, workbook.Lengths),
        };
}

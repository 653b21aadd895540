using System.CommandLine;

namespace Nookwright.Bench;

/// <summary>How a measurement is made.</summary>
/// <param name="Seconds">How long one plan is looked for at most.</param>
/// <param name="Every">1 to take every instance, n to take every n-th.</param>
/// <param name="AtOnce">How many plans are looked for at the same time.</param>
/// <param name="Data">The folder of public instances.</param>
/// <param name="Results">The file the figures are written to.</param>
/// <param name="Date">The day, as it is written beside the figures.</param>
/// <param name="Parts">Of the sizes of a measurement only this one, without writing it down; null for all.</param>
public sealed record BenchOptions(
    double Seconds,
    int Every,
    int AtOnce,
    string Data,
    string Results,
    string Date,
    int? Parts
);

/// <summary>The options of the command line.</summary>
internal sealed class BenchOptionSet
{
    private readonly Option<double> _seconds = new("--seconds")
    {
        Description = "How long one plan is looked for at most.",
        DefaultValueFactory = _ => 10,
    };

    private readonly Option<int> _every = new("--every")
    {
        Description = "Take every n-th instance only.",
        DefaultValueFactory = _ => 1,
    };

    private readonly Option<int> _atOnce = new("--at-once")
    {
        Description = "How many plans are looked for at the same time.",
        DefaultValueFactory = _ => 1,
    };

    private readonly Option<string> _data = new("--data")
    {
        Description = "The folder with the public instances.",
        DefaultValueFactory = _ => "../shared/data",
    };

    private readonly Option<string> _results = new("--results")
    {
        Description = "The file the figures are written to.",
        DefaultValueFactory = _ => "bench/RESULTS.md",
    };

    private readonly Option<string> _date = new("--date")
    {
        Description = "The day, as it is written beside the figures.",
        DefaultValueFactory = _ => DateTime.Today.ToString("yyyy-MM-dd"),
    };

    private readonly Option<int?> _parts = new("--parts")
    {
        Description = "Only the job of so many parts, told and not written down.",
    };

    /// <summary>The command of one row: measures, prints, and writes its section of the results.</summary>
    public Command CommandOf(string name, string what, Func<BenchOptions, ResultSection> run)
    {
        var command = new Command(name, $"Measures {what}.")
        {
            _seconds,
            _every,
            _atOnce,
            _data,
            _results,
            _date,
            _parts,
        };
        command.SetAction(parsed =>
        {
            var options = Read(parsed);
            var section = run(options);
            Console.WriteLine(section.Text);
            if (options.Parts is null)
                ResultFile.Replace(options.Results, section, options.Date);
        });
        return command;
    }

    private BenchOptions Read(ParseResult parsed) =>
        new(
            parsed.GetValue(_seconds),
            Math.Max(1, parsed.GetValue(_every)),
            Math.Max(1, parsed.GetValue(_atOnce)),
            parsed.GetValue(_data)!,
            parsed.GetValue(_results)!,
            parsed.GetValue(_date)!,
            parsed.GetValue(_parts)
        );
}

using System.CommandLine;
using Nookwright.Files;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Cli.Commands;

/// <summary><c>nookwright new NAME</c>: a small job that works at once, to be made one's own.</summary>
public static class NewCommand
{
    private const string Ending = ".nook.json";

    /// <summary>The command.</summary>
    public static Command Make(Terminal console)
    {
        var name = new Argument<string>("NAME") { Description = "The job's name; the file becomes NAME.nook.json." };
        var units = new UnitOption("What its sizes are written and shown in: in or mm.");
        var command = new Command("new", "Makes a small job that works at once, to be made your own.")
        {
            name,
            units,
            JobArgument.Out,
        };
        command.SetAction(parsed =>
        {
            var folder = parsed.GetValue(JobArgument.Out) ?? ".";
            return Make(console, parsed.GetRequiredValue(name), folder, units.Of(parsed));
        });
        return command;
    }

    private static int Make(Terminal console, string name, string folder, LengthUnit unit)
    {
        var title = name.EndsWith(Ending, StringComparison.Ordinal) ? name[..^Ending.Length] : name;
        var path = Path.Combine(folder, title + Ending);
        if (File.Exists(path))
            return console.Refuse($"{path}: There is a job of that name already: choose another name.");
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        var project = NewProject.Blank(unit) with { Name = Path.GetFileName(title) };
        if (JobFile.Save(project, path) is { } refusal)
            return console.Refuse([refusal]);
        console.Output.WriteLine($"Wrote {path}");
        return (int)Exit.Done;
    }
}

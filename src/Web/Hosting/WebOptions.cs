using System.CommandLine;

namespace Nookwright.Web.Hosting;

/// <summary>What was asked for when the page was started.</summary>
/// <param name="Folder">The folder of jobs; null for the maker's own, where the demos are copied on the first run.</param>
/// <param name="Port">The port on this machine; 0 for any free one.</param>
/// <param name="OpensBrowser">True to open the browser.</param>
public sealed record WebOptions(string? Folder, int Port, bool OpensBrowser)
{
    /// <summary>The port when nothing is said.</summary>
    public const int UsualPort = 5117;

    private static readonly Option<DirectoryInfo> FolderOption = new Option<DirectoryInfo>("--folder")
    {
        Description =
            "Folder with *.nook.json files; edits go to these files. Default: a Nookwright folder among your "
            + "documents, which starts with a copy of the demos",
        HelpName = "DIR",
    }.AcceptExistingOnly();

    private static readonly Option<int> PortOption = new("--port")
    {
        Description = "Port on 127.0.0.1; 0 for any free one",
        DefaultValueFactory = _ => UsualPort,
        HelpName = "PORT",
    };

    private static readonly Option<bool> NoBrowserOption = new("--no-browser")
    {
        Description = "Print the address only, open nothing",
    };

    /// <summary>Reads the command line and runs with what it says; help and refusals are printed.</summary>
    /// <returns>What the run returns, or 2 when the command line cannot be taken.</returns>
    public static Task<int> Run(string[] arguments, Func<WebOptions, Task<int>> run)
    {
        var command = new RootCommand("Shows jobs in the browser, served on this machine only.")
        {
            FolderOption,
            PortOption,
            NoBrowserOption,
        };
        PortOption.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > 65535)
                result.AddError("A port is a number from 0 to 65535; 0 takes any free one.");
        });
        command.SetAction((parsed, _) => run(Of(parsed)));
        var parsed = command.Parse(arguments);
        if (parsed.Errors.Count == 0)
            return parsed.InvokeAsync();
        foreach (var error in parsed.Errors)
            Console.Error.WriteLine($"{error.Message} See --help.");
        return Task.FromResult(2);
    }

    private static WebOptions Of(ParseResult parsed) =>
        new(parsed.GetValue(FolderOption)?.FullName, parsed.GetValue(PortOption), !parsed.GetValue(NoBrowserOption));
}

using Nookwright.Web.Sessions;

namespace Nookwright.Web.Hosting;

/// <summary>The folder used when none is named: <c>Nookwright</c> among the maker's documents, begun with a copy of the demos.</summary>
/// <remarks>The demos that come with the program are never written to; deleting the folder brings fresh copies.</remarks>
public static class MakersFolder
{
    private const string FirstDemo = "window-nook";

    private static string Demos => Path.Combine(AppContext.BaseDirectory, "demo");

    /// <summary>Opens it, and makes it when it is not there.</summary>
    public static JobFolder Open()
    {
        var documents = Environment.GetFolderPath(
            Environment.SpecialFolder.MyDocuments,
            Environment.SpecialFolderOption.DoNotVerify
        );
        // A machine account without a home of its own works in the current folder.
        var home = documents.Length > 0 ? documents : Environment.CurrentDirectory;
        return JobFolder.WithDemos(Path.Combine(home, "Nookwright"), Demos);
    }

    /// <summary>The job to open at the start: the demo while it is there; else null, and the list is shown.</summary>
    public static string? FirstJob(JobFolder folder) => folder.FileOf(FirstDemo) is null ? null : FirstDemo;
}

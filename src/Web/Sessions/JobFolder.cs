namespace Nookwright.Web.Sessions;

/// <summary>The folder whose jobs are shown.</summary>
/// <param name="path">An existing folder.</param>
public sealed class JobFolder(string path)
{
    /// <summary>How the names of job files end.</summary>
    public const string Ending = ".nook.json";

    /// <summary>The folder, in full.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    /// <summary>The names of the jobs in it: file names without their ending, in order.</summary>
    public IReadOnlyList<string> Jobs =>
        [
            .. Directory
                .EnumerateFiles(Path, "*" + Ending)
                .Select(file => System.IO.Path.GetFileName(file)[..^Ending.Length])
                .Order(StringComparer.OrdinalIgnoreCase),
        ];

    /// <summary>The file of a job, or null when the folder has none of this name.</summary>
    public string? FileOf(string job) =>
        // Looked up among the files that are there, so that no name can lead out of the folder.
        Jobs.Contains(job, StringComparer.Ordinal)
            ? System.IO.Path.Combine(Path, job + Ending)
            : null;

    /// <summary>The maker's own folder, with a copy of each demo that is not in it yet.</summary>
    /// <param name="folder">Made when it is not there.</param>
    /// <param name="demos">The folder the demos come with.</param>
    public static JobFolder WithDemos(string folder, string demos)
    {
        var isNew = !Directory.Exists(folder);
        Directory.CreateDirectory(folder);
        if (isNew && Directory.Exists(demos))
            CopyDemos(folder, demos);
        return new(folder);
    }

    private static void CopyDemos(string folder, string demos)
    {
        foreach (var demo in Directory.EnumerateFiles(demos, "*" + Ending))
            File.Copy(demo, System.IO.Path.Combine(folder, System.IO.Path.GetFileName(demo)));
    }
}

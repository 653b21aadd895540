namespace Nookwright.Browser;

/// <summary>A folder of its own with a copy of the demos, gone afterwards.</summary>
internal sealed class JobCopies : IDisposable
{
    public JobCopies()
    {
        foreach (var demo in Directory.EnumerateFiles(Checkout.Demos, "*.nook.json"))
            File.Copy(demo, Path.Combine(Folder, Path.GetFileName(demo)));
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("nookwright-").FullName;

    public string FileOf(string job) => Path.Combine(Folder, job + ".nook.json");

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

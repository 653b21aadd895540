namespace Nookwright.Web.Sessions;

/// <summary>How a file looked from outside when it was last read or written, to notice that another program changed it.</summary>
/// <param name="Written">When it was last written.</param>
/// <param name="Size">How many bytes it had; -1 when it was not there.</param>
public readonly record struct FileStamp(DateTime Written, long Size)
{
    /// <summary>How a file looks now.</summary>
    public static FileStamp Of(string path)
    {
        var file = new FileInfo(path);
        return file.Exists ? new(file.LastWriteTimeUtc, file.Length) : new(default, -1);
    }
}

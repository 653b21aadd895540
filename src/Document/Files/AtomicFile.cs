namespace Nookwright.Files;

/// <summary>Replaces a file whole: after a crash there is the old one or the new one, never half of one.</summary>
public static class AtomicFile
{
    /// <summary>The file that keeps the version before this one.</summary>
    public static string BackupOf(string path) => path + ".bak";

    /// <summary>Writes a file beside, makes sure it is on the disk, then puts it in place of the old one, which becomes the backup.</summary>
    /// <param name="path">The file; a link is followed.</param>
    /// <param name="write">Writes the content. When it throws, the old file is still there, untouched.</param>
    public static void Replace(string path, Action<Stream> write)
    {
        var isLink = new FileInfo(path).LinkTarget is not null;
        var target = isLink ? File.ResolveLinkTarget(path, returnFinalTarget: true)!.FullName : path;
        var beside = target + ".new"; // Same folder, hence same disk: a move across disks would copy.
        try
        {
            WriteThrough(beside, write);
            if (File.Exists(target))
                File.Replace(beside, target, BackupOf(target));
            else
                File.Move(beside, target);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }

    private static void WriteThrough(string path, Action<Stream> write)
    {
        using var stream = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None);
        write(stream);
        stream.Flush(flushToDisk: true);
    }
}

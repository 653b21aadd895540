namespace Nookwright.Cli;

/// <summary>Files a command writes when it is given <c>--out</c>.</summary>
public static class OutFolder
{
    /// <summary>Writes the text into the folder under this name and says so, or says the text when there is no folder.</summary>
    public static void WriteOrSay(Terminal console, string? folder, string name, string text)
    {
        if (folder is null)
            console.Output.WriteLine(text);
        else
            Write(console, folder, name, stream => stream.Write(System.Text.Encoding.UTF8.GetBytes(text + "\n")));
    }

    /// <summary>Writes a file whole into the folder and says where.</summary>
    public static void Write(Terminal console, string folder, string name, Action<Stream> write)
    {
        Directory.CreateDirectory(folder);
        var path = Path.Combine(folder, name);
        Files.AtomicFile.Replace(path, write);
        console.Output.WriteLine($"Wrote {path}");
    }
}

using System.Text;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Files;

/// <summary>A job on the disk, <c>NAME.nook.json</c>. Reading never changes it; saving replaces it whole and keeps the version before.</summary>
public static class JobFile
{
    /// <summary>The largest file taken; a job of a thousand pieces needs less than a tenth of it.</summary>
    public const int MostBytes = 16 * 1024 * 1024;

    private static readonly UTF8Encoding StrictUtf8 = new(false, throwOnInvalidBytes: true);

    /// <summary>Reads a job from the disk, or says the first thing that stands in its way.</summary>
    public static Outcome<Project> Read(string path) => Open(path).Outcome;

    /// <summary>Reads a job from text, or says the first thing that stands in its way.</summary>
    /// <param name="text">The text.</param>
    /// <param name="fileName">The file's name as the user gave it, for messages.</param>
    public static Outcome<Project> ReadText(string text, string fileName) => JobText.Open(text, fileName).Outcome;

    /// <summary>The project as text, as <see cref="Save"/> writes it.</summary>
    public static string Write(Project project) => JobText.Write(project);

    /// <summary>Opens a job from the disk and says everything that stands in its way.</summary>
    public static OpenedJob Open(string path) =>
        TextOf(path).Take(out var text, out var refusal) ? JobText.Open(text, path) : OpenedJob.Refused(refusal);

    /// <summary>Saves a job, or says why it cannot be; the file is whole at any moment, and the version before is kept beside it.</summary>
    public static Refusal? Save(Project project, string path)
    {
        var text = Write(project);
        if (JobText.Open(text, path).Refusals is [var refusal, ..])
            return refusal with
            {
                Message = $"Not saved, for it could not be opened again. {refusal.Message}",
                Line = null,
            };
        try
        {
            if (!IsThere(text, path)) // Saving twice must not cost the version before.
                AtomicFile.Replace(path, stream => stream.Write(StrictUtf8.GetBytes(text)));
            return null;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return new($"Not saved. {WhyNot(trouble, path)}", File: path);
        }
    }

    private static bool IsThere(string text, string path) =>
        File.Exists(path) && File.ReadAllBytes(path).AsSpan().SequenceEqual(StrictUtf8.GetBytes(text));

    private static Outcome<string> TextOf(string path)
    {
        try
        {
            return new FileInfo(path) is { Exists: true, Length: > MostBytes and var size }
                ? new Refusal(
                    $"This file has {size} bytes, and no job needs more than {MostBytes}: is it a job?",
                    File: path
                )
                : StrictUtf8.GetString(File.ReadAllBytes(path));
        }
        catch (DecoderFallbackException)
        {
            return new Refusal("This is not text in UTF-8: save it as UTF-8, or name another file.", File: path);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException)
        {
            return new Refusal(WhyNot(trouble, path), File: path);
        }
    }

    private static string WhyNot(Exception trouble, string path) =>
        trouble switch
        {
            _ when Directory.Exists(path) => "This is a folder: name the job file in it, NAME.nook.json.",
            FileNotFoundException => "There is no such file: check the name, or make a job with \"nookwright new\".",
            DirectoryNotFoundException => "There is no such folder: check the path.",
            UnauthorizedAccessException =>
                "This account may not use the file: change its permissions or copy it elsewhere.",
            ArgumentException => "This cannot be the name of a file: check it.",
            _ => $"The system would not let the file be used ({trouble.Message}): free it or choose another place.",
        };
}

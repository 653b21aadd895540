using System.Collections.Immutable;
using System.Text.Json;
using Nookwright.Files;
using Nookwright.Trouble;

namespace Nookwright.Web.Sessions;

/// <summary>The file beside a job that keeps which cuts are done.</summary>
/// <remarks>
/// Not in the document: a tick at the saw is no edit, and undo must not put a cut sheet together again. Not in the browser
/// either: what is ticked on the phone in the shop is to be seen on the laptop, and a browser forgets when it is cleaned.
/// </remarks>
public static class CutsDoneFile
{
    private static readonly JsonSerializerOptions Layout = new() { WriteIndented = true };

    /// <summary>The file that belongs to a job's file.</summary>
    public static string Beside(string job)
    {
        var name = job.EndsWith(JobFolder.Ending, StringComparison.Ordinal) ? job[..^JobFolder.Ending.Length] : job;
        return name + ".done.json";
    }

    /// <summary>What is done, nothing when there is no file yet; or why it cannot be told, and then the file stays as it is.</summary>
    public static Outcome<CutsDone> Read(string path)
    {
        try
        {
            return File.Exists(path) ? Parsed(File.ReadAllText(path)) : CutsDone.None;
        }
        catch (JsonException trouble)
        {
            return CannotBeRead(path, $"line {trouble.LineNumber + 1} is not as this program writes it");
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return CannotBeRead(path, trouble.Message);
        }
    }

    /// <summary>Writes what is done; on the disk before anybody sees the tick.</summary>
    /// <returns>Why it could not be written.</returns>
    public static Refusal? Write(string path, CutsDone done)
    {
        try
        {
            AtomicFile.Replace(path, stream => JsonSerializer.Serialize(stream, done.ByStamp, Layout));
            return null;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            return new(
                $"The tick could not be kept: {trouble.Message} Make room or give leave to write there, then tick again."
            );
        }
    }

    private static CutsDone Parsed(string text) =>
        new(
            (JsonSerializer.Deserialize<Dictionary<string, int[]>>(text) ?? []).ToImmutableSortedDictionary(
                plan => plan.Key,
                plan => plan.Value.ToImmutableSortedSet(),
                StringComparer.Ordinal
            )
        );

    private static Refusal CannotBeRead(string path, string why) =>
        new(
            $"Which cuts are done cannot be read from {Path.GetFileName(path)}: {why}. Mend that file, or move it away to begin without ticks."
        );
}

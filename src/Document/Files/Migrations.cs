using System.Text.Json;
using System.Text.Json.Nodes;
using Nookwright.Trouble;

namespace Nookwright.Files;

/// <summary>One change of the document's form.</summary>
/// <param name="To">The version it leads to, from the one before.</param>
/// <param name="Name">What changes, in a few words.</param>
/// <param name="Apply">Changes a document in place.</param>
public sealed record Migration(int To, string Name, Action<JsonObject> Apply);

/// <summary>Brings documents of older versions up to date, one numbered step after another.</summary>
public sealed class Migrations
{
    private const int First = 1;

    private static readonly Migration[] StepsSoFar = [];

    private readonly IReadOnlyList<Migration> _steps;

    /// <summary>A path of steps; they lead on from version 1 without a gap.</summary>
    public Migrations(IReadOnlyList<Migration> steps)
    {
        foreach (var (index, step) in steps.Index())
            ArgumentOutOfRangeException.ThrowIfNotEqual(step.To, First + index + 1);
        _steps = steps;
    }

    /// <summary>The steps of this program.</summary>
    public static Migrations Known { get; } = new(StepsSoFar);

    /// <summary>The version they lead to.</summary>
    public int Newest => First + _steps.Count;

    /// <summary>Brings a document up to the newest version, or says why it cannot be.</summary>
    public Refusal? BringUpToDate(JsonObject document)
    {
        if (VersionOf(document["version"]) is not { } version)
            return new(
                $"Expected the version of the document's form, from 1 to {Newest}: write \"version\": {Newest} if it is new.",
                "version"
            );
        if (version > Newest)
            return new(
                $"This document has version {version} and this program knows versions up to {Newest}: "
                    + "open it with a newer Nookwright. The file is as it was.",
                "version"
            );
        foreach (var step in _steps.Where(step => step.To > version))
        {
            step.Apply(document);
            document["version"] = step.To;
        }
        return null;
    }

    private static int? VersionOf(JsonNode? written) =>
        written?.GetValueKind() is JsonValueKind.Number
        && written.AsValue().TryGetValue(out int version)
        && version >= First
            ? version
            : null;
}

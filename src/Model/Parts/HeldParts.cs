using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Parts;

/// <summary>Says which parts wait, and for what.</summary>
internal static class HeldParts
{
    /// <summary>One note for each reading, with the parts that wait for it.</summary>
    public static IEnumerable<Finding> ByReading(IEnumerable<Part> parts, Length allowance, LengthUnit unit) =>
        parts
            .Where(part => part.IsHeld)
            .SelectMany(part => part.Blank!.Awaits.Select(reading => (reading, part)))
            .GroupBy(pair => pair.reading, pair => pair.part)
            .Select(held => Waiting(held.Key, [.. held], LengthText.Write(allowance, unit)));

    /// <summary>A running grain of which some parts wait, and so all of it.</summary>
    public static IEnumerable<Finding> InRun(string run, List<Part> parts)
    {
        var members = parts.Where(part => part.Run?.Run == run).ToList();
        var held = members.Where(part => part.IsHeld).ToList();
        if (held.Count == members.Count)
            yield break;
        yield return new(
            "run.waits-together",
            Severity.Note,
            $"The whole running grain {run} is held: it comes off one strip, and {Names(held)} {(held.Count == 1 ? "waits" : "wait")} for {string.Join(", ", held.SelectMany(p => p.Blank!.Awaits).Distinct())}.",
            [run, .. held.Select(part => part.Id)]
        );
    }

    private static Finding Waiting(string reading, List<Part> parts, string allowance)
    {
        var (wait, stay) = parts.Count == 1 ? ("waits", "stays") : ("wait", "stay");
        return new(
            "part.held",
            Severity.Note,
            $"{Names(parts)} {wait} for reading {reading} and {stay} {allowance} long until it is taken.",
            [reading, .. parts.Select(part => part.Id)]
        );
    }

    private static string Names(IReadOnlyList<Part> parts) =>
        parts.Count <= 3
            ? string.Join(", ", parts.Select(part => part.Panel.Name))
            : $"{parts[0].Panel.Name} and {parts.Count - 1} more parts";
}

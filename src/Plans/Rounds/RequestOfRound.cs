using Nookwright.Cutting;
using Nookwright.Trouble;

namespace Nookwright.Rounds;

/// <summary>What of a job one round is asked for.</summary>
internal static class RequestOfRound
{
    /// <summary>The request for some of the parts.</summary>
    /// <param name="now">What the whole job asks for.</param>
    /// <param name="parts">What this round cuts.</param>
    /// <param name="stock">What it cuts from.</param>
    /// <param name="findings">Told of what cannot be kept because its other half is cut already.</param>
    public static CutRequest Of(
        CutRequest now,
        IReadOnlyList<CutPart> parts,
        IReadOnlyList<StockPiece> stock,
        List<Finding> findings
    )
    {
        var here = parts.ToDictionary(p => p.Id);
        findings.AddRange(now.Matches.Select(m => Apart(m, here)).OfType<Finding>());
        findings.AddRange(now.Runs.Select(r => Apart(r, here)).OfType<Finding>());
        return now with
        {
            Parts = parts,
            Stock = stock,
            Runs = [.. now.Runs.Where(r => IsWhole(r, here))],
            Matches =
            [
                .. now
                    .Matches.Select(m => m with { Sides = [.. m.Sides.Where(s => here.ContainsKey(s.Part))] })
                    .Where(m => m.Sides.Count > 1),
            ],
            PinnedSheets = [.. now.PinnedSheets.Where(p => !IsBegun(p, now, here))],
            Apart =
            [
                .. now
                    .Apart.Select(a => a with { Parts = [.. a.Parts.Where(here.ContainsKey)] })
                    .Where(a => a.Parts.Count > 1),
            ],
        };
    }

    /// <summary>True for a pinned sheet that an earlier round has cut from: it is as it is.</summary>
    private static bool IsBegun(PinnedSheet pin, CutRequest now, Dictionary<string, CutPart> here) =>
        now.Parts.Any(p => pin.Parts.Contains(p.Id) && !here.ContainsKey(p.Id));

    /// <summary>A run comes off one strip: of one blank, or of fresh wood.</summary>
    private static bool IsWhole(CutRun run, Dictionary<string, CutPart> here) =>
        run.Parts.All(here.ContainsKey) && run.Parts.Select(p => here[p].From).Distinct().Count() == 1;

    private static Finding? Apart(CutRun run, Dictionary<string, CutPart> here)
    {
        var some = run.Parts.Where(here.ContainsKey).ToList();
        return some.Count == 0 || IsWhole(run, here)
            ? null
            : new(
                "cutting.run-over-rounds",
                Severity.Warning,
                $"The figure of running grain {run.Id} will not run on: {Names(some, here)} {(some.Count == 1 ? "is" : "are")} cut "
                    + "apart from the others. Undo the edit, or cut the whole run once more.",
                [run.Id, .. some]
            );
    }

    private static Finding? Apart(CutMatch match, Dictionary<string, CutPart> here)
    {
        var some = match.Sides.Select(s => s.Part).Distinct().Where(here.ContainsKey).ToList();
        var others = match.Sides.Count(s => !here.ContainsKey(s.Part));
        return some.Count == 0 || others == 0
            ? null
            : new(
                "cutting.match-over-rounds",
                Severity.Note,
                $"{Names(some, here)} must match parts of an earlier round: set the saw by one of those, not by the scale.",
                [match.Id, .. some],
                "common practice, no source"
            );
    }

    private static string Names(List<string> parts, Dictionary<string, CutPart> here) =>
        string.Join(", ", parts.Take(3).Select(p => here[p].Name)) + (parts.Count > 3 ? ", …" : "");
}

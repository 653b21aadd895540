using Nookwright.Cutting;
using Nookwright.Projects;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>What keeps a running grain from being one.</summary>
internal static class RunFindings
{
    /// <summary>Why a run cannot be cut from one strip, whatever the sheets; null when it can.</summary>
    public static Finding? Of(CutRun run, List<int> members, CutRequest request, HashSet<int> claimed)
    {
        var parts = members.Select(m => request.Parts[m]).ToList();
        if (members.Distinct().Count() < members.Count || members.Any(claimed.Contains))
            return MustMend(
                "cutting.part-in-two-runs",
                $"{run.Id}: a part stands in two places of a running grain; leave it in one."
            );
        if (parts.Select(p => p.Material).Distinct().Count() > 1)
            return MustMend(
                "cutting.run-of-two-materials",
                $"{run.Id}: its parts are of different materials; give them one."
            );
        if (parts.All(p => !p.IsHeld) && Shared(run, parts) is null)
            return MustMend("cutting.run-heights-differ", HeightsMessage(run, parts, request));
        return null;
    }

    /// <summary>A note that a run goes on in other strips, and where.</summary>
    /// <param name="run">The run.</param>
    /// <param name="firsts">The first part of each strip.</param>
    public static Finding Split(CutRun run, IReadOnlyList<string> firsts) =>
        new(
            "cutting.run-split",
            Severity.Note,
            $"{run.Id}: {(run.PartAfter.Count == 0 ? "no sheet gives it whole" : "whole it would take more sheets")}, so it comes from "
                + $"{firsts.Count} strips, as allowed; the figure starts anew at "
                + $"{string.Join(" and ", firsts.Skip(1))}.",
            [run.Id, .. firsts.Skip(1)]
        );

    /// <summary>The side across the run.</summary>
    public static MatchedSide Height(CutRun run, List<int> members, CutRequest request) =>
        Shared(run, [.. members.Select(m => request.Parts[m])]) ?? run.Height ?? MatchedSide.Length;

    private static MatchedSide? Shared(CutRun run, List<CutPart> parts)
    {
        MatchedSide[] alongTheFigure =
            parts[0].Figure == PanelFigure.Width
                ? [MatchedSide.Length, MatchedSide.Width]
                : [MatchedSide.Width, MatchedSide.Length];
        MatchedSide[] sides = run.Height is { } given ? [given] : alongTheFigure;
        foreach (var side in sides)
            if (parts.Select(p => p.Size(side)).Distinct().Count() == 1)
                return side;
        return null;
    }

    private static string HeightsMessage(CutRun run, List<CutPart> parts, CutRequest request)
    {
        var sizes = string.Join(", ", parts.Select(p => $"{p.Id} {request.Say(p.Length)} × {request.Say(p.Width)}"));
        return $"{run.Id}: parts of a running grain share the strip's height, and these share none: {sizes}; make one side equal.";
    }

    private static Finding MustMend(string rule, string message) => new(rule, Severity.MustMend, message, []);
}

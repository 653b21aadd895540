using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Bounds;

/// <summary>What a request asks to be cut of one material, piece by piece, at its own size.</summary>
internal static class RequestReading
{
    /// <summary>Parts, blanks and runs, each once, without any kerf around it.</summary>
    /// <param name="request">The request.</param>
    /// <param name="material">The material's id.</param>
    /// <param name="kerf">What is lost between two neighbours in a run, in nanometres.</param>
    public static IEnumerable<Want> Things(CutRequest request, string material, long kerf)
    {
        var parts = request.Parts.Where(p => p.Material == material).ToDictionary(p => p.Id);
        var runs = request.Runs.Where(r => r.Parts.All(parts.ContainsKey)).ToList();
        var inRuns = new HashSet<string>();
        foreach (var run in runs)
        {
            var members = run.Parts.Select(id => parts[id]).ToList();
            if (Side(run, members) is not { } height || members.Any(m => inRuns.Contains(m.Id)))
                continue;
            inRuns.UnionWith(run.Parts);
            foreach (var stretch in Stretches(run, members))
                yield return Run(stretch, height, kerf);
        }
        var waiting = runs.Where(r => r.Parts.Any(id => parts[id].IsHeld)).SelectMany(r => r.Parts).ToHashSet();
        foreach (var part in parts.Values.Where(p => !inRuns.Contains(p.Id)))
            yield return Single(part) with
            {
                IsRough = part.IsHeld || waiting.Contains(part.Id),
            };
    }

    private static Want Single(CutPart part) =>
        new(
            part.Length.Nanometres,
            part.Width.Nanometres,
            part.Figure.Allows(MatchedSide.Length),
            part.Figure.Allows(MatchedSide.Width),
            false,
            part.From,
            1
        );

    /// <summary>The side across the run. Null where it is not told and not plain: its parts then count one by one, which is less.</summary>
    private static MatchedSide? Side(CutRun run, List<CutPart> members)
    {
        if (run.Height is MatchedSide.Length or MatchedSide.Width)
            return run.Height;
        var isLength = members.All(m => m.Length == members[0].Length);
        var isWidth = members.All(m => m.Width == members[0].Width);
        return (isLength, isWidth) switch
        {
            (true, false) => MatchedSide.Length,
            (false, true) => MatchedSide.Width,
            _ => null,
        };
    }

    /// <summary>A run that is held waits whole; another may be several where the maker allows it.</summary>
    private static IEnumerable<List<CutPart>> Stretches(CutRun run, List<CutPart> members)
    {
        if (members.Any(m => m.IsHeld) || run.MaySplitAfter.Count == 0)
            return [members];
        var stretches = new List<List<CutPart>> { new() };
        foreach (var member in members)
        {
            stretches[^1].Add(member);
            if (run.MaySplitAfter.Contains(member.Id))
                stretches.Add([]);
        }
        return stretches.Where(s => s.Count > 0);
    }

    private static Want Run(List<CutPart> members, MatchedSide height, long kerf)
    {
        var along = height == MatchedSide.Length ? MatchedSide.Width : MatchedSide.Length;
        return new(
            members.Sum(m => m.Size(along).Nanometres) + ((members.Count - 1) * kerf),
            members.Max(m => m.Size(height).Nanometres),
            members.All(m => m.Figure.Allows(along)),
            members.All(m => m.Figure.Allows(height)),
            members.Any(m => m.IsHeld),
            members[0].From is { } from && members.All(m => m.From == from) ? from : null,
            1
        );
    }
}

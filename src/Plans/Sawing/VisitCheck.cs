using Nookwright.Cutting;
using Nookwright.Projects;

namespace Nookwright.Sawing;

/// <summary>Whether the visits say what they are: a saw that reaches, cuts to make, and no match that is not kept there.</summary>
internal static class VisitCheck
{
    /// <summary>The first visit that cannot be as it says, as a sentence; or null.</summary>
    public static string? Trouble(Plan plan, CutRequest request) =>
        plan.Visits.Select(v => Trouble(v, request)).FirstOrDefault(t => t is not null);

    /// <summary>The first match a visit claims and does not keep, as a sentence; or null.</summary>
    /// <param name="visits">The visits.</param>
    /// <param name="request">What was asked for.</param>
    /// <param name="made">The piece on the bench that a part is; null for none.</param>
    public static string? Claims(IEnumerable<Visit> visits, CutRequest request, Func<string, BenchPiece?> made)
    {
        var matches = request.Matches.ToDictionary(m => m.Id, m => VisitsOf(m, request, made));
        foreach (var visit in visits)
        foreach (var claimed in visit.Matches)
            if (!matches.TryGetValue(claimed, out var kept) || !kept.Contains(visit.Number))
                return $"Visit {visit.Number} says that it keeps {claimed} together, and gives none of its sizes.";
        return null;
    }

    private static string? Trouble(Visit visit, CutRequest request)
    {
        if (visit.Cuts.Count == 0)
            return $"Nothing is cut at visit {visit.Number}.";
        var reach = visit.Saw == Saw.Fence ? request.Saws.RipReach : request.Saws.CrosscutReach;
        return visit.Setting > reach
            ? $"Visit {visit.Number} asks for the {visit.Saw} at {visit.Setting}, and it reaches {reach}."
            : null;
    }

    private static HashSet<int> VisitsOf(CutMatch match, CutRequest request, Func<string, BenchPiece?> made)
    {
        var parts = request.Parts.ToDictionary(p => p.Id);
        var visits =
            from side in match.Sides
            let piece = made(side.Part)
            where piece is not null
            from visit in Visits(parts[side.Part], side.Side, piece)
            select visit;
        return [.. visits];
    }

    private static IEnumerable<int> Visits(CutPart part, MatchedSide side, BenchPiece piece)
    {
        var sizes = side switch
        {
            MatchedSide.Length => [part.Length],
            MatchedSide.Width => [part.Width],
            _ => new[] { part.Length, part.Width },
        };
        foreach (var given in (BenchSide[])[piece.X, piece.Y])
            if (given.Visit is { } visit && sizes.Contains(given.Size))
                yield return visit;
    }
}

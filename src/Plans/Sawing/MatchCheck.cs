using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Sawing;

/// <summary>Whether dimensions that must match were cut in one visit, and whether the visits say so.</summary>
internal static class MatchCheck
{
    /// <summary>The first thing that is wrong, as a sentence; or null.</summary>
    public static string? Trouble(CutRequest request, Plan plan, Func<string, (Workpiece, BenchPiece)?> made)
    {
        var parts = request.Parts.ToDictionary(p => p.Id);
        foreach (var match in request.Matches)
        {
            var sides = match.Sides.SelectMany(s => Sides(parts[s.Part], s.Side)).ToList();
            foreach (var size in sides.GroupBy(s => Size(s.Part, s.Side)))
            {
                var visits = size.Select(s => VisitOf(s.Part, s.Side, made))
                    .OfType<(string Part, int? Visit)>()
                    .ToList();
                if (Split(match, visits) is { } trouble)
                    return trouble;
                if (visits.Count > 0 && !plan.Visits[visits[0].Visit!.Value - 1].Matches.Contains(match.Id))
                    return $"{match.Id} is kept together by visit {visits[0].Visit}, and the visit does not say so.";
            }
        }
        return null;
    }

    private static string? Split(CutMatch match, List<(string Part, int? Visit)> visits)
    {
        if (visits.FirstOrDefault(v => v.Visit is null) is { Part: { } uncut })
            return $"{match.Id}: no one visit gives {uncut} the size that must match.";
        var odd = visits.FirstOrDefault(v => v.Visit != visits[0].Visit);
        return odd.Part is null
            ? null
            : $"{match.Id} must match, and is split: {visits[0].Part} is cut at visit {visits[0].Visit}, {odd.Part} at visit {odd.Visit}.";
    }

    private static (string Part, int? Visit)? VisitOf(
        CutPart part,
        MatchedSide side,
        Func<string, (Workpiece, BenchPiece)?> made
    )
    {
        if (made(part.Id) is not var (_, piece))
            return null;
        var size = Size(part, side);
        if (part.Length == part.Width)
            return (part.Id, piece.X.Visit == piece.Y.Visit ? piece.X.Visit : null);
        return (part.Id, piece.X.Size == size ? piece.X.Visit : piece.Y.Visit);
    }

    private static IEnumerable<(CutPart Part, MatchedSide Side)> Sides(CutPart part, MatchedSide side) =>
        side == MatchedSide.Both ? [(part, MatchedSide.Length), (part, MatchedSide.Width)] : [(part, side)];

    private static Length Size(CutPart part, MatchedSide side) => side == MatchedSide.Length ? part.Length : part.Width;
}

using Nookwright.Cutting;
using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Planning;

/// <summary>Match groups that no plan can keep together.</summary>
internal static class MatchFindings
{
    /// <summary>Groups with sides of different sizes, or with held parts among final ones.</summary>
    public static IEnumerable<Finding> Of(CutRequest request)
    {
        var parts = request.Parts.ToDictionary(p => p.Id);
        foreach (var match in request.Matches)
        {
            var sides = match.Sides.Select(s => (Part: parts[s.Part], s.Side)).ToList();
            if (sides.Any(s => s.Part.IsHeld) && sides.Any(s => !s.Part.IsHeld))
                yield return Mixed(match, sides.Where(s => s.Part.IsHeld).Select(s => s.Part.Id));
            var now = sides.Where(s => !s.Part.IsHeld).ToList();
            var sizes = now.SelectMany(s => s.Side.Each().Select(side => (s.Part, Size: s.Part.Size(side)))).ToList();
            if (sizes.Select(s => s.Size).Distinct().Count() > 1 && !IsPairwise(match, now.Select(s => s.Part)))
                yield return Different(match, sizes, request);
        }
    }

    /// <summary>A group of whole parts may have two sizes: all lengths equal, and all widths.</summary>
    private static bool IsPairwise(CutMatch match, IEnumerable<CutPart> parts) =>
        match.Sides.All(s => s.Side == Projects.MatchedSide.Both)
        && parts.Select(p => (p.Length, p.Width)).Distinct().Count() == 1;

    private static Finding Mixed(CutMatch match, IEnumerable<string> held) =>
        new(
            "cutting.match-partly-held",
            Severity.Warning,
            $"{match.Id}: {string.Join(", ", held)} waits for a reading while the rest is cut now, so they cannot share a "
                + "visit; take the reading first, or let the rest wait too.",
            [match.Id, .. match.Sides.Select(s => s.Part).Distinct()]
        );

    private static Finding Different(CutMatch match, List<(CutPart Part, Length Size)> sizes, CutRequest request)
    {
        var list = string.Join(", ", sizes.Select(s => $"{s.Part.Id} {request.Say(s.Size)}").Distinct());
        return new(
            "cutting.match-sizes-differ",
            Severity.MustMend,
            $"{match.Id}: these should match and do not: {list}; make the sizes equal, or take one out of the group.",
            [match.Id, .. sizes.Select(s => s.Part.Id).Distinct()]
        );
    }
}

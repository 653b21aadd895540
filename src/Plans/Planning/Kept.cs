using Nookwright.Cutting;
using Nookwright.Parts;

namespace Nookwright.Planning;

/// <summary>Which match groups a visit keeps together.</summary>
internal static class Kept
{
    /// <summary>The groups that have a side of the visit's distance on a part whose strip, or which itself, is cut there.</summary>
    public static IReadOnlyList<string> By(ScriptVisit visit, CutRequest request)
    {
        var distance = new Measure.Length(visit.Distance);
        var parts = request.Parts.ToDictionary(p => p.Id);
        return
        [
            .. request
                .Matches.Where(m =>
                    m.Sides.Any(s => !parts[s.Part].IsHeld && Sizes(s, parts[s.Part]).Contains(distance))
                )
                .Select(m => m.Id),
        ];
    }

    private static IEnumerable<Measure.Length> Sizes(PartSide side, CutPart part) =>
        side.Side.Each().Select(s => part.Size(s));
}

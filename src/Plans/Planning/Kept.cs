using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Which match groups a visit keeps together: those that have a side whose setting it serves, on a part that is made.</summary>
internal sealed class Kept
{
    private readonly IReadOnlyList<CutMatch> _matches;
    private readonly ILookup<int, int> _matchesOf;

    /// <summary>For a plan.</summary>
    /// <param name="job">What it is a plan of.</param>
    /// <param name="made">Ids of the parts that are made.</param>
    public Kept(Job job, IReadOnlySet<string> made)
    {
        _matches = job.Request.Matches;
        var parts = job.Request.Parts.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
        _matchesOf = _matches
            .SelectMany((match, number) => match.Sides.Select(side => (Side: side, Number: number)))
            .Where(m => made.Contains(m.Side.Part))
            .SelectMany(m => PartSides.Each(m.Side.Side).Select(s => (Side: (m.Side.Part, s), m.Number)))
            .ToLookup(m => job.Sides[SettingPlan.Key(parts[m.Side.Part], m.Side.s)], m => m.Number);
    }

    /// <summary>The ids of the groups, in the order of the request.</summary>
    /// <param name="settings">The settings that the visit serves.</param>
    public IReadOnlyList<string> By(IReadOnlyList<int> settings) =>
        [.. settings.SelectMany(s => _matchesOf[s]).Distinct().Order().Select(number => _matches[number].Id)];
}

namespace Nookwright.Planning;

/// <summary>Which match groups a visit keeps together.</summary>
internal static class Kept
{
    /// <summary>The groups that have a side whose setting the visit serves, on a part that is made.</summary>
    public static IReadOnlyList<string> By(IReadOnlyList<int> settings, Job job, IReadOnlySet<string> made)
    {
        var parts = job.Request.Parts.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
        bool IsHere(int key) => settings.Contains(job.Sides[key]);
        return
        [
            .. job
                .Request.Matches.Where(m =>
                    m.Sides.Any(s =>
                        made.Contains(s.Part)
                        && Cutting.PartSides.Each(s.Side).Any(side => IsHere(SettingPlan.Key(parts[s.Part], side)))
                    )
                )
                .Select(m => m.Id),
        ];
    }
}

namespace Nookwright.Planning;

/// <summary>Which match groups a visit keeps together.</summary>
internal static class Kept
{
    /// <summary>The groups that have a side whose setting is the visit's.</summary>
    public static IReadOnlyList<string> By(int setting, Job job)
    {
        var parts = job.Request.Parts.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i);
        bool IsHere(int key) => job.Sides[key] == setting;
        return
        [
            .. job
                .Request.Matches.Where(m =>
                    m.Sides.Any(s =>
                        Cutting.PartSides.Each(s.Side).Any(side => IsHere(SettingPlan.Key(parts[s.Part], side)))
                    )
                )
                .Select(m => m.Id),
        ];
    }
}

using Nookwright.Measure;

namespace Nookwright.Cutting;

/// <summary>A dimension that is set again because some of its parts waited for a reading: the price of waiting.</summary>
/// <param name="Setting">The dimension.</param>
/// <param name="Visits">Its visits, each of another round, in order.</param>
public sealed record SettingAgain(Length Setting, IReadOnlyList<Visit> Visits)
{
    /// <summary>The dimensions of a plan that more than one round visits, in the order of their first visits.</summary>
    public static IReadOnlyList<SettingAgain> Of(Plan plan) =>
        [
            .. plan
                .Visits.GroupBy(v => v.Setting)
                .Select(g => new SettingAgain(g.Key, [.. g.DistinctBy(v => v.Round)]))
                .Where(again => again.Visits.Count > 1)
                .OrderBy(again => again.Visits[0].Number),
        ];
}

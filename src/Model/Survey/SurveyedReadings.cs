using Nookwright.Measure;
using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>The readings that can be used, by what they measure and where; repeats narrowed to the one that governs.</summary>
internal sealed class SurveyedReadings(IReadOnlyList<TakenReading> all)
{
    public IReadOnlyList<TakenReading> All => all;

    public IEnumerable<TakenReading> Of(RoomReadingKind kind) => all.Where(r => r.Kind == kind);

    public IEnumerable<TakenReading> Of(RoomReadingKind kind, PlaceInPlan at) => Of(kind).Where(r => r.At == at);

    public bool Has(RoomReadingKind kind, PlaceInPlan at) => Of(kind, at).Any();

    /// <summary>One reading at each height: of repeats the one that leaves the least room.</summary>
    public IEnumerable<TakenReading> Narrowest(RoomReadingKind kind, PlaceInPlan at) =>
        Of(kind, at).GroupBy(r => r.Height).Select(same => same.MinBy(r => r.Nanometres)!);

    /// <summary>How far a wall stands further into the recess than at the floor, by height; it goes on above the reading.</summary>
    public HeightProfile Lean(PlaceInPlan wall)
    {
        var read = Of(RoomReadingKind.Lean, wall)
            .GroupBy(r => r.Height)
            .Select(same => (same.First().HeightNanometres, same.Max(r => r.Nanometres)))
            .ToList();
        return new(read.Count == 0 ? [] : read.Prepend((0, 0)), runsOn: true);
    }

    /// <summary>Every height at which a wall's place was read, from the floor's high point up.</summary>
    public IEnumerable<Length> WallHeights =>
        all.Where(r => r.Kind is RoomReadingKind.Width or RoomReadingKind.Depth or RoomReadingKind.Lean)
            .Select(r => r.Height);
}

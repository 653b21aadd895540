using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>Where the back wall stands: y into the recess, at left, middle and right and any height.</summary>
/// <remarks>
/// Depths are taken square to the opening line and kept to the mark; between and above them the wall follows its lean.
/// Where nobody took a depth the wall is straight through the other two, or parallel to the opening when there is one.
/// </remarks>
internal sealed class BackWall
{
    private readonly HeightProfile _lean;
    private readonly Dictionary<PlaceInPlan, HeightProfile> _upright;

    public BackWall(SurveyedReadings readings)
    {
        _lean = readings.Lean(PlaceInPlan.Back);
        _upright = new[] { PlaceInPlan.Left, PlaceInPlan.Middle, PlaceInPlan.Right }
            .Where(at => readings.Has(RoomReadingKind.Depth, at))
            .ToDictionary(at => at, at => Upright(readings, at));
    }

    /// <summary>True when at least one depth was read.</summary>
    public bool IsKnown => _upright.Count > 0;

    /// <summary>True when a depth was read half-way along, so that the wall may bow.</summary>
    public bool HasMiddle => _upright.Count > 1 && _upright.ContainsKey(PlaceInPlan.Middle);

    public decimal At(PlaceInPlan along, decimal height) => Upright(along, height) - _lean.At(height);

    private decimal Upright(PlaceInPlan along, decimal height)
    {
        if (_upright.TryGetValue(along, out var read))
            return read.At(height);
        var others = _upright.Values.Select(other => other.At(height)).ToList();
        if (others.Count < 2)
            return others.Sum();
        return along == PlaceInPlan.Middle ? others.Sum() / 2 : Continued(along, height);
    }

    private decimal Continued(PlaceInPlan along, decimal height)
    {
        var far = along == PlaceInPlan.Left ? PlaceInPlan.Right : PlaceInPlan.Left;
        return (2 * _upright[PlaceInPlan.Middle].At(height)) - _upright[far].At(height);
    }

    /// <summary>The depths as they would be were the wall plumb.</summary>
    private HeightProfile Upright(SurveyedReadings readings, PlaceInPlan along) =>
        new(
            readings
                .Narrowest(RoomReadingKind.Depth, along)
                .Select(d => (d.HeightNanometres, d.Nanometres + _lean.At(d.HeightNanometres)))
        );
}

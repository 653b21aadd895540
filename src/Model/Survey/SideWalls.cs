using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>Where the two side walls stand: x along the opening, at front, middle and back and any height.</summary>
/// <remarks>
/// <para>
/// Widths (parallel to the opening) say how far apart the walls are, and each is kept to the mark. Diagonals say where the
/// back corners stand, leans how the walls change with height. The left front corner at the floor is the origin.
/// </para>
/// <para>
/// Where a width contradicts the leans, the width governs; the difference goes to the wall whose lean was not read, to
/// both by halves when both were. The same with a back width and the diagonals. What no reading settles, the right wall
/// takes: the left one is square to the opening and plumb unless something says otherwise.
/// </para>
/// </remarks>
internal sealed class SideWalls
{
    private readonly HeightProfile _leanLeft;
    private readonly HeightProfile _leanRight;
    private readonly decimal _shareOfLeft;
    private readonly HeightProfile _front;
    private readonly HeightProfile _middle;
    private readonly HeightProfile _back;

    public SideWalls(SurveyedReadings readings, BackWall back)
    {
        _leanLeft = readings.Lean(PlaceInPlan.Left);
        _leanRight = readings.Lean(PlaceInPlan.Right);
        _shareOfLeft = ShareOfLeft(_leanLeft.IsKnown, _leanRight.IsKnown);
        _middle = Upright(readings, PlaceInPlan.Middle);
        var read = Upright(readings, PlaceInPlan.Back);
        _front = new[] { Upright(readings, PlaceInPlan.Front), read, _middle }.FirstOrDefault(w => w.IsKnown) ?? read;
        _back = read.IsKnown ? read : _front;
        Corners = BackCorners.Of(readings, back, this, read.IsKnown ? read.Lowest : null);
    }

    /// <summary>True when at least one width was read.</summary>
    public bool IsKnown => _front.IsKnown;

    /// <summary>True when a width was read half-way in, so that the walls may bow.</summary>
    public bool HasMiddle => _middle.IsKnown && !ReferenceEquals(_middle, _front);

    /// <summary>The back corners, as the diagonals and the back width place them.</summary>
    public BackCorners Corners { get; private init; } = BackCorners.Unread;

    public decimal Left(PlaceInPlan depth, decimal height) =>
        depth switch
        {
            PlaceInPlan.Front => FromLeft(height) + (_shareOfLeft * Change(_front, height)),
            PlaceInPlan.Back => Corners.Left + LeftInAtBack(height),
            _ => MeanOf(Left, height) + (BowAtMiddle(height) / 2),
        };

    public decimal Right(PlaceInPlan depth, decimal height) =>
        depth switch
        {
            PlaceInPlan.Front => _front.Lowest - FromRight(height) - ((1 - _shareOfLeft) * Change(_front, height)),
            PlaceInPlan.Back => Corners.Right - RightInAtBack(height),
            _ => MeanOf(Right, height) - (BowAtMiddle(height) / 2),
        };

    /// <summary>How far the left wall stands in at the back at a height: its lean, and its share of what leans do not explain.</summary>
    public decimal LeftInAtBack(decimal height) => FromLeft(height) + (_shareOfLeft * Change(_back, height));

    /// <summary>The same for the right wall.</summary>
    public decimal RightInAtBack(decimal height) => FromRight(height) + ((1 - _shareOfLeft) * Change(_back, height));

    /// <summary>The front width at the lowest reading, with the walls set plumb.</summary>
    public decimal LowestFront => _front.Lowest;

    private decimal FromLeft(decimal height) => _leanLeft.At(height);

    private decimal FromRight(decimal height) => _leanRight.At(height);

    /// <summary>How much narrower the recess is at a height than at the lowest reading, beyond what the leans explain.</summary>
    private static decimal Change(HeightProfile upright, decimal height) => upright.Lowest - upright.At(height);

    private static decimal MeanOf(Func<PlaceInPlan, decimal, decimal> wall, decimal height) =>
        (wall(PlaceInPlan.Front, height) + wall(PlaceInPlan.Back, height)) / 2;

    /// <summary>How much narrower the middle was read than straight walls make it.</summary>
    private decimal BowAtMiddle(decimal height)
    {
        if (!HasMiddle)
            return 0;
        var read = _middle.At(height) - FromLeft(height) - FromRight(height);
        return MeanOf(Right, height) - MeanOf(Left, height) - read;
    }

    /// <summary>The widths as they would be were both walls plumb.</summary>
    private HeightProfile Upright(SurveyedReadings readings, PlaceInPlan depth) =>
        new(
            readings
                .Narrowest(RoomReadingKind.Width, depth)
                .Select(w => (w.HeightNanometres, w.Nanometres + LeansAt(w.HeightNanometres)))
        );

    private decimal LeansAt(decimal height) => FromLeft(height) + FromRight(height);

    private static decimal ShareOfLeft(bool leftWasRead, bool rightWasRead) =>
        (leftWasRead, rightWasRead) switch
        {
            (true, true) => 0.5m,
            (false, true) => 1,
            _ => 0,
        };
}

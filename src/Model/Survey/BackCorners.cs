using Nookwright.Projects;

namespace Nookwright.Survey;

/// <summary>The x of the two back corners, with the side walls set plumb.</summary>
/// <param name="Left">Of the left one.</param>
/// <param name="Right">Of the right one.</param>
/// <param name="ByDiagonal">How many of them stand by a diagonal.</param>
/// <param name="Disagreement">How much wider the diagonals set them than the tape across the back says; nought unless all three were read.</param>
/// <param name="Impossible">Diagonals that no recess fits; they are left out.</param>
internal sealed record BackCorners(
    decimal Left,
    decimal Right,
    int ByDiagonal,
    decimal Disagreement,
    IReadOnlyList<TakenReading> Impossible
)
{
    public static BackCorners Unread { get; } = new(0, 0, 0, 0, []);

    /// <summary>By diagonals where there are any; the back width, or else the front one, sets the other corner.</summary>
    public static BackCorners Of(SurveyedReadings readings, BackWall back, SideWalls walls, decimal? backWidth)
    {
        var toLeft = Placed(readings, PlaceInPlan.RightFront, d => LeftBy(d, back, walls));
        var toRight = Placed(readings, PlaceInPlan.LeftFront, d => RightBy(d, back, walls));
        // Of repeats the one that leaves the least room.
        var (left, right) = (toLeft.Max(p => p.X), toRight.Min(p => p.X));
        if (left >= right)
            return Settle(null, null, backWidth, walls.LowestFront) with
            {
                Impossible = Diagonals([.. toLeft, .. toRight]),
            };
        var impossible = Diagonals([.. toLeft.Concat(toRight).Where(p => p.X is null)]);
        return Settle(left, right, backWidth, walls.LowestFront) with { Impossible = impossible };
    }

    private static List<TakenReading> Diagonals(IReadOnlyList<(TakenReading Diagonal, decimal? X)> placed) =>
        [.. placed.Select(p => p.Diagonal)];

    private static BackCorners Settle(decimal? left, decimal? right, decimal? backWidth, decimal frontWidth)
    {
        var width = backWidth ?? frontWidth;
        switch (left, right)
        {
            case (null, null):
                return new(0, width, 0, 0, []);
            case (null, { } r):
                return new(r - width, r, 1, 0, []);
            case ({ } l, null):
                return new(l, l + width, 1, 0, []);
        }
        var tooWide = backWidth is null ? 0 : right.Value - left.Value - width;
        return new(left.Value + (tooWide / 2), right.Value - (tooWide / 2), 2, tooWide, []);
    }

    private static List<(TakenReading Diagonal, decimal? X)> Placed(
        SurveyedReadings readings,
        PlaceInPlan from,
        Func<TakenReading, decimal?> place
    ) => [.. readings.Of(RoomReadingKind.Diagonal, from).Select(d => (d, place(d)))];

    private static decimal? LeftBy(TakenReading diagonal, BackWall back, SideWalls walls)
    {
        var height = diagonal.HeightNanometres;
        return Run(diagonal, back.At(PlaceInPlan.Left, height)) is { } run
            ? walls.Right(PlaceInPlan.Front, height) - run - walls.LeftInAtBack(height)
            : null;
    }

    private static decimal? RightBy(TakenReading diagonal, BackWall back, SideWalls walls)
    {
        var height = diagonal.HeightNanometres;
        return Run(diagonal, back.At(PlaceInPlan.Right, height)) is { } run
            ? walls.Left(PlaceInPlan.Front, height) + run + walls.RightInAtBack(height)
            : null;
    }

    /// <summary>How far a diagonal gets along the opening while it goes that deep (Pythagoras); null when it is too short.</summary>
    private static decimal? Run(TakenReading diagonal, decimal depth)
    {
        var square = (diagonal.Nanometres * diagonal.Nanometres) - (depth * depth);
        return square > 0 ? (decimal)Math.Sqrt((double)square) : null;
    }
}

using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Survey;

/// <summary>What of a wall's face lies between two heights: the four corners of that slice.</summary>
/// <remarks>The face is ruled by level lines, so that x and y have their extremes at these corners.</remarks>
internal static class FaceSlice
{
    /// <summary>The corners between two heights of all faces of one wall; heights beyond the faces count as their edge.</summary>
    public static IEnumerable<(decimal X, decimal Y)> Corners(IReadOnlyList<WallFace> faces, Length low, Length high)
    {
        if (faces.Count == 0)
            return [];
        var (bottom, top) = (faces.Min(Bottom), faces.Max(Top));
        var (from, to) = (Clamp(low, bottom, top), Clamp(high, bottom, top));
        return faces.Where(face => Bottom(face) <= to && Top(face) >= from).SelectMany(face => Corners(face, from, to));
    }

    private static IEnumerable<(decimal X, decimal Y)> Corners(WallFace face, Length low, Length high) =>
        [
            At(face.Corners[0], face.Corners[3], low),
            At(face.Corners[1], face.Corners[2], low),
            At(face.Corners[0], face.Corners[3], high),
            At(face.Corners[1], face.Corners[2], high),
        ];

    private static (decimal X, decimal Y) At(Point3 lower, Point3 upper, Length height)
    {
        var (bottom, top) = (lower.Z.Nanometres, upper.Z.Nanometres);
        if (top <= bottom)
            return (lower.X.Nanometres, lower.Y.Nanometres);
        decimal up = Math.Clamp(height.Nanometres, bottom, top) - bottom;
        decimal Between(Length from, Length to) => from.Nanometres + ((to - from).Nanometres * up / (top - bottom));
        return (Between(lower.X, upper.X), Between(lower.Y, upper.Y));
    }

    private static Length Bottom(WallFace face) => face.Corners.Min(corner => corner.Z);

    private static Length Top(WallFace face) => face.Corners.Max(corner => corner.Z);

    private static Length Clamp(Length height, Length bottom, Length top) =>
        Length.Min(Length.Max(height, bottom), top);
}

using Nookwright.Geometry;
using Nookwright.Measure;

namespace Nookwright.Survey;

/// <summary>What of a wall's face lies between two heights; a height above or below the face counts as its edge.</summary>
internal sealed class FaceSlice(WallFace face, Length low, Length high)
{
    /// <summary>The smallest y of it.</summary>
    public decimal Nearest => Ends.Min(end => Math.Min(end.Start.Y, end.End.Y));

    private (decimal X, decimal Y) LowStart => At(face.Corners[0], face.Corners[3], low);

    private (decimal X, decimal Y) LowEnd => At(face.Corners[1], face.Corners[2], low);

    private (decimal X, decimal Y) HighStart => At(face.Corners[0], face.Corners[3], high);

    private (decimal X, decimal Y) HighEnd => At(face.Corners[1], face.Corners[2], high);

    private IEnumerable<((decimal X, decimal Y) Start, (decimal X, decimal Y) End)> Ends =>
        [(LowStart, LowEnd), (HighStart, HighEnd)];

    /// <summary>True when the slice has some of the face: heights beyond all faces take the face that ends there.</summary>
    public static bool Reaches(WallFace face, IReadOnlyList<WallFace> all, Length low, Length high)
    {
        var (bottom, top) = (all.Min(Bottom), all.Max(Top));
        return Bottom(face) <= Clamp(high, bottom, top) && Top(face) >= Clamp(low, bottom, top);
    }

    /// <summary>The outermost values of x on a side wall's face from the opening to a depth.</summary>
    /// <remarks>
    /// The face is ruled by level lines, so x is linear along the depth and along the height: its extremes over a
    /// rectangle of the two lie at the corners. The rectangle taken reaches the depth at every height.
    /// </remarks>
    public IEnumerable<decimal> Across(decimal depth)
    {
        var ends = Ends.Select(end => end.Start.Y <= end.End.Y ? end : (Start: end.End, End: end.Start)).ToList();
        var reach = ends.Max(end => Share(end.Start.Y, end.End.Y, depth));
        return reach < 0 ? [] : ends.SelectMany(end => new[] { end.Start.X, Along(end.Start.X, end.End.X, reach) });
    }

    private static decimal Share(decimal near, decimal far, decimal depth)
    {
        if (depth < near)
            return -1;
        return depth >= far ? 1 : (depth - near) / (far - near);
    }

    private static decimal Along(decimal from, decimal to, decimal share) => from + ((to - from) * share);

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

using Nookwright.Measure;

namespace Nookwright.Geometry;

/// <summary>A closed outline of straight edges in a plane, exact; corners run anticlockwise, the last joins the first.</summary>
/// <remarks>Two outlines are equal when they have the same corners in the same order.</remarks>
public sealed class Outline : IEquatable<Outline>
{
    private const double SquareNanometresPerSquareMillimetre = 1e12;

    /// <summary>An outline through these corners, at least three, in either turning sense; it must not cross itself.</summary>
    public Outline(IEnumerable<Point2> corners)
    {
        var given = corners.ToArray();
        ArgumentOutOfRangeException.ThrowIfLessThan(given.Length, 3, nameof(corners));
        Corners = TwiceSignedArea(given) < 0 ? [.. given.Reverse()] : given;
        Low = new(Corners.Min(c => c.X), Corners.Min(c => c.Y));
        High = new(Corners.Max(c => c.X), Corners.Max(c => c.Y));
    }

    /// <summary>The corners, anticlockwise.</summary>
    public IReadOnlyList<Point2> Corners { get; }

    /// <summary>The smallest x and y.</summary>
    public Point2 Low { get; }

    /// <summary>The largest x and y.</summary>
    public Point2 High { get; }

    /// <summary>True for a rectangle along the axes.</summary>
    public bool IsRectangle =>
        Corners.Count == 4 && Corners.All(c => (c.X == Low.X || c.X == High.X) && (c.Y == Low.Y || c.Y == High.Y));

    /// <summary>The area inside, in square millimetres.</summary>
    public double AreaSquareMillimetres => (double)TwiceSignedArea(Corners) / 2 / SquareNanometresPerSquareMillimetre;

    /// <summary>A rectangle with a corner at the origin.</summary>
    public static Outline Rectangle(Length width, Length height) =>
        new([Point2.Origin, new(width, Length.Zero), new(width, height), new(Length.Zero, height)]);

    /// <summary>The same outline moved.</summary>
    public Outline MovedBy(Point2 vector) => new(Corners.Select(c => c + vector));

    /// <inheritdoc/>
    public bool Equals(Outline? other) => other is not null && Corners.SequenceEqual(other.Corners);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Outline);

    /// <inheritdoc/>
    public override int GetHashCode() => Corners.Aggregate(17, HashCode.Combine);

    /// <summary>In square nanometres, exact: seen from the first corner, so that a sliver far from the origin keeps its sense.</summary>
    private static Int128 TwiceSignedArea(IReadOnlyList<Point2> corners)
    {
        Int128 sum = 0;
        for (var i = 1; i + 1 < corners.Count; i++)
        {
            var (a, b) = (corners[i] - corners[0], corners[i + 1] - corners[0]);
            sum += ((Int128)a.X.Nanometres * b.Y.Nanometres) - ((Int128)a.Y.Nanometres * b.X.Nanometres);
        }
        return sum;
    }
}

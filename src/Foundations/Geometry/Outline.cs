using Nookwright.Measure;

namespace Nookwright.Geometry;

/// <summary>A closed outline of straight edges in a plane, exact; corners run anticlockwise, the last joins the first.</summary>
/// <remarks>Two outlines are equal when they have the same corners in the same order.</remarks>
public sealed class Outline : IEquatable<Outline>
{
    /// <summary>An outline through these corners, at least three, in either turning sense; it must not cross itself.</summary>
    public Outline(IEnumerable<Point2> corners)
    {
        var given = corners.ToArray();
        ArgumentOutOfRangeException.ThrowIfLessThan(given.Length, 3, nameof(corners));
        Corners = SignedArea(given) < 0 ? [.. given.Reverse()] : given;
    }

    /// <summary>The corners, anticlockwise.</summary>
    public IReadOnlyList<Point2> Corners { get; }

    /// <summary>The smallest x and y.</summary>
    public Point2 Low => new(Corners.Min(c => c.X), Corners.Min(c => c.Y));

    /// <summary>The largest x and y.</summary>
    public Point2 High => new(Corners.Max(c => c.X), Corners.Max(c => c.Y));

    /// <summary>True for a rectangle along the axes.</summary>
    public bool IsRectangle =>
        Corners.Count == 4 && Corners.All(c => (c.X == Low.X || c.X == High.X) && (c.Y == Low.Y || c.Y == High.Y));

    /// <summary>The area inside, in square millimetres.</summary>
    public double AreaSquareMillimetres => SignedArea(Corners);

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

    private static double SignedArea(IReadOnlyList<Point2> corners)
    {
        var sum = 0.0;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            sum += (a.X.Millimetres * b.Y.Millimetres) - (b.X.Millimetres * a.Y.Millimetres);
        }
        return sum / 2;
    }
}

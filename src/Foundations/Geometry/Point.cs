using Nookwright.Measure;

namespace Nookwright.Geometry;

/// <summary>A point in a plane, exact.</summary>
/// <param name="X">Along the plane's first axis.</param>
/// <param name="Y">Along the plane's second axis.</param>
public readonly record struct Point2(Length X, Length Y)
{
    /// <summary>The origin.</summary>
    public static Point2 Origin => default;

    /// <summary>Moved by a vector.</summary>
    public static Point2 operator +(Point2 a, Point2 b) => new(a.X + b.X, a.Y + b.Y);

    /// <summary>The vector from one to the other.</summary>
    public static Point2 operator -(Point2 a, Point2 b) => new(a.X - b.X, a.Y - b.Y);
}

/// <summary>A point in space, exact.</summary>
/// <param name="X">In the room: along the opening, to the right.</param>
/// <param name="Y">In the room: into the recess, away from someone standing in front of it.</param>
/// <param name="Z">In the room: up.</param>
public readonly record struct Point3(Length X, Length Y, Length Z)
{
    /// <summary>The origin.</summary>
    public static Point3 Origin => default;

    /// <summary>Moved by a vector.</summary>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The vector from one to the other.</summary>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);
}

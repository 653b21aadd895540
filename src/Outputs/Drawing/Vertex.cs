using Nookwright.Geometry;

namespace Nookwright.Drawing;

/// <summary>A point or a vector of the room's frame in real millimetres, for drawing only; sizes stay in exact lengths.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Into the recess.</param>
/// <param name="Z">Up.</param>
public readonly record struct Vertex(double X, double Y, double Z)
{
    /// <summary>A point of the room, for drawing.</summary>
    public static Vertex Of(Point3 point) => new(point.X.Millimetres, point.Y.Millimetres, point.Z.Millimetres);

    /// <summary>Its length as a vector.</summary>
    public double Magnitude => Math.Sqrt(Dot(this));

    /// <summary>The product that is zero for square vectors.</summary>
    public double Dot(Vertex other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>The vector square to both, right-handed.</summary>
    public Vertex Cross(Vertex o) => new((Y * o.Z) - (Z * o.Y), (Z * o.X) - (X * o.Z), (X * o.Y) - (Y * o.X));

    /// <summary>The same direction, one millimetre long; a zero vector stays as it is.</summary>
    public Vertex Unit() => Magnitude is var length && length > 0 ? this * (1 / length) : this;

    /// <summary>Moved by a vector.</summary>
    public static Vertex operator +(Vertex a, Vertex b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>The vector from one to the other.</summary>
    public static Vertex operator -(Vertex a, Vertex b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>The other way round.</summary>
    public static Vertex operator -(Vertex a) => new(-a.X, -a.Y, -a.Z);

    /// <summary>So many times.</summary>
    public static Vertex operator *(Vertex a, double times) => new(a.X * times, a.Y * times, a.Z * times);
}

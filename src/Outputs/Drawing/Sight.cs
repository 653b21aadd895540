namespace Nookwright.Drawing;

/// <summary>From where a view is taken, very far away, so that parallel edges stay parallel.</summary>
/// <param name="Right">What goes to the right of the picture; one millimetre long, in the room's frame.</param>
/// <param name="Up">What goes up the picture; square to right.</param>
internal readonly record struct Sight(Vertex Right, Vertex Up)
{
    /// <summary>Someone in front of the recess.</summary>
    public static Sight FromFront => new(new(1, 0, 0), new(0, 0, 1));

    /// <summary>Someone beyond the left wall.</summary>
    public static Sight FromLeft => new(new(0, -1, 0), new(0, 0, 1));

    /// <summary>Someone beyond the right wall.</summary>
    public static Sight FromRight => new(new(0, 1, 0), new(0, 0, 1));

    /// <summary>Someone above.</summary>
    public static Sight FromAbove => new(new(1, 0, 0), new(0, 1, 0));

    /// <summary>From the picture to the eye.</summary>
    public Vertex Towards => Right.Cross(Up);

    /// <summary>Someone in front who has stepped aside and looks down.</summary>
    /// <param name="asideDegrees">How far to the right of straight in front; negative to the left.</param>
    /// <param name="aboveDegrees">How far above level.</param>
    public static Sight FromFrontAbove(double asideDegrees, double aboveDegrees)
    {
        var (sinAside, cosAside) = Math.SinCos(asideDegrees * Math.PI / 180);
        var (sinAbove, cosAbove) = Math.SinCos(aboveDegrees * Math.PI / 180);
        var right = new Vertex(cosAside, sinAside, 0);
        return new(right, new(-sinAside * sinAbove, cosAside * sinAbove, cosAbove));
    }

    /// <summary>Where a point is seen: full size, x to the right, y down.</summary>
    public Spot See(Vertex point) => new(point.Dot(Right), -point.Dot(Up));

    /// <summary>How near the eye a point is; larger is nearer.</summary>
    public double Nearness(Vertex point) => point.Dot(Towards);
}

namespace Nookwright.Drawing;

/// <summary>How one face lies to another as seen.</summary>
internal enum Cover
{
    /// <summary>They are seen beside each other.</summary>
    Apart,

    /// <summary>The first is nearer where they overlap.</summary>
    Over,

    /// <summary>The second is nearer, or both lie in one plane.</summary>
    Under,

    /// <summary>Each is nearer somewhere.</summary>
    Through,
}

/// <summary>A face as seen: its convex pieces on the picture, and how near it is everywhere.</summary>
internal sealed class SeenFacet
{
    private readonly SeenPiece[] _pieces;
    private readonly SeenBox _box;

    // nearness = _perX · x + _perY · y + _atOrigin
    private readonly double _perX;
    private readonly double _perY;
    private readonly double _atOrigin;

    public SeenFacet(Facet facet, Sight sight)
    {
        _pieces = [.. facet.Pieces.Select(p => new SeenPiece(p, sight))];
        _box = _pieces.Select(p => p.Box).Aggregate((a, b) => a.With(b));
        var tilt = facet.Normal.Dot(sight.Towards);
        _perX = -facet.Normal.Dot(sight.Right) / tilt;
        _perY = -facet.Normal.Dot(sight.Up) / tilt;
        _atOrigin = facet.Normal.Dot(facet.Pieces[0].Corners[0]) / tilt;
    }

    public Cover Compare(SeenFacet other)
    {
        if (!_box.Overlaps(other._box))
            return Cover.Apart;
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var mine in _pieces)
        foreach (var theirs in other._pieces)
        {
            if (!mine.Box.Overlaps(theirs.Box))
                continue;
            foreach (var (x, y) in SeenPiece.Overlap(mine, theirs))
            {
                var nearer = ((_perX - other._perX) * x) + ((_perY - other._perY) * y) + _atOrigin - other._atOrigin;
                (least, most) = (Math.Min(least, nearer), Math.Max(most, nearer));
            }
        }
        return (least < -PaintingOrder.Touching, most > PaintingOrder.Touching) switch
        {
            (true, true) => Cover.Through,
            (false, true) => Cover.Over,
            (true, false) => Cover.Under,
            _ => most >= least ? Cover.Under : Cover.Apart,
        };
    }
}

/// <summary>A rectangle along the picture's axes.</summary>
internal readonly record struct SeenBox(double Left, double Low, double Right, double High)
{
    public SeenBox With(SeenBox o) =>
        new(Math.Min(Left, o.Left), Math.Min(Low, o.Low), Math.Max(Right, o.Right), Math.Max(High, o.High));

    public bool Overlaps(SeenBox other) =>
        Left < other.Right - PaintingOrder.Touching
        && other.Left < Right - PaintingOrder.Touching
        && Low < other.High - PaintingOrder.Touching
        && other.Low < High - PaintingOrder.Touching;
}

/// <summary>A convex piece on the picture: x to the right, y up, anticlockwise.</summary>
internal sealed class SeenPiece
{
    private readonly (double X, double Y)[] _corners;

    public SeenPiece(ConvexPiece piece, Sight sight)
    {
        _corners = [.. piece.Corners.Select(c => (c.Dot(sight.Right), c.Dot(sight.Up)))];
        Box = new(_corners.Min(c => c.X), _corners.Min(c => c.Y), _corners.Max(c => c.X), _corners.Max(c => c.Y));
    }

    public SeenBox Box { get; }

    /// <summary>The corners of what two pieces share (Sutherland and Hodgman 1974); none when they share a line or less.</summary>
    public static IReadOnlyList<(double X, double Y)> Overlap(SeenPiece a, SeenPiece b)
    {
        var shared = new List<(double X, double Y)>(a._corners);
        for (var i = 0; i < b._corners.Length && shared.Count > 0; i++)
            shared = LeftOf(shared, b._corners[i], b._corners[(i + 1) % b._corners.Length]);
        return IsThin(shared) ? [] : shared;
    }

    private static List<(double X, double Y)> LeftOf(
        List<(double X, double Y)> corners,
        (double X, double Y) from,
        (double X, double Y) to
    )
    {
        var (dx, dy) = (to.X - from.X, to.Y - from.Y);
        double Side((double X, double Y) p) => (dx * (p.Y - from.Y)) - (dy * (p.X - from.X));
        var kept = new List<(double X, double Y)>(corners.Count + 1);
        for (var i = 0; i < corners.Count; i++)
        {
            var (here, next) = (corners[i], corners[(i + 1) % corners.Count]);
            var (a, b) = (Side(here), Side(next));
            if (a >= 0)
                kept.Add(here);
            if ((a > 0 && b < 0) || (a < 0 && b > 0))
                kept.Add((here.X + ((next.X - here.X) * a / (a - b)), here.Y + ((next.Y - here.Y) * a / (a - b))));
        }
        return kept;
    }

    /// <summary>True when an area is nowhere wider than what counts as touching: twice the area over its span is its width.</summary>
    private static bool IsThin(List<(double X, double Y)> corners)
    {
        if (corners.Count < 3)
            return true;
        var (twiceArea, span) = (0.0, 0.0);
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            twiceArea += (a.X * b.Y) - (a.Y * b.X);
            span = Math.Max(span, Math.Abs(a.X - corners[0].X) + Math.Abs(a.Y - corners[0].Y));
        }
        return twiceArea <= PaintingOrder.Touching * span;
    }
}

namespace Nookwright.Drawing;

/// <summary>Where things as seen at full size come to lie on a picture: reduced and moved.</summary>
/// <param name="Scale">Millimetres of picture per millimetre seen.</param>
/// <param name="Right">How far the seen origin lies from the picture's left edge.</param>
/// <param name="Down">How far it lies below its top edge.</param>
internal readonly record struct OnPaper(double Scale, double Right, double Down)
{
    /// <summary>Where something seen lies on the picture.</summary>
    public Spot At(Spot seen) => new(Right + (seen.X * Scale), Down + (seen.Y * Scale));

    /// <summary>The other way: what is seen at a spot of the picture.</summary>
    public Spot SeenAt(Spot spot) => new((spot.X - Right) / Scale, (spot.Y - Down) / Scale);

    /// <summary>As large as a frame allows, in its middle.</summary>
    public static OnPaper Fitting(Window seen, Window frame) =>
        Centred(Math.Min(frame.Width / seen.Width, frame.Height / seen.Height), seen, frame);

    /// <summary>At a given scale, in the middle of a frame.</summary>
    public static OnPaper Centred(double scale, Window seen, Window frame) =>
        new(
            scale,
            frame.Left + ((frame.Width - (seen.Width * scale)) / 2) - (seen.Left * scale),
            frame.Top + ((frame.Height - (seen.Height * scale)) / 2) - (seen.Top * scale)
        );
}

/// <summary>A rectangle of a picture, or of what is seen.</summary>
internal readonly record struct Window(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public Spot Middle => new((Left + Right) / 2, (Top + Bottom) / 2);

    /// <summary>A whole picture less a margin.</summary>
    public static Window Of(double width, double height, double margin = 0) =>
        new(margin, margin, width - margin, height - margin);

    /// <summary>What some spots take up; a millimetre at the origin when there are none.</summary>
    public static Window Around(IEnumerable<Spot> spots)
    {
        Window? window = null;
        foreach (var (x, y) in spots)
            window = window is { } w
                ? new(Math.Min(w.Left, x), Math.Min(w.Top, y), Math.Max(w.Right, x), Math.Max(w.Bottom, y))
                : new(x, y, x, y);
        return window ?? new(0, 0, 1, 1);
    }

    public Window Grown(double by) => new(Left - by, Top - by, Right + by, Bottom + by);

    public bool Overlaps(Window o) => Left < o.Right && o.Left < Right && Top < o.Bottom && o.Top < Bottom;

    public bool Holds(Window o) => o.Left >= Left && o.Right <= Right && o.Top >= Top && o.Bottom <= Bottom;

    public bool Contains(Spot spot) => spot.X >= Left && spot.X <= Right && spot.Y >= Top && spot.Y <= Bottom;

    public IReadOnlyList<Spot> Corners => [new(Left, Top), new(Right, Top), new(Right, Bottom), new(Left, Bottom)];
}

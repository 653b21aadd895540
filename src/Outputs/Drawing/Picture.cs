namespace Nookwright.Drawing;

/// <summary>A drawing without paper: marks in millimetres of the finished picture, origin at the top left, y down.</summary>
/// <remarks>Written as SVG for the screen and as PDF for the packet from the same marks, so that both show the same.</remarks>
/// <param name="Width">In millimetres.</param>
/// <param name="Height">In millimetres.</param>
/// <param name="Marks">In painting order.</param>
/// <param name="Title">What it shows, for people who cannot see it.</param>
public sealed record Picture(double Width, double Height, IReadOnlyList<Mark> Marks, string Title);

/// <summary>A point of a picture, in millimetres.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
public readonly record struct Spot(double X, double Y);

/// <summary>What a line is for; each back end gives it one look, legible in black and white.</summary>
public enum Pen
{
    /// <summary>No line.</summary>
    None,

    /// <summary>The outline of a thing looked at: 0.5 mm.</summary>
    Outline,

    /// <summary>An edge inside an outline, furniture of a drawing, tables: 0.25 mm.</summary>
    Thin,

    /// <summary>Dimension and leader lines: 0.18 mm.</summary>
    Dimension,

    /// <summary>What is behind: dashed, 0.25 mm.</summary>
    Hidden,

    /// <summary>A cut line of a saw: 0.7 mm.</summary>
    Cut,

    /// <summary>The room: 0.35 mm, grey.</summary>
    Room,
}

/// <summary>What an area is; each back end gives it one look, legible in black and white.</summary>
public enum Fill
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Paper white, hides what is behind.</summary>
    Paper,

    /// <summary>Wood, lightest of three shades.</summary>
    Light,

    /// <summary>Wood, middle shade.</summary>
    Middle,

    /// <summary>Wood, darkest shade.</summary>
    Dark,

    /// <summary>Part of the room.</summary>
    Room,

    /// <summary>Left over: hatched at 45 degrees.</summary>
    Hatch,

    /// <summary>Kept oversize for a held part: cross-hatched.</summary>
    Held,

    /// <summary>Solid black.</summary>
    Ink,
}

/// <summary>Where a label's spot is on it.</summary>
public enum Anchor
{
    /// <summary>At its start.</summary>
    Start,

    /// <summary>In its middle.</summary>
    Middle,

    /// <summary>At its end.</summary>
    End,
}

/// <summary>Something drawn.</summary>
public abstract record Mark
{
    private Mark() { }

    /// <summary>A straight line.</summary>
    public sealed record Line(Spot From, Spot To, Pen Pen) : Mark;

    /// <summary>Joined straight lines, closed when filled or when <paramref name="Closed"/>.</summary>
    public sealed record Path(IReadOnlyList<Spot> Spots, bool Closed, Fill Fill, Pen Pen) : Mark;

    /// <summary>A circle.</summary>
    public sealed record Circle(Spot Centre, double Radius, Fill Fill, Pen Pen) : Mark;

    /// <summary>One line of text. A fraction inside is written <c>23 3⁄4</c> with U+2044 and set raised and lowered.</summary>
    /// <param name="Text">What it says.</param>
    /// <param name="At">Its spot on the baseline.</param>
    /// <param name="Size">The height of its letters' em, in millimetres.</param>
    /// <param name="Anchor">Where on the text its spot is.</param>
    /// <param name="Turn">Degrees anticlockwise about the spot.</param>
    /// <param name="Bold">True for bold.</param>
    public sealed record Label(
        string Text,
        Spot At,
        double Size,
        Anchor Anchor = Anchor.Start,
        double Turn = 0,
        bool Bold = false
    ) : Mark;

    /// <summary>Marks that belong to one thing of the job.</summary>
    /// <param name="About">The thing's id (<c>box-2.left-side</c>), so that it can be found and picked; null for furniture.</param>
    /// <param name="Marks">What it is drawn with.</param>
    /// <param name="Caption">What it is, for people who cannot see it.</param>
    public sealed record Group(string? About, IReadOnlyList<Mark> Marks, string? Caption = null) : Mark;
}

using Nookwright.Lettering;

namespace Nookwright.Drawing;

/// <summary>What is written on an area: a letter as large as it takes, a size, and which way the figure runs.</summary>
/// <remarks>The letter is always written; size and arrow only where there is room. Upright areas are read from the right.</remarks>
/// <param name="Letter">The letter, or a name.</param>
/// <param name="Size">The size, or more.</param>
internal sealed record AreaLabel(string Letter, string Size)
{
    private const double SizeText = 2.6;
    private const double SmallestLetter = 2.6;
    private const double Gap = 1.4;
    private const double ArrowLength = 8;

    /// <summary>On a patch of paper, where the area is hatched.</summary>
    public bool OnPatch { get; init; }

    /// <summary>Which way the figure runs, in degrees anticlockwise from level; null when either way will do.</summary>
    public double? FigureTurn { get; init; }

    /// <summary>The largest em of the letter.</summary>
    public double Largest { get; init; } = 8;

    /// <summary>True when at least the letter fits into a window, upright or turned.</summary>
    public bool FitsIn(Window window) =>
        TextMetrics.Width(Letter, SmallestLetter, true) + 1 <= Math.Max(window.Width, window.Height)
        && SmallestLetter <= Math.Min(window.Width, window.Height);

    /// <summary>The marks in a window.</summary>
    public IEnumerable<Mark> In(Window window)
    {
        var isTurned = window.Height > window.Width && WidthNeeded > window.Width;
        var (along, across) = isTurned ? (window.Height, window.Width) : (window.Width, window.Height);
        var lines = new Turned(window.Middle, isTurned);
        var letter = Math.Clamp(across * 0.5, SmallestLetter, Largest);
        letter = Math.Max(
            SmallestLetter,
            Math.Min(letter, letter * (along - 2) / TextMetrics.Width(Letter, letter, true))
        );
        var hasRoomBelow = across > (letter * 0.8) + SizeText + 3 && (Size.Length > 0 || FigureTurn is not null);
        return hasRoomBelow ? Stacked(lines, letter, along, across) : InLine(lines, letter, along);
    }

    private double WidthNeeded =>
        2 + Math.Max(TextMetrics.Width(Size, SizeText), TextMetrics.Width(Letter, SizeText, true));

    private IEnumerable<Mark> Stacked(Turned lines, double letter, double along, double across)
    {
        var showsSize = Size.Length > 0 && TextMetrics.Width(Size, SizeText) + 1 < along;
        var arrowHeight = IsAlongText(lines) ? 2 : ArrowLength;
        var showsArrow =
            FigureTurn is not null && across > (letter * 0.8) + SizeText + arrowHeight + 5 && along > ArrowLength + 2;
        var up = showsArrow ? (arrowHeight / 2) + 1.2 : 0;
        foreach (var mark in Written(lines, Letter, letter, 0, up - (letter * 0.1), true))
            yield return mark;
        if (showsSize)
            foreach (var mark in Written(lines, Size, SizeText, 0, up - (letter * 0.25) - SizeText, false))
                yield return mark;
        if (showsArrow)
            foreach (var mark in Arrow(lines.At(0, up - (letter * 0.25) - SizeText - 2.2 - (arrowHeight / 2))))
                yield return mark;
    }

    private IEnumerable<Mark> InLine(Turned lines, double letter, double along)
    {
        var (letterWidth, sizeWidth) = (TextMetrics.Width(Letter, letter, true), TextMetrics.Width(Size, SizeText));
        var showsSize = Size.Length > 0 && letterWidth + Gap + sizeWidth + 1 < along;
        var total = showsSize ? letterWidth + Gap + sizeWidth : letterWidth;
        var down = -letter * TextMetrics.CapitalHeight / 2;
        if (showsSize)
            foreach (var mark in Written(lines, Size, SizeText, (total - sizeWidth) / 2, down, false))
                yield return mark;
        foreach (var mark in Written(lines, Letter, letter, (letterWidth - total) / 2, down, true))
            yield return mark;
        if (IsAlongText(lines) && along > total + (2 * ArrowLength) + 4)
            foreach (var mark in Arrow(lines.At((total / 2) + Gap + (ArrowLength / 2), 0)))
                yield return mark;
    }

    private IEnumerable<Mark> Written(Turned lines, string text, double size, double right, double up, bool bold)
    {
        if (OnPatch)
        {
            var half = (TextMetrics.Width(text, size, bold) / 2) + 0.6;
            var (low, high) = (up - (size * 0.12), up + (size * 0.85));
            Spot[] patch =
            [
                lines.At(right - half, low),
                lines.At(right + half, low),
                lines.At(right + half, high),
                lines.At(right - half, high),
            ];
            yield return new Mark.Path(patch, true, Fill.Paper, Pen.None);
        }
        yield return new Mark.Label(text, lines.At(right, up), size, Anchor.Middle, lines.Turn, bold);
    }

    private bool IsAlongText(Turned lines) => FigureTurn == lines.Turn;

    private IEnumerable<Mark> Arrow(Spot middle) => FigureArrow.Of(middle, ArrowLength, FigureTurn ?? 0);

    /// <summary>A place to write: right and up as read, from the middle of the area.</summary>
    private readonly record struct Turned(Spot Middle, bool IsTurned)
    {
        public double Turn => IsTurned ? 90 : 0;

        public Spot At(double right, double up) =>
            IsTurned ? new(Middle.X - up, Middle.Y - right) : new(Middle.X + right, Middle.Y - up);
    }
}

/// <summary>The arrow that says which way the figure runs: a head at both ends.</summary>
internal static class FigureArrow
{
    private const double Head = 1.6;

    /// <summary>The arrow.</summary>
    /// <param name="middle">Its middle.</param>
    /// <param name="length">From tip to tip.</param>
    /// <param name="turn">Degrees anticlockwise from level.</param>
    public static IEnumerable<Mark> Of(Spot middle, double length, double turn)
    {
        var (sin, cos) = Math.SinCos(turn * Math.PI / 180);
        Spot At(double along, double across) =>
            new(middle.X + (along * cos) - (across * sin), middle.Y - (along * sin) - (across * cos));
        var tip = length / 2;
        yield return new Mark.Line(At(-tip, 0), At(tip, 0), Pen.Thin);
        foreach (var end in new[] { -1, 1 })
            yield return new Mark.Path(
                [At(end * (tip - Head), Head / 2), At(end * tip, 0), At(end * (tip - Head), -Head / 2)],
                false,
                Fill.None,
                Pen.Thin
            );
    }
}

using Nookwright.Lettering;

namespace Nookwright.Drawing;

/// <summary>Finds places for the numbers of cuts and their distances, clear of each other and of what is written on the sheet.</summary>
/// <remarks>
/// A number stands beyond the end of its line at the sheet's edge, or on the line; where that is taken, beside it with a thin
/// leader. Where there is no room for its distance the number stands alone: the list of cuts tells the distance.
/// </remarks>
/// <param name="written">What is taken already.</param>
/// <param name="lines">All cuts of the sheet: a number keeps off the lines of the others.</param>
/// <param name="label">The distance of a cut, by its place among the lines and by how its text is turned.</param>
internal sealed class CutNumbers(
    IEnumerable<Window> written,
    IReadOnlyList<CutLine> lines,
    Func<int, double, string> label
)
{
    private const double TextSize = 3;
    private const double RingRadius = 2.4;
    private const double Beyond = RingRadius + 1;

    private readonly List<Window> _taken = [.. written];
    private int _next;

    /// <summary>The marks of one cut's number; asked for in the order of the lines.</summary>
    public IEnumerable<Mark> Place(CutLine line, int number)
    {
        var (place, text) = Free(line, _next++);
        return
        [
            .. place.From is { } from ? [new Mark.Line(from, place.Ring, Pen.Thin)] : Array.Empty<Mark>(),
            .. Patch(place, text, line.Sheet),
            .. Ring(place.Ring, number),
            .. text.Length > 0 ? [Distance(place, text)] : Array.Empty<Mark>(),
        ];
    }

    private (NumberPlace Place, string Text) Free(CutLine line, int index)
    {
        var others = lines.Where(l => l != line).Select(l => l.Window).ToList();
        NumberPlace[] places = [.. Near(line), .. Beside(line)];
        foreach (var (isTold, kept) in new[] { (true, others), (false, others), (false, []) })
        foreach (var place in places)
        {
            var text = isTold ? label(index, place.Turn) : "";
            if (!IsFree(place, text, kept, line.Sheet))
                continue;
            _taken.AddRange(Taken(place, text));
            return (place, text);
        }
        var around = Around(line).FirstOrDefault(p => IsRingFree(p, line.Sheet), new(line.At(0.5), 0));
        _taken.Add(Boxed(around, ""));
        return (around, "");
    }

    private bool IsRingFree(NumberPlace place, Window sheet) =>
        Boxed(place, "") is var ring
        && sheet.Grown(SheetDrawing.Margin - 0.5).Holds(ring)
        && !_taken.Any(ring.Overlaps);

    private bool IsFree(NumberPlace place, string text, List<Window> lines, Window sheet)
    {
        var paper = sheet.Grown(SheetDrawing.Margin - 0.5);
        var isOut = place.From is not null;
        if (text.Length > 0 && Leader(place).Any(TextBox(place, text).Overlaps))
            return false;
        return Taken(place, text)
                .All(w => paper.Holds(w) && !_taken.Any(w.Overlaps) && (isOut || !lines.Any(w.Overlaps)))
            && (!isOut || IsClear(Boxed(place, text), lines, sheet));
    }

    // With a leader there is room to keep off the sheet's edge too.
    private static bool IsClear(Window box, List<Window> lines, Window sheet) =>
        !lines.Any(box.Overlaps) && (sheet.Holds(box) || !sheet.Overlaps(box));

    /// <summary>Beyond an end of the line at the sheet's edge, else on the line.</summary>
    private static IEnumerable<NumberPlace> Near(CutLine line)
    {
        foreach (var (end, turn) in Ends(line))
            yield return new(end(0), turn);
        foreach (
            var share in new[] { 0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9, 0.05, 0.95, 0.43, 0.57, 0.28, 0.72, 0.15, 0.85 }
        )
            yield return new(line.At(share), line.IsUpright ? 90 : 0);
    }

    /// <summary>With a leader: beyond the sheet's edge but farther along it, else beside the line.</summary>
    private static IEnumerable<NumberPlace> Beside(CutLine line)
    {
        var steps = Enumerable.Range(1, 20).SelectMany(i => new[] { i * 2.5, i * -2.5 }).ToList();
        foreach (var step in steps)
        foreach (var (end, turn) in Ends(line))
            yield return new(end(step), turn) { From = OnEdge(end(0), line.Sheet) };
        foreach (var slant in new[] { 0.0, 4, -4, 8, -8 })
        foreach (var step in steps)
        foreach (var share in new[] { 0.5, 0.3, 0.7, 0.1, 0.9 })
        {
            var from = line.At(share);
            var ring = line.IsUpright
                ? new Spot(from.X + step, from.Y + slant)
                : new Spot(from.X + slant, from.Y + step);
            yield return new(ring, 0) { From = from };
        }
    }

    /// <summary>
    /// In any direction, for a line so short or so crowded that all of it lies under writing: only there may a leader cross some.
    /// </summary>
    private static IEnumerable<NumberPlace> Around(CutLine line)
    {
        const int Ways = 24;
        for (var far = 5.0; far <= 80; far += 2.5)
        for (var way = 0; way < Ways; way++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * way / Ways);
            var from = line.At(0.5);
            yield return new(new(from.X + (far * cos), from.Y + (far * sin)), 0) { From = from };
        }
    }

    /// <summary>The ends of a line that lie on the sheet's edge: where a ring stands so far along that edge, and its text's turn.</summary>
    private static IEnumerable<(Func<double, Spot> At, double Turn)> Ends(CutLine line)
    {
        var (from, to, isUpright, sheet) = line;
        if (isUpright && from.Y <= sheet.Top + 0.5)
            yield return (along => new(from.X + along, sheet.Top - Beyond), 0);
        if (isUpright && to.Y >= sheet.Bottom - 0.5)
            yield return (along => new(to.X + along, sheet.Bottom + Beyond), 0);
        if (!isUpright && from.X <= sheet.Left + 0.5)
            yield return (along => new(sheet.Left - Beyond, from.Y + along), 90);
        if (!isUpright && to.X >= sheet.Right - 0.5)
            yield return (along => new(sheet.Right + Beyond, to.Y + along), 90);
    }

    private static Spot OnEdge(Spot beyond, Window sheet) =>
        new(Math.Clamp(beyond.X, sheet.Left, sheet.Right), Math.Clamp(beyond.Y, sheet.Top, sheet.Bottom));

    /// <summary>What a number takes up: its ring and text, and its leader.</summary>
    private static IEnumerable<Window> Taken(NumberPlace place, string text) =>
        Leader(place).Prepend(Boxed(place, text));

    /// <summary>A leader in short stretches, up to the ring.</summary>
    private static IEnumerable<Window> Leader(NumberPlace place)
    {
        if (place.From is not { } from)
            yield break;
        const int Stretches = 8;
        Spot Along(int i) =>
            new(from.X + ((place.Ring.X - from.X) * i / Stretches), from.Y + ((place.Ring.Y - from.Y) * i / Stretches));
        for (var i = 0; i < Stretches; i++)
            yield return Window.Around([Along(i), Along(i + 1)]).Grown(0.1);
    }

    private static Window TextBox(NumberPlace place, string text)
    {
        var box = Boxed(place, text);
        return place.Turn == 0
            ? box with
            {
                Left = place.Ring.X + RingRadius,
            }
            : box with
            {
                Bottom = place.Ring.Y - RingRadius,
            };
    }

    private static Window Boxed(NumberPlace place, string text)
    {
        var ring = place.Ring;
        var length = text.Length == 0 ? RingRadius : RingRadius + 1 + TextMetrics.Width(text, TextSize) + 1;
        return place.Turn == 0
            ? new(ring.X - RingRadius, ring.Y - RingRadius, ring.X + length, ring.Y + RingRadius)
            : new(ring.X - RingRadius, ring.Y - length, ring.X + RingRadius, ring.Y + RingRadius);
    }

    /// <summary>Paper under a distance that is written on the sheet.</summary>
    private static IEnumerable<Mark> Patch(NumberPlace place, string text, Window sheet)
    {
        if (text.Length > 0 && sheet.Contains(place.Ring))
            yield return new Mark.Path(Boxed(place, text).Grown(-0.6).Corners, true, Fill.Paper, Pen.None);
    }

    private static IEnumerable<Mark> Ring(Spot at, int number)
    {
        yield return new Mark.Circle(at, RingRadius, Fill.Paper, Pen.Thin);
        var baseline = at.Y + (TextSize * TextMetrics.CapitalHeight / 2);
        yield return new Mark.Label($"{number}", new(at.X, baseline), SizeOf(number), Anchor.Middle, Bold: true);
    }

    // Three figures in a ring for two.
    private static double SizeOf(int number) => number < 100 ? TextSize : TextSize * 0.75;

    private static Mark.Label Distance(NumberPlace place, string text)
    {
        var (ring, aside, drop) = (place.Ring, RingRadius + 0.8, TextSize * TextMetrics.CapitalHeight / 2);
        var at = place.Turn == 0 ? new Spot(ring.X + aside, ring.Y + drop) : new Spot(ring.X + drop, ring.Y - aside);
        return new(text, at, TextSize, Turn: place.Turn);
    }

    /// <summary>Where a number may stand.</summary>
    /// <param name="Ring">The middle of its ring.</param>
    /// <param name="Turn">Of its text.</param>
    private readonly record struct NumberPlace(Spot Ring, double Turn)
    {
        /// <summary>The spot of its line a leader comes from; null for none.</summary>
        public Spot? From { get; init; }
    }
}

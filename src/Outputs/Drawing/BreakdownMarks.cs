using Nookwright.Cutting;
using Nookwright.Lettering;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>The track saw's cuts on a sheet: a heavy line each, with its number in a ring and its distance from the edge meant.</summary>
internal static class BreakdownMarks
{
    private const double TextSize = 3;
    private const double RingRadius = 2.4;

    /// <summary>The marks of all breakdown cuts on a sheet, in order, clear of what is written on it.</summary>
    public static IEnumerable<Mark> Of(
        Plan plan,
        PlanSheet sheet,
        Length kerf,
        SheetOnPaper onPaper,
        LengthFormat format,
        IEnumerable<Window> written
    )
    {
        var pieces = plan.Workpieces.ToDictionary(w => w.Id);
        var cuts = plan.Breakdown.Where(c => pieces[c.On].Sheet == sheet.Number).ToList();
        var lines = cuts.Select(c => LineOf(c, pieces[c.On], kerf, onPaper)).ToList();
        var whole = onPaper.Of(Length.Zero, Length.Zero, sheet.Length, sheet.Width);
        var taken = written.ToList();
        foreach (var (cut, (from, to)) in cuts.Zip(lines))
        {
            var isLevel = onPaper.IsLevel(cut.Along);
            var text = $"← {LengthLabel.Of(cut.Distance, format)}";
            var others = lines.Where(l => l != (from, to)).Select(Window);
            var (ring, turn, isTold) = FreePlace(new(from, to, isLevel, whole), text, taken, [.. others]);
            text = isTold ? $"{Arrow(cut.From, isLevel, turn, onPaper)} {LengthLabel.Of(cut.Distance, format)}" : "";
            yield return new Mark.Group(
                null,
                [
                    new Mark.Line(from, to, cut.Kind == CutKind.Dressing ? Pen.Thin : Pen.Cut),
                    .. Patch(ring, text, turn, whole),
                    .. Ring(ring, cut.Number),
                    .. isTold ? [Distance(ring, text, turn)] : Array.Empty<Mark>(),
                ],
                $"Cut {cut.Number}: {format.Print(cut.Distance)}"
            );
        }
    }

    private static (Spot From, Spot To) LineOf(SawCut cut, Workpiece on, Length kerf, SheetOnPaper onPaper)
    {
        var along = cut.Along == SheetAxis.Length;
        var (start, size) = along ? (on.X, on.Length) : (on.Y, on.Width);
        var half = new Length(kerf.Nanometres / 2);
        var at = cut.From == FromEdge.Low ? start + cut.Distance + half : start + size - cut.Distance - half;
        var line = along ? onPaper.Of(at, on.Y, Length.Zero, on.Width) : onPaper.Of(on.X, at, on.Length, Length.Zero);
        return (new(line.Left, line.Top), new(line.Right, line.Bottom));
    }

    /// <summary>An arrow towards the edge the distance is measured from; on a text that is turned, it is turned with it.</summary>
    private static string Arrow(FromEdge from, bool isLevel, double turn, SheetOnPaper onPaper)
    {
        var isLow = from == FromEdge.Low;
        var pointsLeftOrDown = isLevel && onPaper.FigureTurn != 0 ? !isLow : isLow;
        return (isLevel, turn != 0) switch
        {
            (true, false) or (false, true) => pointsLeftOrDown ? "←" : "→",
            (true, true) => pointsLeftOrDown ? "↑" : "↓",
            _ => pointsLeftOrDown ? "↓" : "↑",
        };
    }

    /// <summary>Paper under a distance that is written on the sheet.</summary>
    private static IEnumerable<Mark> Patch(Spot ring, string text, double turn, Window sheet)
    {
        if (text.Length > 0 && sheet.Contains(ring))
            yield return new Mark.Path(Taken(ring, text, turn).Grown(-0.6).Corners, true, Fill.Paper, Pen.None);
    }

    private static Window Window((Spot From, Spot To) line) => Drawing.Window.Around([line.From, line.To]);

    /// <summary>
    /// Beyond the end of the line at the sheet's edge, else on the line; moved along until it is clear of others. Where there
    /// is no room for its distance the number stands alone: the list of cuts tells the distance.
    /// </summary>
    private static (Spot Ring, double Turn, bool IsTold) FreePlace(
        CutLine line,
        string text,
        List<Window> taken,
        IReadOnlyList<Window> lines
    )
    {
        foreach (var (said, others) in new[] { (text, lines), ("", lines), ("", []) })
        foreach (var (spot, turn) in Places(line))
        {
            var window = Taken(spot, said, turn);
            if (taken.Concat(others).Any(window.Overlaps) || !line.Sheet.Grown(SheetDrawing.Margin - 0.5).Holds(window))
                continue;
            taken.Add(window);
            return (spot, turn, said.Length > 0);
        }
        return (new((line.From.X + line.To.X) / 2, (line.From.Y + line.To.Y) / 2), 0, false);
    }

    private static IEnumerable<(Spot, double)> Places(CutLine line)
    {
        var (from, to, isUprightLine, sheet) = line;
        const double beyond = RingRadius + 1;
        if (isUprightLine && from.Y <= sheet.Top + 0.5)
            yield return (new(from.X, sheet.Top - beyond), 0);
        if (isUprightLine && to.Y >= sheet.Bottom - 0.5)
            yield return (new(to.X, sheet.Bottom + beyond), 0);
        if (!isUprightLine && from.X <= sheet.Left + 0.5)
            yield return (new(sheet.Left - beyond, from.Y), 90);
        if (!isUprightLine && to.X >= sheet.Right - 0.5)
            yield return (new(sheet.Right + beyond, to.Y), 90);
        foreach (
            var share in new[] { 0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9, 0.05, 0.95, 0.43, 0.57, 0.28, 0.72, 0.15, 0.85 }
        )
            yield return (
                new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share)),
                isUprightLine ? 90 : 0
            );
    }

    private static Window Taken(Spot ring, string text, double turn)
    {
        var length = text.Length == 0 ? RingRadius : RingRadius + 1 + TextMetrics.Width(text, TextSize) + 1;
        return turn == 0
            ? new(ring.X - RingRadius, ring.Y - RingRadius, ring.X + length, ring.Y + RingRadius)
            : new(ring.X - RingRadius, ring.Y - length, ring.X + RingRadius, ring.Y + RingRadius);
    }

    private static IEnumerable<Mark> Ring(Spot at, int number)
    {
        yield return new Mark.Circle(at, RingRadius, Fill.Paper, Pen.Thin);
        var baseline = at.Y + (TextSize * TextMetrics.CapitalHeight / 2);
        yield return new Mark.Label($"{number}", new(at.X, baseline), TextSize, Anchor.Middle, Bold: true);
    }

    private static Mark.Label Distance(Spot ring, string text, double turn)
    {
        var (aside, drop) = (RingRadius + 0.8, TextSize * TextMetrics.CapitalHeight / 2);
        var at = turn == 0 ? new Spot(ring.X + aside, ring.Y + drop) : new Spot(ring.X + drop, ring.Y - aside);
        return new(text, at, TextSize, Turn: turn);
    }

    /// <summary>A cut on its sheet.</summary>
    private readonly record struct CutLine(Spot From, Spot To, bool IsUpright, Window Sheet);
}

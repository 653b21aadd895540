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
        var whole = onPaper.Of(Length.Zero, Length.Zero, sheet.Length, sheet.Width);
        var taken = written.ToList();
        foreach (var cut in plan.Breakdown.Where(c => pieces[c.On].Sheet == sheet.Number))
        {
            var (from, to) = LineOf(cut, pieces[cut.On], kerf, onPaper);
            var isLevel = onPaper.IsLevel(cut.Along);
            var text = $"← {LengthLabel.Of(cut.Distance, format)}";
            var (ring, turn) = FreePlace(from, to, isLevel, whole, text, taken);
            text = $"{Arrow(cut.From, isLevel, turn, onPaper)} {LengthLabel.Of(cut.Distance, format)}";
            yield return new Mark.Group(
                null,
                [
                    new Mark.Line(from, to, cut.Kind == CutKind.Dressing ? Pen.Thin : Pen.Cut),
                    .. Patch(ring, text, turn, whole),
                    .. Ring(ring, cut.Number),
                    Distance(ring, text, turn),
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
        if (sheet.Contains(ring))
            yield return new Mark.Path(Taken(ring, text, turn).Grown(-0.6).Corners, true, Fill.Paper, Pen.None);
    }

    /// <summary>Beyond the end of the line at the sheet's edge, else on the line; moved along until it is clear of others.</summary>
    private static (Spot Ring, double Turn) FreePlace(
        Spot from,
        Spot to,
        bool isUprightLine,
        Window sheet,
        string text,
        List<Window> taken
    )
    {
        foreach (var (spot, turn) in Places(from, to, isUprightLine, sheet))
        {
            var window = Taken(spot, text, turn);
            if (taken.Any(t => t.Overlaps(window)) || !sheet.Grown(SheetDrawing.Margin - 0.5).Holds(window))
                continue;
            taken.Add(window);
            return (spot, turn);
        }
        return (new((from.X + to.X) / 2, (from.Y + to.Y) / 2), 0);
    }

    private static IEnumerable<(Spot, double)> Places(Spot from, Spot to, bool isUprightLine, Window sheet)
    {
        const double beyond = RingRadius + 1;
        if (isUprightLine && from.Y <= sheet.Top + 0.5)
            yield return (new(from.X, sheet.Top - beyond), 0);
        if (isUprightLine && to.Y >= sheet.Bottom - 0.5)
            yield return (new(to.X, sheet.Bottom + beyond), 0);
        if (!isUprightLine && from.X <= sheet.Left + 0.5)
            yield return (new(sheet.Left - beyond, from.Y), 90);
        if (!isUprightLine && to.X >= sheet.Right - 0.5)
            yield return (new(sheet.Right + beyond, to.Y), 90);
        foreach (var share in new[] { 0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9, 0.05, 0.95 })
            yield return (
                new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share)),
                isUprightLine ? 90 : 0
            );
    }

    private static Window Taken(Spot ring, string text, double turn)
    {
        var length = RingRadius + 1 + TextMetrics.Width(text, TextSize) + 1;
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
}

using Nookwright.Cutting;
using Nookwright.Lettering;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>The track saw's cuts on a sheet: a heavy line each, with its number in a ring and its distance from the edge meant.</summary>
internal static class BreakdownMarks
{
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
        var whole = onPaper.Of(Length.Zero, Length.Zero, sheet.Length, sheet.Width);
        var lines = cuts.Select(c => LineOf(c, pieces[c.On], kerf, onPaper, whole)).ToList();
        var numbers = new CutNumbers(written, lines, LabelOf);
        Mark[] drawn =
        [
            .. cuts.Zip(lines).Select(Mark (c) => new Mark.Line(c.Second.From, c.Second.To, PenOf(c.First))),
        ];
        return
        [
            .. drawn,
            .. cuts.Zip(lines)
                .Select(
                    Mark (c) =>
                        new Mark.Group(
                            null,
                            [.. numbers.Place(c.Second, c.First.Number)],
                            $"Cut {c.First.Number}: {format.Print(c.First.Distance)}"
                        )
                ),
        ];

        string LabelOf(int line, double turn) =>
            $"{Arrow(cuts[line].From, onPaper.IsLevel(cuts[line].Along), turn, onPaper)} {LengthLabel.Of(cuts[line].Distance, format)}";
    }

    private static Pen PenOf(SawCut cut) => cut.Kind == CutKind.Dressing ? Pen.Thin : Pen.Cut;

    private static CutLine LineOf(SawCut cut, Workpiece on, Length kerf, SheetOnPaper onPaper, Window whole)
    {
        var along = cut.Along == SheetAxis.Length;
        var (start, size) = along ? (on.X, on.Length) : (on.Y, on.Width);
        var half = new Length(kerf.Nanometres / 2);
        var at = cut.From == FromEdge.Low ? start + cut.Distance + half : start + size - cut.Distance - half;
        var line = along ? onPaper.Of(at, on.Y, Length.Zero, on.Width) : onPaper.Of(on.X, at, on.Length, Length.Zero);
        return new(new(line.Left, line.Top), new(line.Right, line.Bottom), onPaper.IsLevel(cut.Along), whole);
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
}

/// <summary>A cut as a line on paper.</summary>
/// <param name="From">Its left or upper end.</param>
/// <param name="To">Its other end.</param>
/// <param name="IsUpright">True for a line that runs up and down.</param>
/// <param name="Sheet">The whole sheet it lies on.</param>
internal readonly record struct CutLine(Spot From, Spot To, bool IsUpright, Window Sheet)
{
    /// <summary>A spot of the line, by its share of the way from one end to the other.</summary>
    public Spot At(double share) => new(From.X + ((To.X - From.X) * share), From.Y + ((To.Y - From.Y) * share));

    /// <summary>What the line covers.</summary>
    public Window Window => Window.Around([From, To]);
}

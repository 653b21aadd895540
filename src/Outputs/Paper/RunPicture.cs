using Nookwright.Cutting;
using Nookwright.Drawing;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>The parts of a running grain as they lie in their strips, in order, with an arrow for the figure.</summary>
/// <remarks>A run that goes on in another strip is drawn strip under strip, each with the name of its sheet.</remarks>
internal static class RunPicture
{
    private const double Below = 6;
    private const double Between = 3;
    private const double LargestLetter = 4.6;

    /// <summary>The picture, no larger than asked; null when the plan has not cut all of the parts.</summary>
    /// <param name="parts">Part ids in their order.</param>
    /// <param name="words">The job's words.</param>
    /// <param name="plan">The plan that places them.</param>
    /// <param name="largest">Width and height to stay within.</param>
    public static Picture? Of(IReadOnlyList<string> parts, JobWords words, Plan plan, Spot largest)
    {
        var places = parts.Select(id => plan.Workpieces.LastOrDefault(w => w.Part == id)).OfType<Workpiece>().ToList();
        if (places.Count < parts.Count)
            return null;
        var strips = Strips(places);
        var sheetRoom = strips.Count > 1 ? 14 : 0;
        var gaps = Between * (strips.Count - 1);
        var scale = Math.Min(
            (largest.X - sheetRoom) / strips.Max(s => s.Wide),
            (largest.Y - Below - gaps) / strips.Sum(s => s.High)
        );
        var marks = new List<Mark>();
        var top = 0.0;
        foreach (var strip in strips)
        {
            if (sheetRoom > 0)
                marks.Add(
                    new Mark.Label(
                        $"S{strip.Places[0].Sheet}",
                        new(0, top + (strip.High * scale / 2) + 1.2),
                        TypeSize.Table
                    )
                );
            marks.AddRange(
                strip.Places.Select((p, i) => One(p, strip.First + i, words, strip.At(p, scale, sheetRoom, top)))
            );
            top += (strip.High * scale) + Between;
        }
        var wide = sheetRoom + (strips.Max(s => s.Wide) * scale);
        marks.AddRange(FigureArrow(wide, top - Between));
        return new(wide, top - Between + Below, marks, "Parts in the order of their running grain");
    }

    // Neighbours of one strip lie in line and on one sheet.
    private static List<Strip> Strips(List<Workpiece> places)
    {
        var strips = new List<Strip>();
        foreach (var (i, place) in places.Index())
            if (strips.Count > 0 && AreInLine(strips[^1].Places[^1], place))
                strips[^1].Places.Add(place);
            else
                strips.Add(new(i + 1, [place]));
        return strips;
    }

    private static bool AreInLine(Workpiece one, Workpiece other) =>
        one.Sheet == other.Sheet
        && ((one.Y, one.Width) == (other.Y, other.Width) || (one.X, one.Length) == (other.X, other.Length));

    private static Mark.Group One(Workpiece place, int number, JobWords words, Window box)
    {
        var text = $"{number}: {words.Letter(place.Part!)}";
        var size = Math.Min(
            LargestLetter,
            LargestLetter * (box.Width - 1) / TextMetrics.Width(text, LargestLetter, true)
        );
        var at = new Spot(box.Middle.X, box.Middle.Y + (size * TextMetrics.CapitalHeight / 2));
        return new Mark.Group(
            place.Part,
            [
                Shapes.Box(box.Left, box.Top, box.Width, box.Height, Pen.Outline, Fill.Light),
                new Mark.Label(text, at, size, Anchor.Middle, Bold: true),
            ],
            words.Named(place.Part!)
        );
    }

    private static IEnumerable<Mark> FigureArrow(double width, double height) =>
        [
            .. Shapes.Arrow(new(0, height + 3.4), new(Math.Min(width, 30), height + 3.4), Pen.Outline),
            new Mark.Label("figure", new(Math.Min(width, 30) + 2, height + 4.6), TypeSize.Table),
        ];

    /// <summary>Parts of a run from one strip.</summary>
    /// <param name="First">The number of its first part in the run.</param>
    /// <param name="Places">Where they lie.</param>
    private sealed record Strip(int First, List<Workpiece> Places)
    {
        private double Left => Places.Min(p => p.X).Millimetres;

        private double Top => Places.Max(p => p.Y + p.Width).Millimetres;

        public double Wide => Places.Max(p => p.X + p.Length).Millimetres - Left;

        public double High => Top - Places.Min(p => p.Y).Millimetres;

        public Window At(Workpiece place, double scale, double left, double top)
        {
            var (x, y) = (
                left + ((place.X.Millimetres - Left) * scale),
                top + ((Top - (place.Y + place.Width).Millimetres) * scale)
            );
            return new(x, y, x + (place.Length.Millimetres * scale), y + (place.Width.Millimetres * scale));
        }
    }
}

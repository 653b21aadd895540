using Nookwright.Cutting;
using Nookwright.Drawing;

namespace Nookwright.Paper;

/// <summary>The parts of a running grain as they lie on their sheet, in order, with an arrow for the figure.</summary>
internal static class RunPicture
{
    private const double Below = 6;

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
        var (left, top) = (places.Min(p => p.X).Millimetres, places.Max(p => p.Y + p.Width).Millimetres);
        var (wide, high) = (places.Max(p => p.X + p.Length).Millimetres - left, top - places.Min(p => p.Y).Millimetres);
        var scale = Math.Min(largest.X / wide, (largest.Y - Below) / high);
        var marks = places.Select((p, i) => One(p, i + 1, words, At(p))).ToList();
        marks.AddRange(FigureArrow(wide * scale, high * scale));
        return new(wide * scale, (high * scale) + Below, marks, "Parts in the order of their running grain");

        Spot[] At(Workpiece p) =>
            [
                new((p.X.Millimetres - left) * scale, (top - (p.Y + p.Width).Millimetres) * scale),
                new(p.Length.Millimetres * scale, p.Width.Millimetres * scale),
            ];
    }

    private static Mark One(Workpiece place, int number, JobWords words, Spot[] box)
    {
        var (corner, size) = (box[0], box[1]);
        var middle = new Spot(corner.X + (size.X / 2), corner.Y + (size.Y / 2));
        return new Mark.Group(
            place.Part,
            [
                Shapes.Box(corner.X, corner.Y, size.X, size.Y, Pen.Outline, Fill.Light),
                new Mark.Label(
                    $"{number}: {words.Letter(place.Part!)}",
                    new(middle.X, middle.Y + 1.6),
                    4.6,
                    Anchor.Middle,
                    Bold: true
                ),
            ],
            words.Named(place.Part!)
        );
    }

    private static IEnumerable<Mark> FigureArrow(double width, double height) =>
        [
            .. Shapes.Arrow(new(0, height + 3.4), new(Math.Min(width, 30), height + 3.4), Pen.Outline),
            new Mark.Label("figure", new(Math.Min(width, 30) + 2, height + 4.6), TypeSize.Table),
        ];
}

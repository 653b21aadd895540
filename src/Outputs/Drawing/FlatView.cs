using Nookwright.Flow;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>What a view square to the room shows, before it has a scale.</summary>
/// <param name="Name">As written below it.</param>
/// <param name="Sight">Where it is seen from.</param>
/// <param name="Seen">What the view itself takes up, full size.</param>
/// <param name="Chains">Its dimensions, on each side from the view outwards.</param>
/// <param name="LeftMargin">Room for labels on the left, in millimetres of paper.</param>
/// <param name="Draw">Draws the view itself.</param>
internal sealed record FlatView(
    string Name,
    Sight Sight,
    Window Seen,
    IReadOnlyList<DimensionChain> Chains,
    double LeftMargin,
    Func<Painting, Window, IEnumerable<Mark>> Draw
)
{
    private const double NoteHeight = 6;
    private const double Margin = 1;

    /// <summary>The picture at the largest usual scale at which the view and its dimensions fit.</summary>
    public Picture At(Workbook workbook, double width, double height)
    {
        var scales = DrawingScale.Of(workbook.Project.Units);
        var laid = scales.Select(s => Lay(s, workbook, width, height)).FirstOrDefault(l => l.Fits);
        return (laid ?? Lay(Smaller(scales[^1], workbook, width, height), workbook, width, height)).Picture(workbook);
    }

    /// <summary>A scale below all usual ones, for a picture too small for them.</summary>
    private DrawingScale Smaller(DrawingScale smallest, Workbook workbook, double width, double height)
    {
        var scale = smallest;
        while (!Lay(scale, workbook, width, height).Fits && scale.Denominator < 100_000)
            scale = new(scale.Denominator * 2, $"1:{scale.Denominator * 2:0}");
        return scale;
    }

    private Laid Lay(DrawingScale scale, Workbook workbook, double width, double height)
    {
        var format = workbook.Lengths.WithoutUnit;
        var atOrigin = new OnPaper(scale.Factor, 0, 0);
        var stacks = Enum.GetValues<ChainSide>().ToDictionary(side => side, side => Stack(side, atOrigin, format));
        var frame = new Window(
            Margin + LeftMargin + stacks[ChainSide.Left].Thickness,
            Margin + stacks[ChainSide.Above].Thickness,
            width - Margin - stacks[ChainSide.Right].Thickness,
            height - Margin - NoteHeight - stacks[ChainSide.Below].Thickness
        );
        var fits = Seen.Width * scale.Factor <= frame.Width && Seen.Height * scale.Factor <= frame.Height;
        return new(this, scale, OnPaper.Centred(scale.Factor, Seen, frame), fits, width, height);
    }

    private DimensionStack Stack(ChainSide side, OnPaper onPaper, LengthFormat format) =>
        new(
            side,
            [
                .. Chains
                    .Where(c => c.Side == side)
                    .Select(c => new LaidChain(c, length => Along(side, length, onPaper), format)),
            ]
        );

    /// <summary>Where a place along the view's level or upright axis lies on paper.</summary>
    private double Along(ChainSide side, Length place, OnPaper onPaper)
    {
        var isLevel = side is ChainSide.Below or ChainSide.Above;
        var axis = isLevel ? Sight.Right : Sight.Up;
        var point = new Vertex(Math.Abs(axis.X), Math.Abs(axis.Y), Math.Abs(axis.Z)) * place.Millimetres;
        var spot = onPaper.At(Sight.See(point));
        return isLevel ? spot.X : spot.Y;
    }

    /// <summary>A view at a scale, in its place on a picture.</summary>
    private sealed record Laid(
        FlatView View,
        DrawingScale Scale,
        OnPaper OnPaper,
        bool Fits,
        double Width,
        double Height
    )
    {
        public Picture Picture(Workbook workbook)
        {
            var format = workbook.Lengths.WithoutUnit;
            var (topLeft, bottomRight) = (
                OnPaper.At(new(View.Seen.Left, View.Seen.Top)),
                OnPaper.At(new(View.Seen.Right, View.Seen.Bottom))
            );
            var window = new Window(topLeft.X, topLeft.Y, bottomRight.X, bottomRight.Y);
            var chains = Enum.GetValues<ChainSide>().SelectMany(s => View.Stack(s, OnPaper, format).Marks(window));
            IReadOnlyList<Mark> marks =
            [
                .. View.Draw(new Painting(View.Sight, OnPaper), window),
                new Mark.Group(null, [.. chains]),
                Note(workbook),
            ];
            return new(Width, Height, marks, $"{workbook.Project.Name}: {View.Name}, {Scale.Text}");
        }

        private Mark.Label Note(Workbook workbook)
        {
            var unit = workbook.Project.Units == LengthUnit.Inches ? "inches" : "mm";
            return new($"{View.Name} · {Scale.Text} · sizes in {unit}", new(Margin, Height - Margin - 1.2), 3);
        }
    }
}

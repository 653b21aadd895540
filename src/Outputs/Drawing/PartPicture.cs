using Nookwright.Lettering;
using Nookwright.Measure;
using Nookwright.Parts;
using Nookwright.Projects;

namespace Nookwright.Drawing;

/// <summary>A small picture of one part: outline and machining, edged edges heavy, the figure's arrow, finished sizes.</summary>
/// <remarks>Seen from the show face, its length to the right. What is worked from the other face is dashed.</remarks>
public static class PartPicture
{
    private const double Margin = 2;
    private const double Largest = 7;

    /// <summary>Paper a letter needs around it, in millimetres.</summary>
    private const double Thinnest = 6;

    private const double BesideSize = 3;

    /// <summary>The picture, as large as a frame allows.</summary>
    /// <param name="part">The part.</param>
    /// <param name="format">How lengths are shown.</param>
    /// <param name="width">In millimetres.</param>
    /// <param name="height">In millimetres.</param>
    public static Picture Of(Part part, LengthFormat format, double width = 60, double height = 45)
    {
        var panel = part.Panel;
        var corners = panel.Outline.Corners;
        var seen = Window.Around(corners.Select(See));
        var chains = Chains(ChainSide.Below, corners.Select(c => c.X))
            .Concat(Chains(ChainSide.Right, corners.Select(c => c.Y)))
            .ToArray();
        var onPaper = Fit(seen, Window.Of(width, height, Margin), chains, format);
        var (low, high) = (onPaper.At(new(seen.Left, seen.Top)), onPaper.At(new(seen.Right, seen.Bottom)));
        var window = new Window(low.X, low.Y, high.X, high.Y);
        IReadOnlyList<Mark> marks =
        [
            new Mark.Group(
                part.Id,
                [.. PartMarks.Of(panel, onPaper), .. Lettered(part, format, window, onPaper)],
                panel.Name
            ),
            .. Stack(chains, ChainSide.Below, onPaper, format).Marks(window),
            .. Stack(chains, ChainSide.Right, onPaper, format).Marks(window),
        ];
        return new(width, height, marks, $"{part.Letter}: {panel.Name}");
    }

    /// <summary>A point of a panel as seen from its show face: y goes up.</summary>
    internal static Spot See(Geometry.Point2 point) => new(point.X.Millimetres, -point.Y.Millimetres);

    /// <summary>As large as its dimensions leave room; they need more when it gets smaller, so twice.</summary>
    private static OnPaper Fit(Window seen, Window frame, IReadOnlyList<DimensionChain> chains, LengthFormat format)
    {
        var onPaper = OnPaper.Fitting(seen, frame);
        for (var time = 0; time < 2; time++)
        {
            var (right, below) = (
                Stack(chains, ChainSide.Right, onPaper, format),
                Stack(chains, ChainSide.Below, onPaper, format)
            );
            onPaper = OnPaper.Fitting(
                seen,
                frame with
                {
                    Right = frame.Right - right.Thickness,
                    Bottom = frame.Bottom - below.Thickness,
                }
            );
        }
        return onPaper;
    }

    /// <summary>The letter on the part, or beside one too thin to hold it.</summary>
    private static IEnumerable<Mark> Lettered(Part part, LengthFormat format, Window window, OnPaper onPaper)
    {
        var label = LabelOf(part, format);
        var (width, height) = (window.Width, window.Height);
        if (Math.Min(width, height) >= Thinnest)
            return label.In(WidestRoom.In(part.Panel.Outline, onPaper));
        var text = $"{part.Letter}  {label.Size}".TrimEnd();
        return width >= height
            ? [new Mark.Label(text, new(window.Left, window.Top - 1.5), BesideSize, Bold: true)]
            :
            [
                new Mark.Label(
                    text,
                    new(window.Left - 1.5, (window.Top + window.Bottom) / 2),
                    BesideSize,
                    Anchor.Middle,
                    90,
                    true
                ),
            ];
    }

    private static AreaLabel LabelOf(Part part, LengthFormat format)
    {
        var (cut, finished) = (
            (part.CutLength.Length, part.CutWidth.Length),
            (part.Panel.Length.Length, part.Panel.Width.Length)
        );
        var length = LengthLabel.Of(cut.Item1, format.WithoutUnit);
        var width = LengthLabel.Of(cut.Item2, format.WithoutUnit);
        return new(part.Letter, cut == finished ? "" : $"cut {length} × {width}")
        {
            FigureTurn = part.Panel.Figure switch
            {
                PanelFigure.Length => 0,
                PanelFigure.Width => 90,
                _ => null,
            },
            Largest = Largest,
        };
    }

    private static IEnumerable<DimensionChain> Chains(ChainSide side, IEnumerable<Length> places)
    {
        var stations = places.Distinct().Order().ToArray();
        if (stations.Length > 2)
            yield return new(side, stations);
        yield return new(side, [stations[0], stations[^1]]);
    }

    private static DimensionStack Stack(
        IReadOnlyList<DimensionChain> chains,
        ChainSide side,
        OnPaper onPaper,
        LengthFormat format
    )
    {
        double Along(Length place) =>
            side == ChainSide.Below
                ? onPaper.At(new(place.Millimetres, 0)).X
                : onPaper.At(new(0, -place.Millimetres)).Y;
        return new(
            side,
            [.. chains.Where(c => c.Side == side).Select(c => new LaidChain(c, Along, format.WithoutUnit))]
        );
    }
}

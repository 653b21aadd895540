using Nookwright.Cutting;
using Nookwright.Lettering;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>Draws one workpiece against the fence of a setting.</summary>
internal sealed class FenceDrawing(
    Visit visit,
    CutRequest request,
    LengthFormat format,
    double columnWidth,
    double height
)
{
    /// <summary>What the fence takes on the right.</summary>
    public const double FenceRoom = 7;

    private const double FenceWidth = 3;
    private const double DistanceText = 4.5;
    private const double SmallText = 2.8;
    private const double NarrowStrip = 8;
    private const double Top = 9;
    private const double Bottom = 9;

    private readonly Dictionary<string, CutPart> _parts = request.Parts.ToDictionary(p => p.Id);

    /// <summary>The marks of one stack whose column ends at this place from the left.</summary>
    public IEnumerable<Mark> Marks(FenceStack stack, double right)
    {
        var fence = right - FenceRoom + 2;
        var scale = ScaleOf(stack);
        var blade = fence - (visit.Setting.Millimetres * scale);
        return
        [
            .. Left(stack, fence - (Used(stack) * scale), fence - Math.Min(Room, stack.Across * scale)),
            .. stack.Gives.Select((pieces, i) => Strip(pieces, fence - (i * Step * scale), scale)),
            Fence(fence),
            new Mark.Line(new(blade, Top - 3), new(blade, height - Bottom + 3), Pen.Cut),
            .. Distance(blade, fence),
            Caption(stack, fence),
        ];
    }

    private double Room => columnWidth - FenceRoom;

    private double Step => (visit.Setting + request.Saws.TableKerf).Millimetres;

    private double Used(FenceStack stack) => stack.Gives.Count * Step;

    /// <summary>To scale when strips come out wide enough to write on; else strips are wider, and what is left is shortened.</summary>
    private double ScaleOf(FenceStack stack)
    {
        var whole = Room / stack.Across;
        return visit.Setting.Millimetres * whole >= NarrowStrip
            ? whole
            : Math.Max(whole, Math.Min(NarrowStrip / visit.Setting.Millimetres, 0.75 * Room / Used(stack)));
    }

    private Mark.Path Fence(double fence) =>
        new(new Window(fence, Top - 3.6, fence + FenceWidth, height - Bottom + 4).Corners, true, Fill.Ink, Pen.None);

    /// <summary>A piece as it lies when it is cut: against the fence for the first, the next ones waiting beside it.</summary>
    private Mark.Group Strip(IReadOnlyList<Workpiece> pieces, double right, double scale)
    {
        var window = new Window(right - (visit.Setting.Millimetres * scale), Top, right, height - Bottom);
        var names = pieces.Select(NameOf).Distinct().ToList();
        var all = new AreaLabel(string.Join(" ", names), "") { Largest = 6 };
        var label = all.FitsIn(window) ? all : all with { Letter = $"{names[0]} …" };
        return new(
            pieces.Count == 1 ? pieces[0].Part : null,
            [new Mark.Path(window.Corners, true, Fill.Dark, Pen.Thin), .. Written(label, window)],
            string.Join(" ", names)
        );
    }

    private IEnumerable<Mark> Left(FenceStack stack, double right, double left)
    {
        var window = new Window(left, Top, right, height - Bottom);
        if (window.Width <= 0.3)
            yield break;
        var isWaste = stack.Left is null or { Use: WorkpieceUse.Waste or WorkpieceUse.Offcut };
        yield return new Mark.Path(window.Corners, true, isWaste ? Fill.Hatch : Fill.Paper, Pen.Thin);
        if (stack.Left is not { Use: not WorkpieceUse.Waste } rest)
            yield break;
        var size = LengthLabel.Of(stack.Along == SheetAxis.Length ? rest.Length : rest.Width, format.WithoutUnit);
        foreach (var mark in Written(new(rest.Id, size) { Largest = 3, OnPatch = isWaste }, window))
            yield return mark;
    }

    /// <summary>What does not fit is left to the card's list.</summary>
    private static IEnumerable<Mark> Written(AreaLabel label, Window window) =>
        label.FitsIn(window) ? label.In(window) : [];

    private IEnumerable<Mark> Distance(double blade, double fence)
    {
        var text = LengthLabel.Of(visit.Setting, format);
        var half = TextMetrics.Width(text, DistanceText, true) / 2;
        var middle = Math.Min((blade + fence) / 2, fence + FenceWidth - half);
        yield return new Mark.Label(text, new(middle, 4.2), DistanceText, Anchor.Middle, Bold: true);
        yield return new Mark.Line(new(blade, Top - 2.5), new(fence, Top - 2.5), Pen.Dimension);
        foreach (var end in new[] { blade, fence })
            yield return new Mark.Line(new(end - 0.8, Top - 1.7), new(end + 0.8, Top - 3.3), Pen.Thin);
    }

    /// <summary>Which workpieces are cut so, their other size, and how the arrow lies that is written on them.</summary>
    private Mark.Label Caption(FenceStack stack, double fence)
    {
        var isAlongFigure = stack.Along == SheetAxis.Width;
        var other = LengthLabel.Of(isAlongFigure ? stack.First.Length : stack.First.Width, format.WithoutUnit);
        var many = stack.Like.Count > 1 ? $"{stack.Like.Count} like " : "";
        var name = $"arrow {Arrow(stack)}  {many}{stack.First.Id}";
        var whole = $"{name}, {other} {(isAlongFigure ? "long" : "wide")}";
        var text = TextMetrics.Width(whole, SmallText) < columnWidth ? whole : name;
        var right = Math.Max(fence - 1, fence + FenceRoom - 2 - columnWidth + TextMetrics.Width(text, SmallText));
        return new(text, new(right, height - 2), SmallText, Anchor.End);
    }

    /// <summary>The arrow along the figure points to the right of a piece's name: here the piece is turned with one edge to the fence.</summary>
    private static string Arrow(FenceStack stack) =>
        (stack.Along, stack.From) switch
        {
            (SheetAxis.Width, FromEdge.Low) => "↑",
            (SheetAxis.Width, FromEdge.High) => "↓",
            (SheetAxis.Length, FromEdge.Low) => "←",
            _ => "→",
        };

    private string NameOf(Workpiece piece) =>
        piece.Part is { } id && _parts.TryGetValue(id, out var part) ? part.Letter : piece.Id;
}

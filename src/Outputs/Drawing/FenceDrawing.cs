using Nookwright.Cutting;
using Nookwright.Lettering;
using Nookwright.Measure;

namespace Nookwright.Drawing;

/// <summary>Draws one workpiece against the fence of a setting.</summary>
internal sealed class FenceDrawing(Visit visit, CutRequest request, LengthFormat format, double scale, double height)
{
    /// <summary>What the fence takes on the right.</summary>
    public const double FenceRoom = 7;

    private const double FenceWidth = 3;
    private const double DistanceText = 4.5;
    private const double SmallText = 2.8;
    private const double Top = 9;
    private const double Bottom = 9;

    private readonly Dictionary<string, CutPart> _parts = request.Parts.ToDictionary(p => p.Id);

    /// <summary>The marks of one stack whose fence ends at this place from the left.</summary>
    public IEnumerable<Mark> Marks(FenceStack stack, double right)
    {
        var fence = right - FenceRoom + 2;
        var blade = fence - (visit.Setting.Millimetres * scale);
        return
        [
            .. Left(stack, fence),
            .. stack.Gives.Select((piece, i) => Strip(piece, i, fence)),
            Fence(fence),
            new Mark.Line(new(blade, Top - 3), new(blade, height - Bottom + 3), Pen.Cut),
            .. Distance(blade, fence),
            .. Caption(stack, fence),
        ];
    }

    private Mark.Path Fence(double fence) =>
        new(new Window(fence, Top - 3.6, fence + FenceWidth, height - Bottom + 4).Corners, true, Fill.Ink, Pen.None);

    /// <summary>A piece as it lies when it is cut: against the fence for the first, the next ones waiting beside it.</summary>
    private Mark.Group Strip(Workpiece piece, int place, double fence)
    {
        var step = (visit.Setting + request.Saws.TableKerf).Millimetres * scale;
        var right = fence - (place * step);
        var window = new Window(right - (visit.Setting.Millimetres * scale), Top, right, height - Bottom);
        var label = new AreaLabel(NameOf(piece), "") { Largest = 6 };
        return new(
            piece.Part,
            [new Mark.Path(window.Corners, true, place == 0 ? Fill.Dark : Fill.Light, Pen.Thin), .. label.In(window)],
            NameOf(piece)
        );
    }

    private IEnumerable<Mark> Left(FenceStack stack, double fence)
    {
        var used = stack.Gives.Count * (visit.Setting + request.Saws.TableKerf).Millimetres;
        var window = new Window(fence - (stack.Across * scale), Top, fence - (used * scale), height - Bottom);
        if (window.Width <= 0.3)
            yield break;
        var isWaste = stack.Left is null or { Use: WorkpieceUse.Waste or WorkpieceUse.Offcut };
        yield return new Mark.Path(window.Corners, true, isWaste ? Fill.Hatch : Fill.Paper, Pen.Thin);
        if (stack.Left is not { Use: not WorkpieceUse.Waste } left)
            yield break;
        var size = LengthLabel.Of(stack.Along == SheetAxis.Length ? left.Length : left.Width, format.WithoutUnit);
        foreach (var mark in new AreaLabel(left.Id, size) { Largest = 3, OnPatch = isWaste }.In(window))
            yield return mark;
    }

    private IEnumerable<Mark> Distance(double blade, double fence)
    {
        var text = LengthLabel.Of(visit.Setting, format);
        var half = TextMetrics.Width(text, DistanceText, true) / 2;
        var middle = Math.Max(half + 0.5, Math.Min((blade + fence) / 2, fence + FenceRoom - 2 - half));
        yield return new Mark.Label(text, new(middle, 4.2), DistanceText, Anchor.Middle, Bold: true);
        yield return new Mark.Line(new(blade, Top - 2.5), new(fence, Top - 2.5), Pen.Dimension);
        foreach (var end in new[] { blade, fence })
            yield return new Mark.Line(new(end - 0.8, Top - 1.7), new(end + 0.8, Top - 3.3), Pen.Thin);
    }

    /// <summary>Which workpieces are cut so, and how long they are.</summary>
    private IEnumerable<Mark> Caption(FenceStack stack, double fence)
    {
        var other = stack.Along == SheetAxis.Length ? stack.First.Width : stack.First.Length;
        var many = stack.Like.Count > 1 ? $"{stack.Like.Count} × " : "";
        var text = $"{many}{stack.First.Id} ({LengthLabel.Of(other, format.WithoutUnit)} long)";
        yield return new Mark.Label(text, new(fence - 1, height - 2), SmallText, Anchor.End);
    }

    private string NameOf(Workpiece piece) =>
        piece.Part is { } id && _parts.TryGetValue(id, out var part) ? part.Letter : piece.Id;
}

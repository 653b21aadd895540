using Nookwright.Cutting;
using Nookwright.Lettering;
using Nookwright.Measure;
using Nookwright.Projects;
using Nookwright.Shop;

namespace Nookwright.Drawing;

/// <summary>Draws one sheet: its pieces where they come to lie, then the track saw's cuts over them.</summary>
internal sealed class SheetDrawing
{
    /// <summary>Round the sheet, for the numbers and distances of cuts.</summary>
    public const double Margin = 9;

    private readonly Plan _plan;
    private readonly PlanSheet _sheet;
    private readonly CutRequest _request;
    private readonly LengthFormat _format;
    private readonly SheetOnPaper _onPaper;
    private readonly Dictionary<string, CutPart> _parts;
    private readonly HashSet<string> _cut;
    private readonly IReadOnlyDictionary<string, string> _marks;

    public SheetDrawing(
        Plan plan,
        PlanSheet sheet,
        CutRequest request,
        LengthFormat format,
        double width,
        double height
    )
    {
        (_plan, _sheet, _request, _format) = (plan, sheet, request, format);
        _onPaper = new(sheet.Length, sheet.Width, new(Margin, Margin, width - Margin, height - Margin));
        _cut = [.. plan.Cuts.Select(c => c.On)];
        _parts = request.Parts.ToDictionary(p => p.Id);
        _marks = KeptOffcut.MarksOf(plan);
    }

    public IEnumerable<Mark> Marks()
    {
        Mark[] pieces = [.. OnSheet.Where(IsKeptWhole).Select(DrawWaiting), .. OnSheet.SelectMany(Draw)];
        return
        [
            new Mark.Path(Whole.Corners, true, Fill.Paper, Pen.None),
            .. pieces,
            .. Bad.Select(DrawBad),
            new Mark.Path(Whole.Corners, true, Fill.None, Pen.Outline),
            .. BreakdownMarks.Of(_plan, _sheet, _request.Saws.TrackKerf, _onPaper, _format, LabelBox.Of(pieces)),
        ];
    }

    private Window Whole => _onPaper.Of(Length.Zero, Length.Zero, _sheet.Length, _sheet.Width);

    private IEnumerable<BadArea> Bad =>
        _request.Stock.FirstOrDefault(s => s.Id == _sheet.Stock) is { } stock ? stock.Bad : [];

    private IEnumerable<Workpiece> OnSheet => _plan.Workpieces.Where(w => w.Sheet == _sheet.Number);

    /// <summary>True for a chunk or strip that no cut of this plan goes through: it waits for a later round.</summary>
    private bool IsKeptWhole(Workpiece piece) =>
        piece.Use is WorkpieceUse.Chunk or WorkpieceUse.Strip && !_cut.Contains(piece.Id);

    private Mark.Group DrawWaiting(Workpiece piece)
    {
        var window = WindowOf(piece);
        var label = new AreaLabel(piece.Id, SizeOf(piece.Length, piece.Width)) { Largest = 4 };
        return new(
            piece.Id,
            [new Mark.Path(window.Corners, true, Fill.Paper, Pen.Thin), .. label.In(window)],
            piece.Id
        );
    }

    private IEnumerable<Mark> Draw(Workpiece piece) =>
        piece.Use switch
        {
            WorkpieceUse.Part => [DrawPart(piece)],
            WorkpieceUse.Held => [DrawHeld(piece)],
            WorkpieceUse.Offcut => [DrawOffcut(piece)],
            WorkpieceUse.Waste => [new Mark.Path(WindowOf(piece).Corners, true, Fill.Room, Pen.None)],
            _ => [],
        };

    private Mark.Group DrawPart(Workpiece piece)
    {
        var window = WindowOf(piece);
        var part = PartOf(piece);
        var size = part is null ? SizeOf(piece.Length, piece.Width) : SizeOf(part.Length, part.Width);
        var label = new AreaLabel(part?.Letter ?? piece.Id, size) { FigureTurn = FigureOf(part) };
        var caption = part is null ? $"{piece.Id}, {size}" : $"{part.Letter}: {part.Name}, {size}";
        return new(
            piece.Part,
            [new Mark.Path(window.Corners, true, Fill.Light, Pen.Thin), .. label.In(window)],
            caption
        );
    }

    /// <summary>A blank with the size it is cut to now: dressing it again later takes some of that.</summary>
    private Mark.Group DrawHeld(Workpiece piece)
    {
        var window = WindowOf(piece);
        var part = PartOf(piece);
        var size = SizeOf(piece.Length, piece.Width);
        var label = new AreaLabel(part?.Letter ?? piece.Id, $"HELD {size}")
        {
            OnPatch = true,
            FigureTurn = FigureOf(part),
        };
        var caption = part is null
            ? $"{piece.Id}, held, {size}"
            : $"{piece.Id}, held for {part.Letter}: {part.Name}, {size}";
        return new(
            piece.Part,
            [new Mark.Path(window.Corners, true, Fill.Held, Pen.Thin), .. label.In(window)],
            caption
        );
    }

    private CutPart? PartOf(Workpiece piece) => piece.Part is { } id ? _parts.GetValueOrDefault(id) : null;

    private double? FigureOf(CutPart? part) => part is null or { Figure: PanelFigure.Any } ? null : _onPaper.FigureTurn;

    /// <summary>Crossed out, so that nobody takes it for an offcut.</summary>
    private Mark.Group DrawBad(BadArea bad)
    {
        var window = _onPaper.Of(bad.X, bad.Y, bad.Length, bad.Width);
        var why = bad.Why is { Length: > 0 } said ? $"bad: {said}" : "bad";
        return new(
            null,
            [
                new Mark.Path(window.Corners, true, Fill.Dark, Pen.Outline),
                new Mark.Line(new(window.Left, window.Top), new(window.Right, window.Bottom), Pen.Thin),
                new Mark.Line(new(window.Left, window.Bottom), new(window.Right, window.Top), Pen.Thin),
                .. new AreaLabel("bad", "") { OnPatch = true, Largest = 3.4 }.In(window),
            ],
            $"{why}, {SizeOf(bad.Length, bad.Width)}"
        );
    }

    private Mark.Group DrawOffcut(Workpiece piece)
    {
        var (window, size) = (WindowOf(piece), SizeOf(piece.Length, piece.Width));
        var mark = _marks.TryGetValue(piece.Id, out var written) ? written : piece.Id;
        var label = new AreaLabel(mark, size) { OnPatch = true, Largest = 4 };
        return new(
            piece.Id,
            [new Mark.Path(window.Corners, true, Fill.Hatch, Pen.Thin), .. label.In(window)],
            $"Offcut {mark}, {size}"
        );
    }

    private Window WindowOf(Workpiece piece) => _onPaper.Of(piece.X, piece.Y, piece.Length, piece.Width);

    private string SizeOf(Length length, Length width) =>
        $"{LengthLabel.Of(length, _format)} × {LengthLabel.Of(width, _format)}";
}

/// <summary>Where places of a sheet come to lie on paper: its length to the right, or up when that is larger.</summary>
internal sealed class SheetOnPaper
{
    private readonly bool _isTurned;
    private readonly double _scale;
    private readonly double _originX;
    private readonly double _bottom;

    public SheetOnPaper(Length length, Length width, Window frame)
    {
        var (l, w) = (length.Millimetres, width.Millimetres);
        double Scale(double across, double up) => Math.Min(frame.Width / across, frame.Height / up);
        _isTurned = Scale(w, l) > Scale(l, w);
        _scale = Math.Max(Scale(w, l), Scale(l, w));
        var (across, up) = _isTurned ? (w, l) : (l, w);
        var side = (frame.Width - (across * _scale)) / 2;
        _originX = _isTurned ? frame.Right - side : frame.Left + side;
        _bottom = frame.Bottom - ((frame.Height - (up * _scale)) / 2);
    }

    /// <summary>Which way the figure runs, in degrees anticlockwise from level.</summary>
    public double FigureTurn => _isTurned ? 90 : 0;

    /// <summary>True when distances along an axis go from left to right on paper.</summary>
    public bool IsLevel(SheetAxis axis) => axis == SheetAxis.Length != _isTurned;

    /// <summary>A rectangle of the sheet by its low corner and size.</summary>
    public Window Of(Length x, Length y, Length length, Length width)
    {
        var (a, b) = (At(x.Millimetres, y.Millimetres), At((x + length).Millimetres, (y + width).Millimetres));
        return new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y));
    }

    // Turned, the length goes up and the width to the left, so that the sheet is turned and not mirrored; the low corner is then at the lower right.
    private Spot At(double x, double y) =>
        _isTurned
            ? new(_originX - (y * _scale), _bottom - (x * _scale))
            : new(_originX + (x * _scale), _bottom - (y * _scale));
}

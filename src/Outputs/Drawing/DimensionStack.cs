namespace Nookwright.Drawing;

/// <summary>Chains on one side of a view, stacked outwards.</summary>
internal sealed class DimensionStack(ChainSide side, IReadOnlyList<LaidChain> chains)
{
    /// <summary>Between the view and the first chain, and between chains.</summary>
    private const double Gap = 2.2;

    /// <summary>Extension lines start this far from the view and pass their dimension line by as much.</summary>
    private const double Overshoot = 1.2;

    private const double StrokeHalf = 1;

    private bool TextsAreInside => side is ChainSide.Below or ChainSide.Right;

    private bool IsLevel => side is ChainSide.Below or ChainSide.Above;

    private double Outwards => side is ChainSide.Below or ChainSide.Right ? 1 : -1;

    /// <summary>How far the stack reaches out from the view.</summary>
    public double Thickness => chains.Count == 0 ? 0 : chains.Sum(c => Gap + c.HeightAboveLine) + Overshoot + 0.5;

    /// <summary>The marks, from the view's edge on this side outwards.</summary>
    public IEnumerable<Mark> Marks(Window view)
    {
        var edge = side switch
        {
            ChainSide.Below => view.Bottom,
            ChainSide.Above => view.Top,
            ChainSide.Right => view.Right,
            _ => view.Left,
        };
        var reached = 0.0;
        var laid = new List<(LaidChain Chain, double Line)>();
        foreach (var chain in chains)
        {
            laid.Add((chain, edge + (Outwards * (reached + Gap + (TextsAreInside ? chain.HeightAboveLine : 0)))));
            reached += Gap + chain.HeightAboveLine;
        }
        // Texts last: an outer chain's extension lines pass the inner chains' texts.
        return
        [
            .. laid.SelectMany(l => Lines(l.Chain, edge, l.Line)),
            .. laid.SelectMany(l =>
                Enumerable.Range(0, l.Chain.Texts.Length).SelectMany(i => Text(l.Chain, i, l.Line))
            ),
        ];
    }

    private IEnumerable<Mark> Lines(LaidChain chain, double edge, double line)
    {
        foreach (var at in chain.At)
        {
            yield return Line(at, edge + (Outwards * Overshoot), at, line + (Outwards * Overshoot));
            yield return new Mark.Line(Stroke(at, line, -1), Stroke(at, line, 1), Pen.Thin);
        }
        yield return Line(chain.At[0], line, chain.At[^1], line);
    }

    private IEnumerable<Mark> Text(LaidChain chain, int i, double line)
    {
        var (middle, half, up) = (chain.Middle(i), chain.HalfWidth(i), LaidChain.Baseline(chain.Rows[i]));
        if (chain.Rows[i] > 0)
        {
            yield return Line(middle, line, middle, line - up + 0.3);
            yield return Background(middle - half - 0.3, middle + half + 0.3, line - up);
        }
        yield return new Mark.Label(
            chain.Texts[i],
            At(middle, line - up),
            LaidChain.TextSize,
            Anchor.Middle,
            IsLevel ? 0 : 90
        );
    }

    private Mark.Path Background(double from, double to, double baseline)
    {
        var top = baseline - (LaidChain.RowHeight * 0.8);
        return new(
            [At(from, baseline + 0.2), At(to, baseline + 0.2), At(to, top), At(from, top)],
            true,
            Fill.Paper,
            Pen.None
        );
    }

    /// <summary>An end of the stroke through a dimension line's end: from lower left to upper right as read.</summary>
    private Spot Stroke(double at, double line, int end)
    {
        var along = IsLevel ? end : -end;
        return At(at + (along * StrokeHalf), line - (end * StrokeHalf));
    }

    private Mark.Line Line(double along, double across, double toAlong, double toAcross) =>
        new(At(along, across), At(toAlong, toAcross), Pen.Dimension);

    private Spot At(double along, double across) => IsLevel ? new(along, across) : new(across, along);
}

using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>How spots are compared.</summary>
internal enum Fit
{
    /// <summary>The smaller of the two leftover sides, smallest first.</summary>
    ShortSide,

    /// <summary>The leftover area, smallest first.</summary>
    Area,
}

/// <summary>Finds the places an item may go, and the best of them.</summary>
/// <remarks>
/// "Best short side fit" and "best area fit" are the usual rules for guillotine free rectangles (Jylänki, "A thousand ways
/// to pack the bin", 2010); a good spot is now and then overlooked on purpose (the blinks of Christiaens and Vanden Berghe,
/// Transportation Science 2020), so that the search does not walk in a circle.
/// </remarks>
internal sealed class Spots(Job job, SettingOrder order, Random random)
{
    private readonly long _kerf = job.Saws.Kerf;
    private Spot? _best;
    private Item _item = null!;
    private bool _hasFigure;

    /// <summary>How spots are compared.</summary>
    public Fit Fit { get; set; }

    /// <summary>How often a spot is overlooked, 0 to 1.</summary>
    public double Blink { get; set; }

    /// <summary>The best spot in a sheet, when it is better than what is known already.</summary>
    public Spot? Better(Item item, SheetLayout sheet, Spot? known)
    {
        if (!item.MayComeFrom(sheet.Stock))
            return known;
        (_best, _item, _hasFigure) = (known, item, sheet.Stock.Piece.HasFigure);
        foreach (var root in sheet.Roots)
            Look(root);
        return _best;
    }

    /// <summary>True when a child of this turn takes the whole size across without a cut.</summary>
    public static bool TakesWhole(Span span, Turn turn, Job job)
    {
        var across = span.Axis.Other();
        if (turn.Size(across) != span.Across)
            return false;
        if (span.Setting >= 0)
            return span.Setting == turn.Setting(across);
        var isFree = !job.VisitsFirst || !turn.Match(across);
        return job.Saws.Dressing == 0 && span.OpenAcross && isFree;
    }

    private void Look(Node node)
    {
        if (node.Item is not null)
            return;
        Weigh(node, Span.Of(node, _kerf), Joining.Child);
        if (node.Children.Count == 0)
            Weigh(node, Span.Turned(node), Joining.Turned);
        else if (node.Rest is null)
            LookBeyond(node);
        foreach (var child in node.Children)
            if (child.Item is null)
                Look(child);
        if (node.Rest is not null)
            Look(node.Rest);
    }

    private void LookBeyond(Node node)
    {
        Weigh(node, Span.Beyond(node, _kerf), Joining.SmoothRest);
        if (node.IsRough && job.VisitsFirst && node.Across + (2 * job.Saws.Dressing) <= job.Saws.TrackLength)
            Weigh(node, Span.Beyond(node, job.Saws.RoughGap), Joining.RoughRest);
    }

    private void Weigh(Node node, Span span, Joining joining)
    {
        if (span.Room < _item.ShortSide || span.Across < _item.ShortSide)
            return;
        foreach (var turn in _item.Turns)
        {
            if (_hasFigure && !turn.Figure)
                continue;
            var worth = Worth(span, turn, joining);
            if (worth is null || (_best is { } best && best.Worth <= worth))
                continue;
            if (Blink > 0 && random.NextDouble() < Blink)
                continue;
            if (job.Saws.Dressing == 0 && job.VisitsFirst && LeavesMatchUncut(node, span, turn, joining))
                continue;
            if (!job.VisitsFirst || IsInOrder(node, span, turn, joining))
                _best = new(node, turn, joining, worth.Value);
        }
    }

    /// <summary>Null when the item does not fit; else what is left over, in millimetres or square millimetres.</summary>
    private double? Worth(Span span, Turn turn, Joining joining)
    {
        if (turn.Along is { } line && line.Axis == span.Axis)
            return RunWorth(span, turn);
        var (size, across) = (turn.Size(span.Axis), turn.Size(span.Axis.Other()));
        if (!CanTake(span.Room, size, span.OpenAlong, turn.Match(span.Axis)))
            return null;
        if (turn.Along is not null || !TakesWhole(span, turn, job))
            if (!CanTake(span.Across, across, span.OpenAcross, turn.Match(span.Axis.Other())))
                return null;
        var leftover = Leftover(span.Room - size, span.Across - across, span, turn);
        return joining == Joining.RoughRest
            ? leftover + Leftover(job.Saws.RoughGap, job.Saws.RoughGap, span, turn)
            : leftover;
    }

    private double? RunWorth(Span span, Turn turn)
    {
        var length = turn.Size(span.Axis);
        if (span.Setting < 0 || span.Setting != turn.Setting(span.Axis.Other()))
            return null;
        var needs = span.IsFirst ? length : length + _kerf;
        return CanTake(span.Room, needs, span.OpenAlong, true) ? Leftover(span.Room - length, 0, span, turn) : null;
    }

    private double Leftover(long along, long across, Span span, Turn turn)
    {
        if (Fit == Fit.ShortSide)
            return (Math.Min(along, across) / 1e6) + (Math.Max(along, across) / 1e9);
        return (((double)span.Room * span.Across) - ((double)turn.X * turn.Y)) / 1e12;
    }

    private bool CanTake(long room, long size, bool isOpen, bool isMatched)
    {
        if (size != room)
            return size < room;
        // At an exact fit nothing is cut off: right where a margin lies beyond, wrong where the size must come from a setting.
        return isOpen ? job.Saws.Dressing > 0 || !isMatched || !job.VisitsFirst : !job.VisitsFirst;
    }

    /// <summary>
    /// Where no edge is dressed, the child that is visited last in a node filled to the end, or parted there by a rough cut,
    /// is what remains, without a setting: no matched dimension may come about so, neither a sibling's nor that of what is put
    /// into such a strip.
    /// </summary>
    private static bool LeavesMatchUncut(Node node, Span span, Turn turn, Joining joining)
    {
        var fills = joining == Joining.Child && turn.Size(span.Axis) == span.Room;
        var isEndUncut = fills || joining == Joining.RoughRest;
        if (isEndUncut && node.Children.Any(c => c.Leaves().Any(l => l.Turn!.Match(node.Axis))))
            return true;
        var across = span.Axis.Other();
        return joining == Joining.Child
            && !node.IsRest
            && node.Parent is { } parent
            && (parent.Used == parent.Along || parent.Rest is { IsRough: true })
            && turn.Match(across)
            && turn.Size(across) == span.Across;
    }

    private bool IsInOrder(Node node, Span span, Turn turn, Joining joining)
    {
        if (turn.Along is { } line && line.Axis == span.Axis)
            return true; // The run's own rules put its height before its widths, once for all.
        var before = joining switch
        {
            Joining.SmoothRest => Growth.SettingsOfChildren(node),
            Joining.RoughRest => [],
            _ => Growth.Before(node),
        };
        var first = turn.Setting(span.Axis);
        var then = turn.Along is not null || TakesWhole(span, turn, job) ? -1 : turn.Setting(span.Axis.Other());
        if (then >= 0 && !order.Allows(first, then))
            return false;
        foreach (var setting in before)
            if (
                !order.Allows(setting, first)
                || (then >= 0 && then != first && setting != first && order.Reaches(then, setting))
            )
                return false;
        return true;
    }
}

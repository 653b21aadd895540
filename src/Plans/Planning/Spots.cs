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
    private readonly bool _hasOrder = job.HasOrder;
    private readonly bool _hasMargin = job.Saws.Dressing > 0;
    private readonly ApartStrips _strips = new(job);
    private readonly Turn[]?[] _turns = new Turn[job.Items.Count * job.Stocks.Count][];

    /// <summary>How spots are compared.</summary>
    public Fit Fit { get; set; }

    /// <summary>How often a spot is overlooked, 0 to 1.</summary>
    public double Blink { get; set; }

    /// <summary>The better of the best spot in a sheet and what is known already.</summary>
    public Spot Better(Item item, SheetLayout sheet, in Spot known)
    {
        if (!item.MayComeFrom(sheet.Stock))
            return known;
        var best = known;
        foreach (var turn in Turns(item, sheet.Stock))
            if (turn.X <= sheet.MostX && turn.Y <= sheet.MostY)
                Look(sheet, item, turn, ref best);
        return best;
    }

    /// <summary>True when a child of this turn takes a cell's whole size across without a cut.</summary>
    public static bool TakesWhole(in Cell cell, Turn turn, Job job) =>
        turn.Size(cell.Axis.Other()) == cell.Across
        && TakesWhole(cell.IsRest ? -1 : cell.Setting, cell.IsRest, cell.OpenAcross, cell.Axis, turn, job);

    private static bool TakesWhole(int setting, bool isLoose, bool isOpen, SheetAxis axis, Turn turn, Job job)
    {
        var (own, isMatched) = axis == SheetAxis.Length ? (turn.SetY, turn.MatchY) : (turn.SetX, turn.MatchX);
        if (setting >= 0)
            return setting == own || !job.IsKept(own);
        return !isLoose && isOpen && job.Saws.Dressing == 0 && !(isMatched && job.IsKept(own));
    }

    private Turn[] Turns(Item item, Stock stock) =>
        _turns[(item.Id * job.Stocks.Count) + stock.Index] ??= [.. ItemFindings.Turns(item, stock)];

    private void Look(SheetLayout sheet, Item item, Turn turn, ref Spot best)
    {
        foreach (ref readonly var span in sheet.Spans)
        {
            if (turn.X > span.X || turn.Y > span.Y)
                continue;
            var worth = Worth(span, turn);
            if (worth >= best.Worth)
                continue;
            if (Blink > 0 && random.NextDouble() < Blink)
                continue;
            if (_hasOrder && LeavesMatchUncut(sheet, span, turn))
                continue;
            if (item.Apart.Count > 0 && _strips.HasNear(sheet, span.Cell, item))
                continue;
            if (job.Saws.HasGuideLimit && !IsGuided(sheet, span, turn))
                continue;
            if (!_hasOrder || IsInOrder(sheet, span, turn))
                best = new(sheet, span.Cell, turn, span.Joining, worth);
        }
    }

    /// <summary>The largest number when the item does not fit; else what is left over, in millimetres or square millimetres.</summary>
    private double Worth(in Span span, Turn turn)
    {
        if (turn.Along is { } line && line.Axis == span.Axis)
            return RunWorth(span, turn);
        var isX = span.Axis == SheetAxis.Length;
        var (size, across) = isX ? (turn.X, turn.Y) : (turn.Y, turn.X);
        var (room, whole) = isX ? (span.X, span.Y) : (span.Y, span.X);
        if (size == room && !CanTakeAll(span.OpenAlong, span.IsShared, turn, span.Axis))
            return double.MaxValue;
        if (across == whole && (turn.Along is not null || !TakesWhole(span, turn)))
            if (!CanTakeAll(span.OpenAcross, false, turn, span.Axis.Other()))
                return double.MaxValue;
        var leftover = Leftover(room - size, whole - across, span, turn);
        return span.Joining == Joining.RoughRest
            ? leftover + Leftover(job.Saws.RoughGap, job.Saws.RoughGap, span, turn)
            : leftover;
    }

    private bool TakesWhole(in Span span, Turn turn) =>
        TakesWhole(span.Setting, span.IsLoose, span.OpenAcross, span.Axis, turn, job);

    private double RunWorth(in Span span, Turn turn)
    {
        var length = turn.Size(span.Axis);
        if (span.Setting < 0 || span.Setting != turn.Setting(span.Axis.Other()))
            return double.MaxValue;
        var needs = span.IsFirst ? length : length + _kerf;
        var fits =
            needs < span.Room || (needs == span.Room && CanTakeAll(span.OpenAlong, span.IsShared, turn, span.Axis));
        return fits ? Leftover(span.Room - length, 0, span, turn) : double.MaxValue;
    }

    private double Leftover(long along, long across, in Span span, Turn turn)
    {
        if (Fit == Fit.ShortSide)
            return (Math.Min(along, across) / 1e6) + (Math.Max(along, across) / 1e9);
        return (((double)span.X * span.Y) - ((double)turn.X * turn.Y)) / 1e12;
    }

    /// <summary>At an exact fit nothing is cut off: right where a margin lies beyond, wrong where the size must come from a setting.</summary>
    private bool CanTakeAll(bool isOpen, bool isShared, Turn turn, SheetAxis axis)
    {
        if (!_hasOrder)
            return true;
        if (isShared)
            return false;
        var isKept = turn.Along?.Axis == axis || job.IsKept(turn.Setting(axis));
        return isOpen ? job.Saws.Dressing > 0 || !turn.Match(axis) || !isKept : !isKept && !job.CutsAll;
    }

    /// <summary>
    /// Where no margin is left to be cut off, the child that is visited last in a cell filled to the end, or parted there by a rough cut,
    /// is what remains, without a setting: no matched dimension may come about so, neither a sibling's nor that of what is put
    /// into such a strip.
    /// </summary>
    private bool LeavesMatchUncut(SheetLayout sheet, in Span span, Turn turn)
    {
        ref var cell = ref sheet.Cells[span.Cell];
        var isChild = span.Joining == Joining.Child;
        var isEndUncut = isChild
            ? turn.Size(span.Axis) == span.Room && !(span.OpenAlong && _hasMargin)
            : span.Joining == Joining.RoughRest && !_hasMargin;
        if (isEndUncut && HasMatch(sheet, span.Cell, cell.Axis))
            return true;
        if (!isChild || cell.IsRest || cell.Parent < 0)
            return false;
        ref var parent = ref sheet.Cells[cell.Parent];
        var isFilled =
            parent.Rest < 0
                ? parent.Used == parent.Along && !(parent.OpenAlong && _hasMargin)
                : sheet.Cells[parent.Rest].IsRough && !_hasMargin;
        var across = span.Axis.Other();
        return isFilled && turn.Match(across) && turn.Size(across) == span.Across;
    }

    /// <summary>True when the crosscut guide takes every piece that the stop would be used on: first the cell's, then the strip.</summary>
    /// <remarks>A rest grows again when what lies beside it is taken out, so it counts as wide as its region.</remarks>
    private bool IsGuided(SheetLayout sheet, in Span span, Turn turn)
    {
        var isRest = span.IsLoose || span.Joining is Joining.SmoothRest or Joining.RoughRest;
        var margin = span.OpenAcross || isRest ? job.Saws.Dressing + sheet.Stock.Piece.OutOfSquare.Nanometres : 0;
        var wide = isRest ? RegionSize(sheet, span) : (span.Axis == SheetAxis.Length ? span.Y : span.X);
        var across = wide + margin;
        if (turn.Along is { } line && line.Axis == span.Axis)
            return IsGuided(line, across);
        var strip = turn.Size(span.Axis);
        if (!job.Saws.CanCut(strip, across))
            return false;
        return turn.Along is { } within
            ? IsGuided(within, strip)
            : job.Saws.CanCut(turn.Size(span.Axis.Other()), strip);
    }

    /// <summary>The size across a span of the whole region it lies in.</summary>
    private static long RegionSize(SheetLayout sheet, in Span span)
    {
        var at = span.Cell;
        while (sheet.Cells[at].Parent >= 0)
            at = sheet.Cells[at].Parent;
        ref var root = ref sheet.Cells[at];
        return root.Axis == span.Axis ? root.Across : root.Along;
    }

    private bool IsGuided(RunLine line, long strip) =>
        line.Segments.SelectMany(s => s).All(member => job.Saws.CanCut(member.Size, strip));

    private bool HasMatch(SheetLayout sheet, int at, SheetAxis axis)
    {
        for (var child = sheet.Cells[at].First; child >= 0; child = sheet.Cells[child].Next)
        {
            ref var cell = ref sheet.Cells[child];
            if (cell.Item >= 0 ? job.Items[cell.Item].Turns[cell.Turn].Match(axis) : HasMatch(sheet, child, axis))
                return true;
            if (cell.Rest >= 0 && HasMatch(sheet, cell.Rest, axis))
                return true;
        }
        return false;
    }

    /// <summary>True when the rules that the item's cuts would bring in close no circle.</summary>
    private bool IsInOrder(SheetLayout sheet, in Span span, Turn turn)
    {
        if (turn.Along is { } line && line.Axis == span.Axis)
            return IsRunBefore(line, sheet, span);
        var first = turn.Setting(span.Axis);
        var then = turn.Setting(span.Axis.Other());
        if (turn.Along is not null || (turn.Size(span.Axis.Other()) == span.Across && TakesWhole(span, turn)))
            then = -1;
        if (!job.IsKept(first))
            first = -1;
        if (!job.IsKept(then) || then == first)
            then = -1;
        if (first >= 0 && then >= 0 && order.Reaches(then, first))
            return false;
        var before = sheet.Befores.Slice(span.Before, span.BeforeCount);
        return IsAfter(before, first, then)
            && IsBefore(sheet.Befores.Slice(span.After, span.AfterCount), first, before);
    }

    private bool IsAfter(ReadOnlySpan<int> before, int first, int then)
    {
        foreach (var entry in before)
        {
            var setting = Before.Setting(entry);
            if (first >= 0 && (setting != first || Before.IsThrough(entry)) && order.Reaches(first, setting))
                return false;
            if (then >= 0 && order.Reaches(then, setting))
                return false;
        }
        return true;
    }

    /// <summary>The run's own rules put its height before its widths once for all; what matters is what comes after it.</summary>
    private bool IsRunBefore(RunLine line, SheetLayout sheet, in Span span)
    {
        var before = sheet.Befores.Slice(span.Before, span.BeforeCount);
        foreach (var width in line.Settings)
            if (job.IsKept(width) && !IsBefore(sheet.Befores.Slice(span.After, span.AfterCount), width, before))
                return false;
        return true;
    }

    /// <summary>What comes after may not come before: neither the item's first setting nor, with that between, what precedes it.</summary>
    private bool IsBefore(ReadOnlySpan<int> after, int first, ReadOnlySpan<int> before)
    {
        foreach (var entry in after)
        {
            var setting = Before.Setting(entry);
            if (setting == first && !Before.IsThrough(entry))
                continue;
            if (IsReached(setting, first) || IsAnyReached(setting, before, first))
                return false;
        }
        return true;
    }

    private bool IsReached(int from, int setting) => setting >= 0 && order.Reaches(from, setting);

    private bool IsAnyReached(int from, ReadOnlySpan<int> before, int first)
    {
        foreach (var entry in before)
            if (Before.Setting(entry) is var setting && setting != first && order.Reaches(from, setting))
                return true;
        return false;
    }
}

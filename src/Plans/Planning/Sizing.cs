using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>After a change to a sheet's trees: the sizes of its cells, the wood they offer, and the rules of the visit order.</summary>
/// <remarks>
/// Sizes run up the tree first, to the least each cell could do with, and then down, to what it has: a rest is as wide as its
/// siblings leave it, and gives way to a new sibling down to its least.
/// </remarks>
internal sealed class Sizing(Job job, SettingOrder order) : ISizing
{
    private readonly long _kerf = job.Saws.Kerf;
    private readonly bool _hasOrder = job.HasOrder;
    private SheetLayout _sheet = null!;
    private Cell[] _cells = [];
    private (int First, int Then)[] _rules = new (int, int)[64];
    private int _ruleCount;

    /// <inheritdoc/>
    public void Refresh(SheetLayout sheet)
    {
        (_sheet, _cells, _ruleCount) = (sheet, sheet.Cells, 0);
        sheet.StartSpans();
        for (var root = 0; root < sheet.RootCount; root++)
        {
            Least(root);
            Offer(root, 0, 0);
        }
        sheet.Together /= sheet.Stock.Area;
        if (_hasOrder)
            ChangeRules();
    }

    /// <inheritdoc/>
    public void DropRules(SheetLayout sheet)
    {
        foreach (var (first, then) in sheet.Rules)
            order.Remove(first, then);
    }

    /// <inheritdoc/>
    public void BringRules(SheetLayout sheet)
    {
        foreach (var (first, then) in sheet.Rules)
            order.Add(first, then);
    }

    private void ChangeRules()
    {
        for (var i = 0; i < _ruleCount; i++)
            order.Add(_rules[i].First, _rules[i].Then);
        var old = _sheet.SwapRules(_rules, _ruleCount, out var had);
        for (var i = 0; i < had; i++)
            order.Remove(old[i].First, old[i].Then);
        _rules = old;
    }

    private void Least(int at)
    {
        ref var cell = ref _cells[at];
        if (cell.Item >= 0)
        {
            cell.Items = 1;
            cell.LeastAlong = job.Items[cell.Item].Turns[cell.Turn].Size(cell.Axis);
            return;
        }
        long used = 0;
        long across = 0;
        var items = 0;
        for (var child = cell.First; child >= 0; child = _cells[child].Next)
        {
            Least(child);
            used += _cells[child].Across + (child == cell.First ? 0 : _kerf);
            across = Math.Max(across, _cells[child].LeastAlong);
            items += _cells[child].Items;
        }
        (cell.Used, cell.LeastAlong) = (used, used);
        if (cell.Rest >= 0)
        {
            Least(cell.Rest);
            cell.LeastAlong += Gap(cell.Rest) + _cells[cell.Rest].LeastAcross;
            across = Math.Max(across, _cells[cell.Rest].LeastAlong);
            items += _cells[cell.Rest].Items;
        }
        (cell.LeastAcross, cell.Items) = (across, items);
    }

    private long Gap(int rest) => _cells[rest].IsRough ? job.Saws.RoughGap : _kerf;

    /// <summary>Settles the sizes of a cell's children and lists what it and they offer.</summary>
    private void Offer(int at, int before, int beforeCount)
    {
        ref var cell = ref _cells[at];
        if (cell.Item >= 0)
            return;
        OfferChild(at, before, beforeCount);
        var (inside, insideCount) = _hasOrder ? BeforeRest(at, before, beforeCount) : (0, 0);
        if (cell.Children == 0)
            OfferTurned(at);
        else if (cell.Rest < 0 && !cell.IsFull)
            OfferBeyond(at, inside, insideCount);
        for (var child = cell.First; child >= 0; child = _cells[child].Next)
            OfferIn(at, child, before, beforeCount);
        if (cell.Rest >= 0)
            OfferRest(at, cell.Rest, inside, insideCount);
    }

    private void OfferIn(int at, int child, int before, int beforeCount)
    {
        ref var cell = ref _cells[child];
        cell.Along = _cells[at].Across;
        cell.OpenAlong = _cells[at].OpenAcross;
        if (_hasOrder)
        {
            AddRulesOf(child, before, beforeCount);
            (before, beforeCount) = BeforeChild(cell.Setting, before, beforeCount);
        }
        Offer(child, before, beforeCount);
    }

    /// <summary>What is visited before a strip is cut further: its own setting, or through a free one what comes before that.</summary>
    private (int Start, int Count) BeforeChild(int setting, int before, int beforeCount)
    {
        var start = _sheet.BeforeCount;
        if (job.IsKept(setting))
            _sheet.AddBefore(setting);
        else
            for (var i = 0; i < beforeCount; i++)
                AddOnce(Before.Through(_sheet.Befores[before + i]), start);
        return (start, _sheet.BeforeCount - start);
    }

    private void OfferRest(int at, int rest, int before, int beforeCount)
    {
        ref var cell = ref _cells[rest];
        cell.Along = _cells[at].Across;
        cell.Across = _cells[at].Along - _cells[at].Used - Gap(rest);
        (cell.OpenAlong, cell.OpenAcross) = (_cells[at].OpenAcross, _cells[at].OpenAlong);
        Offer(rest, cell.IsRough ? 0 : before, cell.IsRough ? 0 : beforeCount);
    }

    private void AddRulesOf(int child, int before, int beforeCount)
    {
        ref var cell = ref _cells[child];
        if (cell.Setting >= 0)
            AddRules(before, beforeCount, cell.Setting);
        else if (cell.Item >= 0 && job.Items[cell.Item].Turns[cell.Turn].Along is { } line)
            foreach (var setting in line.Settings)
                AddRules(before, beforeCount, setting);
    }

    private void AddRules(int before, int beforeCount, int setting)
    {
        if (!job.IsKept(setting))
            return;
        if (_rules.Length < _ruleCount + beforeCount)
            Array.Resize(ref _rules, Math.Max(_ruleCount + beforeCount, 2 * _rules.Length));
        for (var i = 0; i < beforeCount; i++)
            if (Before.Setting(_sheet.Befores[before + i]) is var first && first != setting)
                _rules[_ruleCount++] = (first, setting);
    }

    /// <summary>What is visited before a smooth rest is cut: the settings of its siblings, and for free ones what comes before those.</summary>
    private (int Start, int Count) BeforeRest(int at, int before, int beforeCount)
    {
        var start = _sheet.BeforeCount;
        var hasFree = false;
        for (var child = _cells[at].First; child >= 0; child = _cells[child].Next)
            hasFree |= !AddCutsOf(child, start);
        if (hasFree)
            for (var i = 0; i < beforeCount; i++)
                AddOnce(Before.Through(_sheet.Befores[before + i]), start);
        return (start, _sheet.BeforeCount - start);
    }

    /// <summary>Adds the kept settings that take a cell off its parent; false when there are none.</summary>
    private bool AddCutsOf(int child, int start)
    {
        ref var cell = ref _cells[child];
        if (cell.Setting >= 0)
        {
            if (!job.IsKept(cell.Setting))
                return false;
            AddOnce(cell.Setting, start);
            return true;
        }
        var isKept = false;
        if (cell.Item >= 0 && job.Items[cell.Item].Turns[cell.Turn].Along is { } line)
            foreach (var setting in line.Settings)
                if (job.IsKept(setting))
                {
                    AddOnce(setting, start);
                    isKept = true;
                }
        return isKept;
    }

    private void AddOnce(int setting, int start)
    {
        if (!_sheet.Befores[start..].Contains(setting))
            _sheet.AddBefore(setting);
    }

    /// <summary>The kept settings that the cuts within a rest begin with.</summary>
    private void AddFirstOf(int rest, int start)
    {
        for (var child = _cells[rest].First; child >= 0; child = _cells[child].Next)
            if (!AddCutsOf(child, start))
                AddThrough(child, start);
        if (_cells[rest].Rest is >= 0 and var beyond && !_cells[beyond].IsRough)
            AddFirstOf(beyond, start);
    }

    /// <summary>The kept settings that the cuts within a freely cut strip begin with: the free cut comes between.</summary>
    private void AddThrough(int strip, int start)
    {
        var from = _sheet.BeforeCount;
        AddFirstOf(strip, from);
        _sheet.MarkThrough(from);
    }

    private void OfferChild(int at, int before, int beforeCount)
    {
        ref var cell = ref _cells[at];
        var hasRest = cell.Rest >= 0;
        if (cell.IsFull || (hasRest && job.Saws.Dressing == 0 && _cells[cell.Rest].IsRough))
            return;
        var after = _sheet.BeforeCount;
        if (_hasOrder && hasRest && !_cells[cell.Rest].IsRough)
            AddFirstOf(cell.Rest, after);
        var span = SpanOf(
            at,
            Joining.Child,
            cell.Axis,
            cell.Along - cell.LeastAlong - (cell.Children > 0 ? _kerf : 0),
            cell.Across
        );
        span.Setting = cell.IsRest ? -1 : cell.Setting;
        (span.OpenAlong, span.OpenAcross) = (cell.OpenAlong, cell.OpenAcross);
        span.IsFirst = cell.Children == 0;
        span.IsLoose = cell.IsRest;
        span.IsShared = _hasOrder && hasRest && !(cell.OpenAlong && job.Saws.Dressing > 0);
        (span.Before, span.BeforeCount) = (before, beforeCount);
        (span.After, span.AfterCount) = (after, _sheet.BeforeCount - after);
        Add(span, !hasRest);
    }

    private void OfferTurned(int at)
    {
        ref var cell = ref _cells[at];
        var span = SpanOf(at, Joining.Turned, cell.Axis.Other(), cell.Across, cell.Along);
        (span.OpenAlong, span.OpenAcross) = (cell.OpenAcross, cell.OpenAlong);
        (span.Setting, span.IsFirst) = (-1, true);
        Add(span, false);
    }

    private void OfferBeyond(int at, int before, int beforeCount)
    {
        ref var cell = ref _cells[at];
        var span = SpanOf(at, Joining.SmoothRest, cell.Axis.Other(), cell.Across, cell.Along - cell.Used - _kerf);
        (span.OpenAlong, span.OpenAcross) = (cell.OpenAcross, cell.OpenAlong);
        (span.Setting, span.IsFirst, span.IsLoose) = (-1, true, true);
        (span.Before, span.BeforeCount) = (before, beforeCount);
        Add(span, false);
        var hasTrack = cell.Across + (2 * job.Saws.Dressing) <= job.Saws.TrackLength;
        if (!cell.IsRough || !_hasOrder || !hasTrack)
            return;
        span = SpanOf(
            at,
            Joining.RoughRest,
            cell.Axis.Other(),
            cell.Across,
            cell.Along - cell.Used - job.Saws.RoughGap
        );
        (span.OpenAlong, span.OpenAcross) = (cell.OpenAcross, cell.OpenAlong);
        (span.Setting, span.IsFirst, span.IsLoose) = (-1, true, true);
        Add(span, false);
    }

    private void Add(in Span span, bool isCounted)
    {
        if (span.X <= 0 || span.Y <= 0)
            return;
        _sheet.Add(span);
        if (isCounted)
        {
            var area = span.X / 1e3 * (span.Y / 1e3);
            _sheet.Together += area * area;
        }
    }

    private static Span SpanOf(int cell, Joining joining, SheetAxis axis, long room, long across) =>
        new()
        {
            Cell = cell,
            Joining = joining,
            Axis = axis,
            X = axis == SheetAxis.Length ? room : across,
            Y = axis == SheetAxis.Length ? across : room,
        };
}

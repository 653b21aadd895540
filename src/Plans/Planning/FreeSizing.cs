using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>After a change to free trees: the sizes of the cells and the wood they offer.</summary>
/// <remarks>
/// <see cref="Cell.LeastAlong"/> and <see cref="Cell.LeastAcross"/> are what a cell needs; <see cref="Cell.Along"/> and
/// <see cref="Cell.Across"/> what it could have while all others keep what they need.
/// </remarks>
internal sealed class FreeSizing(Job job) : ISizing
{
    private readonly long _kerf = job.Saws.Kerf;
    private SheetLayout _sheet = null!;
    private Cell[] _cells = [];

    /// <inheritdoc/>
    public void Refresh(SheetLayout sheet)
    {
        (_sheet, _cells) = (sheet, sheet.Cells);
        sheet.StartSpans();
        for (var root = 0; root < sheet.RootCount; root++)
        {
            Least(root);
            Offer(root, _cells[root].Along, _cells[root].Across);
            OfferBeyond(root);
        }
        sheet.Together /= sheet.Stock.Area;
    }

    /// <inheritdoc/>
    public void DropRules(SheetLayout sheet) { }

    /// <inheritdoc/>
    public void BringRules(SheetLayout sheet) { }

    private void Least(int at)
    {
        ref var cell = ref _cells[at];
        if (cell.Item >= 0)
        {
            var turn = job.Items[cell.Item].Turns[cell.Turn];
            (cell.LeastAlong, cell.LeastAcross) = (turn.Size(cell.Axis), turn.Size(cell.Axis.Other()));
            cell.Items = 1;
            return;
        }
        (cell.Used, cell.LeastAcross, cell.Items) = (0, 0, 0);
        for (var child = cell.First; child >= 0; child = _cells[child].Next)
        {
            ref var other = ref _cells[child];
            other.Axis = cell.Axis.Other();
            Least(child);
            cell.Used += other.LeastAcross + (child == cell.First ? 0 : _kerf);
            cell.LeastAcross = Math.Max(cell.LeastAcross, other.LeastAlong);
            cell.Items += other.Items;
        }
        cell.LeastAlong = cell.Used;
    }

    /// <summary>Lists what a cell offers, which has this much wood if the slack stays at its parents' far ends.</summary>
    private void Offer(int at, long along, long across)
    {
        ref var cell = ref _cells[at];
        var gap = cell.Children > 0 ? _kerf : 0;
        Add(at, Joining.Child, cell.Axis, cell.Along - cell.Used - gap, cell.Across);
        Count(along - cell.Used - gap, across);
        var slack = cell.Along - cell.Used;
        for (var child = cell.First; child >= 0; child = _cells[child].Next)
        {
            ref var other = ref _cells[child];
            (other.Along, other.Across) = (cell.Across, other.LeastAcross + slack);
            if (other.Item < 0)
            {
                Offer(child, across, other.LeastAcross);
                continue;
            }
            Count(across - other.LeastAlong - _kerf, other.LeastAcross);
            if (cell.Children > 1)
                Add(child, Joining.Wrap, other.Axis, cell.Across - other.LeastAlong - _kerf, other.Across);
        }
    }

    private void OfferBeyond(int root)
    {
        ref var cell = ref _cells[root];
        if (cell.Children > 0)
            Add(root, Joining.Beyond, cell.Axis.Other(), cell.Across - cell.LeastAcross - _kerf, cell.Along);
    }

    private void Count(long along, long across)
    {
        if (along <= 0 || across <= 0)
            return;
        var area = along / 1e3 * (across / 1e3);
        _sheet.Together += area * area;
    }

    private void Add(int at, Joining joining, SheetAxis axis, long room, long across)
    {
        if (room <= 0 || across <= 0)
            return;
        var isX = axis == SheetAxis.Length;
        _sheet.Add(
            new()
            {
                Cell = at,
                Joining = joining,
                Axis = axis,
                X = isX ? room : across,
                Y = isX ? across : room,
                Setting = -1,
            }
        );
    }
}

using Nookwright.Projects;

namespace Nookwright.Design;

/// <summary>Who stands before whom, in which row.</summary>
internal sealed class RowOrder
{
    private readonly ILookup<string, (Row Row, string Before)> _before;
    private readonly HashSet<(RowDirection, string)> _followed;

    public RowOrder(IReadOnlyList<Row> rows)
    {
        var pairs = rows.SelectMany(row => row.Pieces.Zip(row.Pieces.Skip(1), (a, b) => (row, a, b))).ToList();
        _before = pairs.ToLookup(pair => pair.b, pair => (pair.row, pair.a));
        _followed = [.. pairs.Select(pair => (pair.row.Direction, pair.a))];
    }

    /// <summary>
    /// The row that sets a piece's place in a direction, and the piece before it there: a row that goes that way when there is
    /// one, else any it stands in, since neighbours in a row line up.
    /// </summary>
    public (Row Row, string Before)? Setting(string piece, RowDirection direction)
    {
        var rows = _before[piece].ToList();
        return rows.Count == 0 ? null
            : rows.FindIndex(r => r.Row.Direction == direction) is var at and >= 0 ? rows[at]
            : rows[0];
    }

    /// <summary>True when a piece in a row that goes this way stands after it.</summary>
    public bool IsFollowed(string piece, RowDirection direction) => _followed.Contains((direction, piece));
}

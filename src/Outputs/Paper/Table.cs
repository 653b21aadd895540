using Nookwright.Drawing;
using Nookwright.Lettering;

namespace Nookwright.Paper;

/// <summary>A column of a table.</summary>
/// <param name="Head">On top of it.</param>
/// <param name="Share">Of the table's width, over the sum of all shares.</param>
/// <param name="Anchor">Where its texts stand.</param>
/// <param name="Bold">True for what is looked up by.</param>
internal sealed record Column(string Head, double Share, Anchor Anchor = Anchor.Start, bool Bold = false);

/// <summary>A table that breaks over pages between its rows and repeats its heads.</summary>
/// <param name="Columns">From the left.</param>
internal sealed record Table(IReadOnlyList<Column> Columns)
{
    /// <summary>In place of a text: a square to tick.</summary>
    public const string TickBox = "\u2610";

    private const double Size = TypeSize.Table;
    private const double Gutter = 4;
    private const double Padding = 0.9;

    /// <summary>Draws the rows.</summary>
    /// <param name="flow">Where to.</param>
    /// <param name="rows">One text per column; a text may need several lines.</param>
    public void Draw(PageFlow flow, IEnumerable<IReadOnlyList<string>> rows)
    {
        var columns = Placed(flow.Paper).ToList();
        var heads = Wrapped(columns, [.. Columns.Select(c => c.Head)], allBold: true);
        var first = true;
        foreach (var row in rows.Select(row => Wrapped(columns, row, allBold: false)))
        {
            if (flow.Need(Height(row) + (first ? Height(heads) : 0)) || first)
                DrawRow(flow, columns, heads, Pen.Outline, bold: true);
            DrawRow(flow, columns, row, Pen.Dimension, bold: false);
            first = false;
        }
        flow.Space(3);
    }

    private IEnumerable<PlacedColumn> Placed(PaperFormat paper)
    {
        var unit = (paper.BodyWidth - (Gutter * (Columns.Count - 1))) / Columns.Sum(c => c.Share);
        var x = paper.Left;
        foreach (var column in Columns)
        {
            yield return new(column, x, column.Share * unit);
            x += (column.Share * unit) + Gutter;
        }
    }

    private static IReadOnlyList<string>[] Wrapped(
        IReadOnlyList<PlacedColumn> columns,
        IReadOnlyList<string> texts,
        bool allBold
    ) => [.. columns.Zip(texts, (c, text) => TextMetrics.Lines(text, c.Width, Size, c.Column.Bold || allBold))];

    private static double Height(IReadOnlyList<string>[] row) =>
        (row.Max(cell => cell.Count) * Size * TypeSize.Leading) + (2 * Padding);

    private static void DrawRow(
        PageFlow flow,
        IReadOnlyList<PlacedColumn> columns,
        IReadOnlyList<string>[] row,
        Pen under,
        bool bold
    )
    {
        foreach (var (column, cell) in columns.Zip(row))
        {
            var baseline = flow.Y + Padding + (Size * TypeSize.Ascent);
            foreach (var line in cell)
            {
                flow.Add(column.Label(line, baseline, bold));
                baseline += Size * TypeSize.Leading;
            }
        }
        flow.Space(Height(row));
        flow.Add(Shapes.Rule(flow.Paper.Left, flow.Paper.Right, flow.Y, under));
    }

    private sealed record PlacedColumn(Column Column, double X, double Width)
    {
        public Mark Label(string text, double baseline, bool bold)
        {
            if (text == TickBox)
                return Shapes.TickBox(X, baseline - Size + 0.3, Size);
            var x = Column.Anchor switch
            {
                Anchor.Middle => X + (Width / 2),
                Anchor.End => X + Width,
                _ => X,
            };
            return new Mark.Label(text, new(x, baseline), Size, Column.Anchor, Bold: bold || Column.Bold);
        }
    }
}

using System.Numerics;

namespace Nookwright.Bounds;

/// <summary>The most any guillotine cutting of a rectangle yields, for rectangles of all sizes that matter.</summary>
/// <remarks>
/// Dynamic programming after Gilmore and Gomory, "The theory and computation of knapsack functions", Operations Research 14,
/// 1966, on cut points (J. E. Beasley, "Algorithms for unconstrained two-dimensional guillotine cutting", Journal of the
/// Operational Research Society 36, 1985): a rectangle is worth what it holds uncut, or what two smaller ones are worth
/// together, a gap between them. Nothing limits how often a thing is taken, so the worth is never too small.
/// </remarks>
internal sealed class GuillotineTable
{
    // What is reckoned at once, as far as effort is concerned: the same on every machine, whatever its vectors hold.
    private const double AtOnce = 8;

    private readonly CutPoints _x;
    private readonly CutPoints _y;
    private readonly int[] _uncut;
    private readonly int[] _worth;
    private readonly Splits _splitsX;
    private readonly Splits _splitsY;

    /// <param name="x">Cut points along.</param>
    /// <param name="y">Cut points across.</param>
    /// <param name="gapX">What is lost between two pieces along, in steps.</param>
    /// <param name="gapY">The same across.</param>
    public GuillotineTable(CutPoints x, CutPoints y, int gapX, int gapY)
    {
        (_x, _y) = (x, y);
        (_splitsX, _splitsY) = (new(x, gapX), new(y, gapY));
        _uncut = new int[x.At.Length * y.At.Length];
        _worth = new int[_uncut.Length];
    }

    /// <summary>About how many steps of reckoning filling it takes.</summary>
    public double Effort =>
        (((double)_splitsX.Count * _y.At.Length) + ((double)_splitsY.Count * _x.At.Length)) / AtOnce;

    /// <summary>The most a rectangle of these sizes, in steps, yields.</summary>
    public int Worth(int sizeX, int sizeY) => _worth[Index(_x.Below(sizeX), _y.Below(sizeY))];

    /// <summary>Forgets all worths.</summary>
    public void Clear() => Array.Clear(_uncut);

    /// <summary>Says that a rectangle of these sizes, in steps, is worth so much uncut.</summary>
    public void Offer(int sizeX, int sizeY, int worth)
    {
        ref var known = ref _uncut[Index(_x.Below(sizeX), _y.Below(sizeY))];
        known = Math.Max(known, worth);
    }

    /// <summary>Works out all worths.</summary>
    public void Fill()
    {
        var columns = new int[_y.At.Length * Vector<int>.Count];
        for (var i = 1; i < _x.At.Length; )
        {
            var rows = Independent(i);
            for (var row = i; row < i + rows; row++)
                FillAlong(row);
            FillAcross(i, rows, columns);
            i += rows;
        }
    }

    /// <summary>The best cutting of a rectangle, then the best ones that begin with other cuts: the rectangles left uncut, sizes in steps.</summary>
    /// <param name="sizeX">The rectangle's size along, in steps.</param>
    /// <param name="sizeY">Its size across.</param>
    /// <param name="others">How many others at most.</param>
    public IEnumerable<IReadOnlyList<(int X, int Y)>> Cuttings(int sizeX, int sizeY, int others)
    {
        var (i, j) = (_x.Below(sizeX), _y.Below(sizeY));
        yield return Uncut([(i, j)]);
        foreach (var halves in FirstCuts(i, j).OrderByDescending(Together).Take(others))
            yield return Uncut([halves.First, halves.Second]);
    }

    private int Together(((int I, int J) First, (int I, int J) Second) halves) =>
        _worth[Index(halves.First.I, halves.First.J)] + _worth[Index(halves.Second.I, halves.Second.J)];

    private List<((int I, int J) First, (int I, int J) Second)> FirstCuts(int i, int j)
    {
        var cuts = new List<((int, int), (int, int))>();
        foreach (var (first, second) in _splitsX.Of(i))
            cuts.Add(((first, j), (second, j)));
        foreach (var (first, second) in _splitsY.Of(j))
            cuts.Add(((i, first), (i, second)));
        return cuts;
    }

    /// <summary>How the worth of rectangles comes about: all that is left uncut in their best cuttings.</summary>
    private List<(int X, int Y)> Uncut(IEnumerable<(int I, int J)> rectangles)
    {
        var uncut = new List<(int, int)>();
        var left = new Stack<(int I, int J)>(rectangles);
        while (left.TryPop(out var at))
        {
            var worth = _worth[Index(at.I, at.J)];
            if (worth == 0)
                continue;
            if (_uncut[Index(at.I, at.J)] == worth)
                uncut.Add((_x.At[at.I], _y.At[at.J]));
            else
                foreach (var part in Parts(at.I, at.J, worth))
                    left.Push(part);
        }
        return uncut;
    }

    private IEnumerable<(int I, int J)> Parts(int i, int j, int worth)
    {
        if (_worth[Index(i - 1, j)] == worth)
            return [(i - 1, j)];
        if (_worth[Index(i, j - 1)] == worth)
            return [(i, j - 1)];
        foreach (var (first, second) in FirstCuts(i, j))
            if (Together((first, second)) == worth)
                return [first, second];
        throw new InvalidOperationException("A worth in the table has no cutting that gives it.");
    }

    /// <summary>How many rows from this one on no cut along joins: what two of them differ by is less than the smallest piece.</summary>
    private int Independent(int row)
    {
        var rows = 1;
        while (rows < Vector<int>.Count && row + rows < _x.At.Length && _x.At[row + rows] - _x.At[row] < _x.At[1])
            rows++;
        return rows;
    }

    private void FillAlong(int i)
    {
        var row = Row(i);
        Row(_uncut, i).CopyTo(row);
        foreach (var (first, second) in _splitsX.Of(i))
            Raise(row, Row(first), Row(second));
    }

    /// <summary>Cuts across for several rows at once, and what a row gets from the one before: its rectangles are no larger.</summary>
    private void FillAcross(int row, int rows, int[] columns)
    {
        var lanes = Vector<int>.Count;
        for (var r = 0; r < rows; r++)
        for (var j = 0; j < _y.At.Length; j++)
            columns[(j * lanes) + r] = _worth[Index(row + r, j)];
        for (var j = 1; j < _y.At.Length; j++)
        {
            var worth = Vector.Max(new Vector<int>(columns, j * lanes), new Vector<int>(columns, (j - 1) * lanes));
            foreach (var (first, second) in _splitsY.Of(j))
                worth = Vector.Max(
                    worth,
                    new Vector<int>(columns, first * lanes) + new Vector<int>(columns, second * lanes)
                );
            worth.CopyTo(columns, j * lanes);
            var before = _worth[Index(row - 1, j)];
            for (var r = 0; r < rows; r++)
                _worth[Index(row + r, j)] =
                    columns[(j * lanes) + r] =
                    before =
                        Math.Max(before, columns[(j * lanes) + r]);
        }
    }

    /// <summary>Raises each number of a row to the sum of two others where that is more.</summary>
    private static void Raise(Span<int> row, ReadOnlySpan<int> first, ReadOnlySpan<int> second)
    {
        var j = 0;
        for (; j <= row.Length - Vector<int>.Count; j += Vector<int>.Count)
            Vector
                .Max(new Vector<int>(row[j..]), new Vector<int>(first[j..]) + new Vector<int>(second[j..]))
                .CopyTo(row[j..]);
        for (; j < row.Length; j++)
            row[j] = Math.Max(row[j], first[j] + second[j]);
    }

    private Span<int> Row(int i) => Row(_worth, i);

    private Span<int> Row(int[] table, int i) => table.AsSpan(i * _y.At.Length, _y.At.Length);

    private int Index(int i, int j) => (i * _y.At.Length) + j;
}

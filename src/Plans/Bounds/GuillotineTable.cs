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
        ((double)_splitsX.Count * _y.At.Length / Vector<int>.Count) + ((double)_splitsY.Count * _x.At.Length);

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
        for (var i = 1; i < _x.At.Length; i++)
        {
            var row = Row(i);
            Row(_uncut, i).CopyTo(row);
            Raise(row, Row(i - 1), Row(0));
            foreach (var (first, second) in _splitsX.Of(i))
                Raise(row, Row(first), Row(second));
            FillAcross(row);
        }
    }

    /// <summary>How the worth of a rectangle comes about: tells of every uncut rectangle in the best cutting, sizes in steps.</summary>
    public void Trace(int sizeX, int sizeY, Action<int, int> uncut)
    {
        var left = new Stack<(int I, int J)>();
        left.Push((_x.Below(sizeX), _y.Below(sizeY)));
        while (left.TryPop(out var at))
        {
            var worth = _worth[Index(at.I, at.J)];
            if (worth == 0)
                continue;
            if (_uncut[Index(at.I, at.J)] == worth)
                uncut(_x.At[at.I], _y.At[at.J]);
            else
                foreach (var part in Parts(at.I, at.J, worth))
                    left.Push(part);
        }
    }

    private IEnumerable<(int I, int J)> Parts(int i, int j, int worth)
    {
        if (_worth[Index(i - 1, j)] == worth)
            return [(i - 1, j)];
        if (_worth[Index(i, j - 1)] == worth)
            return [(i, j - 1)];
        foreach (var (first, second) in _splitsX.Of(i))
            if (_worth[Index(first, j)] + _worth[Index(second, j)] == worth)
                return [(first, j), (second, j)];
        foreach (var (first, second) in _splitsY.Of(j))
            if (_worth[Index(i, first)] + _worth[Index(i, second)] == worth)
                return [(i, first), (i, second)];
        throw new InvalidOperationException("A worth in the table has no cutting that gives it.");
    }

    private void FillAcross(Span<int> row)
    {
        for (var j = 1; j < row.Length; j++)
        {
            var worth = Math.Max(row[j], row[j - 1]);
            foreach (var (first, second) in _splitsY.Of(j))
                worth = Math.Max(worth, row[first] + row[second]);
            row[j] = worth;
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

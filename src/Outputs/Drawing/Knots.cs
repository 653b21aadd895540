namespace Nookwright.Drawing;

/// <summary>Puts things in order after those that come before them; things that come before each other in a ring are one knot.</summary>
/// <remarks>Strongly connected components in depth-first order (Tarjan 1972).</remarks>
internal sealed class Knots
{
    private readonly IReadOnlyList<int>[] _before;
    private readonly int[] _found;
    private readonly int[] _lowest;
    private readonly bool[] _isOpen;
    private readonly Stack<int> _open = new();
    private readonly List<IReadOnlyList<int>> _knots = [];
    private int _count;

    private Knots(IReadOnlyList<int>[] before)
    {
        _before = before;
        (_found, _lowest, _isOpen) = (new int[before.Length], new int[before.Length], new bool[before.Length]);
    }

    /// <summary>The knots in order; most hold one thing.</summary>
    /// <param name="before">For each thing, those that come before it.</param>
    public static IReadOnlyList<IReadOnlyList<int>> InOrder(IReadOnlyList<int>[] before)
    {
        var knots = new Knots(before);
        for (var i = 0; i < before.Length; i++)
            if (knots._found[i] == 0)
                knots.Visit(i);
        return knots._knots;
    }

    private void Visit(int thing)
    {
        _found[thing] = _lowest[thing] = ++_count;
        _open.Push(thing);
        _isOpen[thing] = true;
        foreach (var earlier in _before[thing])
            if (_found[earlier] == 0)
            {
                Visit(earlier);
                _lowest[thing] = Math.Min(_lowest[thing], _lowest[earlier]);
            }
            else if (_isOpen[earlier])
                _lowest[thing] = Math.Min(_lowest[thing], _found[earlier]);
        if (_lowest[thing] == _found[thing])
            _knots.Add(Close(thing));
    }

    private List<int> Close(int thing)
    {
        var knot = new List<int>();
        do
        {
            knot.Add(_open.Pop());
            _isOpen[knot[^1]] = false;
        } while (knot[^1] != thing);
        return knot;
    }
}

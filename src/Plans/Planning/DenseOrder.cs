using System.Numerics;

namespace Nookwright.Planning;

/// <summary>The order of up to some hundreds of settings, with who comes before whom known at a glance.</summary>
/// <remarks>
/// For every setting, a row of bits says which settings its own rules name, and another which ones come after it by any
/// chain of rules. A new rule widens the second rows at once; a rule that goes leaves them to be drawn up again, unless
/// another chain says the same.
/// </remarks>
internal sealed class DenseOrder : SettingOrder
{
    private readonly int _count;
    private readonly int _words;
    private readonly int[] _firstRanks;
    private readonly int[] _times;
    private readonly ulong[] _next;
    private readonly ulong[] _reach;
    private readonly bool[] _isDone;
    private int[]? _ranks;
    private bool _isStale;

    /// <summary>No rules yet; ranked as given.</summary>
    /// <param name="ranks">A permutation of 0 to the number of settings less one.</param>
    public DenseOrder(IReadOnlyList<int> ranks)
    {
        _firstRanks = [.. ranks];
        _count = ranks.Count;
        _words = (_count + 63) / 64;
        _times = new int[_count * _count];
        _next = new ulong[_count * _words];
        _reach = new ulong[_count * _words];
        _isDone = new bool[_count];
    }

    /// <inheritdoc/>
    public override int Rank(int setting) => (_ranks ??= Ranks())[setting];

    /// <inheritdoc/>
    public override bool Reaches(int first, int then)
    {
        if (first == then)
            return true;
        if (_isStale)
            DrawUp();
        return Has(_reach, first, then);
    }

    /// <inheritdoc/>
    public override void Add(int first, int then)
    {
        if (first == then || _times[(first * _count) + then]++ > 0)
            return;
        _ranks = null;
        Set(_next, first, then);
        if (!_isStale && !Has(_reach, first, then))
            Spread(first, then);
    }

    /// <inheritdoc/>
    public override void Remove(int first, int then)
    {
        if (first == then)
            return;
        var left = --_times[(first * _count) + then];
        if (left < 0)
            throw new InvalidOperationException("A rule of the visit order was taken back twice.");
        if (left > 0)
            return;
        _ranks = null;
        _next[(first * _words) + (then >> 6)] &= ~(1UL << (then & 63));
        _isStale = _isStale || !HasDetour(first, then);
    }

    private void Spread(int first, int then)
    {
        for (var setting = 0; setting < _count; setting++)
            if (setting == first || Has(_reach, setting, first))
            {
                Widen(setting, then);
                Set(_reach, setting, then);
            }
    }

    private bool HasDetour(int first, int then)
    {
        for (var word = 0; word < _words; word++)
        for (var bits = _next[(first * _words) + word]; bits != 0; bits &= bits - 1)
            if (Has(_reach, (word << 6) + BitOperations.TrailingZeroCount(bits), then))
                return true;
        return false;
    }

    private void DrawUp()
    {
        Array.Clear(_isDone);
        Array.Copy(_next, _reach, _next.Length);
        for (var setting = 0; setting < _count; setting++)
            DrawUp(setting);
        _isStale = false;
    }

    private void DrawUp(int setting)
    {
        if (_isDone[setting])
            return;
        _isDone[setting] = true;
        for (var word = 0; word < _words; word++)
        for (var bits = _next[(setting * _words) + word]; bits != 0; bits &= bits - 1)
        {
            var then = (word << 6) + BitOperations.TrailingZeroCount(bits);
            DrawUp(then);
            Widen(setting, then);
        }
    }

    private void Widen(int setting, int by)
    {
        for (var word = 0; word < _words; word++)
            _reach[(setting * _words) + word] |= _reach[(by * _words) + word];
    }

    /// <summary>Always the setting that was ranked first among those with nothing before them.</summary>
    private int[] Ranks()
    {
        var ranks = new int[_count];
        var before = new int[_count];
        for (var rule = 0; rule < _times.Length; rule++)
            before[rule % _count] += _times[rule] > 0 ? 1 : 0;
        var ready = new PriorityQueue<int, int>();
        for (var setting = 0; setting < _count; setting++)
            if (before[setting] == 0)
                ready.Enqueue(setting, _firstRanks[setting]);
        var rank = 0;
        while (ready.TryDequeue(out var setting, out _))
        {
            ranks[setting] = rank++;
            for (var then = 0; then < _count; then++)
                if (_times[(setting * _count) + then] > 0 && --before[then] == 0)
                    ready.Enqueue(then, _firstRanks[then]);
        }
        return rank == _count
            ? ranks
            : throw new InvalidOperationException("The rules of the visit order run in a circle.");
    }

    private bool Has(ulong[] rows, int first, int then) =>
        (rows[(first * _words) + (then >> 6)] >> (then & 63) & 1) != 0;

    private void Set(ulong[] rows, int first, int then) => rows[(first * _words) + (then >> 6)] |= 1UL << (then & 63);
}

namespace Nookwright.Bounds;

/// <summary>For every cut point the pairs of smaller ones it can be split into, a gap between them.</summary>
internal sealed class Splits
{
    private readonly (int First, int Second)[] _pairs;
    private readonly int[] _start;

    public Splits(CutPoints points, int gap)
    {
        var pairs = new List<(int, int)>();
        _start = new int[points.At.Length + 1];
        for (var i = 0; i < points.At.Length; i++)
        {
            for (var first = 1; first <= i && (2 * points.At[first]) + gap <= points.At[i]; first++)
                if (points.Below(points.At[i] - gap - points.At[first]) is var second and > 0)
                    pairs.Add((first, second));
            _start[i + 1] = pairs.Count;
        }
        _pairs = [.. pairs];
    }

    /// <summary>How many there are in all.</summary>
    public int Count => _pairs.Length;

    /// <summary>The smaller half first, by indexes of cut points; the second is as large as can be.</summary>
    public ReadOnlySpan<(int First, int Second)> Of(int point) => _pairs.AsSpan(_start[point].._start[point + 1]);
}

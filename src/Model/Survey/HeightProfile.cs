namespace Nookwright.Survey;

/// <summary>Something known at a few heights: straight between them.</summary>
/// <remarks>
/// Numbers are nanometres as decimals: 28 digits, so that sums, halves and straight lines between marks of a tape come
/// out exact and only square roots do not.
/// </remarks>
internal sealed class HeightProfile
{
    private readonly bool _runsOn;
    private readonly List<(decimal Height, decimal Value)> _knots;

    /// <summary>Through these points, one at each height; none means nought everywhere.</summary>
    /// <param name="knots">Heights and values.</param>
    /// <param name="runsOn">True to go on straight above the highest, as a leaning wall does; false to stay level.</param>
    public HeightProfile(IEnumerable<(decimal Height, decimal Value)> knots, bool runsOn = false)
    {
        _runsOn = runsOn;
        _knots = [.. knots.OrderBy(k => k.Height)];
    }

    public bool IsKnown => _knots.Count > 0;

    public decimal Lowest => IsKnown ? _knots[0].Value : 0;

    public decimal At(decimal height)
    {
        if (!IsKnown)
            return 0;
        var above = _knots.FindIndex(k => k.Height >= height);
        if (above > 0)
            return Between(_knots[above - 1], _knots[above], height);
        if (above == 0 && _knots[0].Height == height)
            return Lowest;
        if (_runsOn && _knots.Count > 1)
            return above == 0 ? Between(_knots[0], _knots[1], height) : Between(_knots[^2], _knots[^1], height);
        return above == 0 ? Lowest : _knots[^1].Value;
    }

    /// <summary>Multiplied before it is divided, so that a whole result stays whole.</summary>
    private static decimal Between(
        (decimal Height, decimal Value) low,
        (decimal Height, decimal Value) high,
        decimal height
    ) => low.Value + ((high.Value - low.Value) * (height - low.Height) / (high.Height - low.Height));
}

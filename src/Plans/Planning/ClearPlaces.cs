using Nookwright.Shop;

namespace Nookwright.Planning;

/// <summary>A rectangle of a sheet in its own coordinates.</summary>
internal readonly record struct Place(long X, long Y, long EndX, long EndY)
{
    public double Area => ((double)EndX - X) * (EndY - Y);

    public bool Overlaps(Place other) => X < other.EndX && other.X < EndX && Y < other.EndY && other.Y < EndY;

    public bool Contains(Place other) =>
        X <= other.X && Y <= other.Y && other.EndX <= EndX && other.EndY <= EndY && this != other;

    public static Place Of(BadArea bad) =>
        new(bad.X.Nanometres, bad.Y.Nanometres, (bad.X + bad.Length).Nanometres, (bad.Y + bad.Width).Nanometres);

    public static Place Of(Rough raw) => new(raw.X.At, raw.Y.At, raw.X.End, raw.Y.End);
}

/// <summary>The clear places of a raw piece with bad areas: the largest rectangles that touch none.</summary>
/// <remarks>
/// Any of them can be parted off by four rough cuts at most. Small numbers of bad areas are meant: every pair of their edges
/// is tried.
/// </remarks>
internal static class ClearPlaces
{
    private const long Sliver = 1_000_000; // A millimetre: the least a rough cut takes off beside its kerf.

    /// <summary>The bad areas that touch a raw piece.</summary>
    public static List<Place> Bad(Rough raw, Stock stock) =>
        [.. stock.Piece.Bad.Select(Place.Of).Where(Place.Of(raw).Overlaps)];

    /// <summary>The clear places, largest first.</summary>
    public static List<Place> In(Rough raw, IReadOnlyList<Place> bad, long kerf)
    {
        var whole = Place.Of(raw);
        var clear = (
            from x in Gaps(whole.X, whole.EndX, bad.Select(b => (b.X, b.EndX)), kerf)
            from y in Gaps(whole.Y, whole.EndY, bad.Select(b => (b.Y, b.EndY)), kerf)
            let place = new Place(x.From, y.From, x.To, y.To)
            where !bad.Any(place.Overlaps)
            select place
        ).ToList();
        return [.. clear.Where(place => !clear.Any(other => other.Contains(place))).OrderByDescending(p => p.Area)];
    }

    /// <summary>From one bad area's end, or the piece's own edge, to another's beginning.</summary>
    private static IEnumerable<(long From, long To)> Gaps(
        long low,
        long high,
        IEnumerable<(long From, long To)> bad,
        long kerf
    )
    {
        var areas = bad.ToList();
        var starts = areas.Select(b => Math.Max(b.To, low + Sliver + kerf)).Where(s => s < high).Append(low).Distinct();
        var ends = areas.Select(b => b.From).Where(e => e > low).Append(high).Distinct().ToList();
        return starts.SelectMany(start => ends.Where(end => end > start).Select(end => (start, end)));
    }
}

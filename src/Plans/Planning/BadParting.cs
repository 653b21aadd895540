using Nookwright.Cutting;

namespace Nookwright.Planning;

/// <summary>Parts the bad areas of a sheet off by rough cuts.</summary>
/// <remarks>The largest clear place first, mostly; now and then another, so that the search sees the other ways.</remarks>
internal sealed class BadParting(Job job, Stock stock, Random random)
{
    private readonly SawNumbers _saws = job.Saws;

    /// <summary>The clear places of a raw piece, each as it is once it is parted off.</summary>
    public static IEnumerable<Rough> Clear(Rough raw, Stock stock, SawNumbers saws)
    {
        var bad = ClearPlaces.Bad(raw, stock);
        return bad.Count == 0 ? [raw] : ClearPlaces.In(raw, bad, saws.TrackKerf).Select(p => Alone(raw, p, saws));
    }

    /// <summary>A clear leaf of an open raw piece that takes a rectangle; null when there is none.</summary>
    /// <param name="raw">The piece; cut where it has to be.</param>
    /// <param name="takes">Whether a raw piece takes what is wanted.</param>
    public Rough? Leaf(Rough raw, Func<Rough, bool> takes)
    {
        var bad = ClearPlaces.Bad(raw, stock);
        if (bad.Count == 0)
            return takes(raw) ? raw : null;
        var places = ClearPlaces.In(raw, bad, _saws.TrackKerf).Where(p => takes(Alone(raw, p, _saws))).ToList();
        return places.Count == 0 ? null : Isolate(raw, Pick(places));
    }

    /// <summary>Parts an open raw piece until every leaf is clear, or bad as a whole.</summary>
    public void Clear(Rough raw)
    {
        if (!raw.IsOpen || ClearPlaces.Bad(raw, stock).Count == 0)
            return;
        Isolate(raw, IsUseful);
        if (raw.First is null)
            raw.IsBad = true;
        foreach (var leaf in raw.Leaves().Where(l => l.IsOpen).ToList())
            Clear(leaf);
    }

    private void Isolate(Rough raw, Func<Rough, bool> takes) => Leaf(raw, takes);

    private bool IsUseful(Rough raw)
    {
        var (longer, shorter) = (Math.Max(raw.X.Usable, raw.Y.Usable), Math.Min(raw.X.Usable, raw.Y.Usable));
        return job
            .Items.Concat(job.Blanks)
            .Any(i => i.Material == stock.Material && i.ShortSide <= shorter && i.LongSide <= longer);
    }

    private Place Pick(List<Place> places) => places[random.Next(3) > 0 ? 0 : random.Next(places.Count)];

    /// <summary>What a place is once it is parted off.</summary>
    private static Rough Alone(Rough raw, Place place, SawNumbers saws) =>
        new(Side(raw.X, place.X, place.EndX, saws), Side(raw.Y, place.Y, place.EndY, saws));

    private static RawSide Side(RawSide whole, long from, long to, SawNumbers saws)
    {
        var low = from == whole.At ? whole : whole.Beyond(from - whole.At, saws.Dressing);
        return to == whole.End ? low : low.Before(to - from, saws.Dressing);
    }

    /// <summary>Cuts along the place's edges, in any order the track allows; null when it allows none.</summary>
    private Rough? Isolate(Rough raw, Place place)
    {
        while (true)
        {
            var cuts = Cuts(raw, place).ToList();
            if (cuts.Count == 0)
                return raw;
            cuts.RemoveAll(c =>
                raw.Side(c.Axis.Other()).Size > _saws.TrackLength || c.At > raw.Side(c.Axis).Room(_saws.Dressing)
            );
            if (cuts.Count == 0)
                return null;
            var (axis, at, isLow) = cuts[random.Next(cuts.Count)];
            raw.Split(axis, at, _saws);
            raw = isLow ? raw.Second! : raw.First!;
        }
    }

    private IEnumerable<(SheetAxis Axis, long At, bool IsLow)> Cuts(Rough raw, Place place)
    {
        if (place.X > raw.X.At)
            yield return (SheetAxis.Length, place.X - _saws.TrackKerf - raw.X.At, true);
        if (place.EndX < raw.X.End)
            yield return (SheetAxis.Length, place.EndX - raw.X.At, false);
        if (place.Y > raw.Y.At)
            yield return (SheetAxis.Width, place.Y - _saws.TrackKerf - raw.Y.At, true);
        if (place.EndY < raw.Y.End)
            yield return (SheetAxis.Width, place.EndY - raw.Y.At, false);
    }
}

using Nookwright.Measure;
using Nookwright.Trouble;

namespace Nookwright.Shop;

/// <summary>The shop's sizes as lengths: as written, or where nothing is written, what is usual in the document's unit.</summary>
public static class ShopNumbers
{
    /// <summary>What the saws take and reach, or the first size that cannot be read.</summary>
    public static Outcome<SawLimits> LimitsOf(Workshop shop, LengthUnit unit)
    {
        var limits = LimitsOf(shop, unit, out var refusals);
        return refusals.Count > 0 ? refusals[0] : limits;
    }

    /// <summary>What the saws take and reach, with every size that cannot be read; those count as zero.</summary>
    /// <remarks>Each default is told, with its source, at the field of <see cref="Workshop"/> that it stands in for.</remarks>
    public static SawLimits LimitsOf(Workshop shop, LengthUnit unit, out IReadOnlyList<Refusal> refusals)
    {
        var read = new ShopLengths(unit);
        var (table, track) = (shop.TableSaw, shop.TrackSaw);
        var limits = new SawLimits(
            read.NotNegative(table.Kerf, "shop/tableSaw/kerf", In(0, 1, 8), Mm(3.2m)),
            read.NotNegative(track.Kerf, "shop/trackSaw/kerf", In(0, 3, 32), Mm(2.2m)),
            read.NotNegative(shop.Dressing, "shop/dressing", In(0, 1, 4), Mm(6)),
            read.Positive(table.RipReach, "shop/tableSaw/ripReach", In(30), Mm(760)),
            read.Positive(table.CrosscutReach, "shop/tableSaw/crosscutReach", In(96), Mm(2440)),
            read.Positive(track.TrackLength, "shop/trackSaw/trackLength", In(108), Mm(2750)),
            read.Positive(shop.ChunkLength, "shop/chunkLength", In(96), Mm(2440)),
            read.Positive(shop.ChunkWidth, "shop/chunkWidth", In(48), Mm(1220)),
            read.NotNegative(shop.Allowance, "shop/allowance", In(1), Mm(25))
        )
        {
            LeastRip = read.NotNegative(shop.LeastRip, "shop/leastRip", In(6), Mm(150)),
            LeastEdge = read.NotNegative(shop.LeastEdge, "shop/leastEdge", In(12), Mm(300)),
            ChunkKilograms = shop.ChunkKilograms,
            CrosscutWidth = table.CrosscutWidth is { } width
                ? read.Positive(width, "shop/tableSaw/crosscutWidth")
                : null,
            TrustsEdges = shop.TrustsEdges,
        };
        refusals = read.Refusals;
        return limits;
    }

    /// <summary>The shop's smallest mark, to which finished sizes are rounded: as written, or 1/32 in or 0.5 mm.</summary>
    public static Outcome<Length> MarkOf(SizeText? written, LengthUnit unit)
    {
        var read = new ShopLengths(unit);
        var mark = read.Positive(written, "mark", In(0, 1, 32), Mm(0.5m));
        return read.Refusals is [var refusal, ..] ? refusal : mark;
    }

    /// <summary>A material with its sizes as lengths, or the first size that cannot be read.</summary>
    public static Outcome<Sheet> SheetOf(SheetGood good, LengthUnit unit)
    {
        var sheet = SheetOf(good, unit, out var refusals);
        return refusals.Count > 0 ? refusals[0] : sheet;
    }

    /// <summary>A material with its sizes as lengths, with every size that cannot be read; those count as zero.</summary>
    public static Sheet SheetOf(SheetGood good, LengthUnit unit, out IReadOnlyList<Refusal> refusals)
    {
        var read = new ShopLengths(unit);
        var path = $"shop/sheets/{good.Id}";
        var nominal = read.Positive(good.Nominal, $"{path}/nominal");
        var thickness = good.Measured is { } measured ? read.Positive(measured, $"{path}/measured") : nominal;
        var stock = good.Stock.Select((size, i) => StockOf(size, read, $"{path}/stock/{size.Id ?? $"{i}"}")).ToList();
        refusals = read.Refusals;
        return new(good.Id, good.Name, nominal, thickness, good.Measured is not null, good.HasFigure, stock)
        {
            KilogramsPerSquareMetre = good.KilogramsPerSquareMetre,
        };
    }

    private static SheetStock StockOf(StockSize size, ShopLengths read, string path) =>
        new(
            read.Positive(size.Length, $"{path}/length"),
            read.Positive(size.Width, $"{path}/width"),
            size.Quantity,
            size.Price,
            size.Offcut
        )
        {
            Id = size.Id,
            OutOfSquare = read.NotNegative(size.OutOfSquare, $"{path}/outOfSquare", Length.Zero, Length.Zero),
            TrustsEdges = size.TrustsEdges,
            Bad = [.. size.Bad.Select((bad, i) => BadOf(bad, read, $"{path}/bad/{i}"))],
        };

    private static BadArea BadOf(BadPlace bad, ShopLengths read, string path) =>
        new(
            read.NotNegative(bad.X, $"{path}/x", Length.Zero, Length.Zero),
            read.NotNegative(bad.Y, $"{path}/y", Length.Zero, Length.Zero),
            read.Positive(bad.Length, $"{path}/length"),
            read.Positive(bad.Width, $"{path}/width"),
            bad.Why
        );

    private static Length In(long whole, long numerator = 0, long denominator = 1) =>
        Length.FromInches(whole, numerator, denominator);

    private static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);
}

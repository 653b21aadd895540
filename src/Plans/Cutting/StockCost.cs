namespace Nookwright.Cutting;

/// <summary>What a sheet costs the search: its price when every kind that is bought has one, else its area.</summary>
internal static class StockCost
{
    /// <summary>The cost of one; an offcut without a price is free.</summary>
    public static double Of(Stock stock, Job job) => Of(stock.Piece, job.Request.Stock);

    /// <summary>The cost of one; an offcut without a price is free.</summary>
    public static double Of(StockPiece piece, IReadOnlyList<StockPiece> all)
    {
        if (piece.IsOffcut)
            return HasPrices(piece, all) ? (double)(piece.Price ?? 0) : 0;
        return HasPrices(piece, all)
            ? (double)piece.Price!.Value
            : piece.Length.Millimetres * piece.Width.Millimetres / 1e6;
    }

    private static bool HasPrices(StockPiece piece, IReadOnlyList<StockPiece> all) =>
        all.Where(s => s.Material == piece.Material && !s.IsOffcut).All(s => s.Price is > 0);
}

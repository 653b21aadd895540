namespace Nookwright.Cutting;

/// <summary>What a sheet costs the search: its price when every kind that is bought has one, else its area.</summary>
/// <remarks>A whole number, so that sums of equal sheets compare equal: ten-thousandths of the currency, or square millimetres.</remarks>
internal static class StockCost
{
    /// <summary>The cost of what is paid for already.</summary>
    public const long Free = 0;

    /// <summary>The cost of one; an offcut without a price is free.</summary>
    public static long Of(StockPiece piece, IReadOnlyList<StockPiece> all)
    {
        if (HasPrices(piece.Material, all))
            return (long)((piece.Price ?? 0) * 10_000);
        return piece.IsOffcut ? 0 : (long)(piece.Length.Millimetres * piece.Width.Millimetres);
    }

    /// <summary>True when every kind of sheet of a material that is bought has a price.</summary>
    public static bool HasPrices(string material, IReadOnlyList<StockPiece> all)
    {
        foreach (var piece in all)
            if (piece.Material == material && !piece.IsOffcut && piece.Price is not > 0)
                return false;
        return true;
    }
}
